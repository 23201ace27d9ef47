import type { Pen, Wash } from '../model/drawing'

/** How a pen writes on paper. Widths are of the ISO 128-2 series 0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1 mm. */
export interface PenStyle {
  readonly colour: string
  readonly widthMm: number
  /** Dash and gap lengths in turn, mm of paper; empty for a continuous line. */
  readonly dashMm: readonly number[]
}

/** Parallel lines at 45 degrees over a wash, so that a meaning never hangs on colour alone. */
export interface Hatch {
  readonly colour: string
  readonly widthMm: number
  readonly spacingMm: number
  /** `rising` runs from lower left to upper right. */
  readonly lean: 'rising' | 'falling' | 'crossed'
}

export interface WashStyle {
  /** undefined lets what lies below show between the hatch lines. */
  readonly colour: string | undefined
  readonly hatch?: Hatch
}

export interface Theme {
  readonly name: 'paper' | 'night'
  /** The sheet itself; also the halo that keeps words clear of lines. */
  readonly sheet: string
  readonly ink: string
  readonly font: string
  readonly pens: Readonly<Record<Exclude<Pen, 'none'>, PenStyle>>
  readonly washes: Readonly<Record<Exclude<Wash, 'none'>, WashStyle>>
}

/** The first ships with the program and is narrower than lettering.ts counts with; the others have just those widths. */
const FONT = '"Source Sans 3", "Liberation Sans", Arial, sans-serif'

type InkColours = Readonly<Record<Exclude<Pen, 'none'>, string>>
type WashColours = Readonly<Record<Exclude<Wash, 'none' | 'keep-clear' | 'water'>, string>>

/*
 * Line elements of ISO 128 in multiples of the line width d: dash 12 d, long dash 24 d, gap 3 d, dot 0.5 d.
 * Thin lines here keep the pattern of a 0.25 mm pen, so that dashes still read as dashes at arm's length.
 */
const PATTERN_MM = 0.25
const CONTINUOUS: readonly number[] = []
const DASHED = [12, 3].map((d) => d * PATTERN_MM)
const LONG_DASHED_DOTTED = [24, 3, 0.5, 3].map((d) => d * PATTERN_MM)
const LONG_DASHED_DOUBLE_DOTTED = [24, 3, 0.5, 3, 0.5, 3].map((d) => d * PATTERN_MM)

type Line = readonly [widthMm: number, dashMm: readonly number[]]

const lines: Readonly<Record<Exclude<Pen, 'none'>, Line>> = {
  outline: [0.35, CONTINUOUS],
  wall: [0.7, CONTINUOUS],
  timber: [0.25, CONTINUOUS],
  steel: [0.25, CONTINUOUS],
  trough: [0.25, CONTINUOUS],
  drain: [0.5, DASHED],
  water: [0.35, CONTINUOUS],
  crop: [0.18, CONTINUOUS],
  centre: [0.18, LONG_DASHED_DOTTED],
  hidden: [0.25, DASHED],
  'keep-clear': [0.25, LONG_DASHED_DOUBLE_DOTTED],
  dimension: [0.18, CONTINUOUS],
  grid: [0.13, CONTINUOUS],
  'must-fix': [0.5, CONTINUOUS],
  note: [0.25, CONTINUOUS],
}

const pensOf = (inks: InkColours): Theme['pens'] =>
  Object.fromEntries(
    Object.entries(lines).map(([pen, [widthMm, dashMm]]) => [
      pen,
      { colour: inks[pen as keyof InkColours], widthMm, dashMm }, // entries of `lines`, so its keys
    ]),
  ) as Theme['pens'] // one entry for each key of `lines`, which are all the pens

const hatched = (colour: string | undefined, ink: string, lean: Hatch['lean'], spacingMm: number) => ({
  colour,
  hatch: { colour: ink, widthMm: 0.18, spacingMm, lean },
})

const washesOf = (washes: WashColours, inks: InkColours): Theme['washes'] => ({
  paper: { colour: washes.paper },
  house: { colour: washes.house },
  crop: { colour: washes.crop },
  timber: { colour: washes.timber },
  steel: { colour: washes.steel },
  trough: { colour: washes.trough },
  drain: { colour: washes.drain },
  // Solid: a valve that is shut is filled with its own ink.
  water: { colour: inks.water },
  pit: hatched(washes.pit, inks.water, 'falling', 2),
  post: hatched(washes.post, inks.outline, 'crossed', 1),
  'keep-clear': hatched(undefined, inks['keep-clear'], 'rising', 2.5),
  'must-fix': hatched(washes['must-fix'], inks['must-fix'], 'rising', 1.2),
})

const paperInks: InkColours = {
  outline: '#2f2b27',
  wall: '#2f2b27',
  timber: '#8f6820',
  steel: '#4c5a68',
  trough: '#3b6680',
  drain: '#1f4f82',
  water: '#1d5ea8',
  crop: '#566b4d',
  centre: '#67605a',
  hidden: '#57514b',
  'keep-clear': '#6d5577',
  dimension: '#3d3833',
  grid: '#d8cfbd',
  'must-fix': '#ab2408',
  note: '#2f2b27',
}

const paperWashes: WashColours = {
  paper: '#fbf7ee',
  house: '#fefcf6',
  crop: '#c8d8bd',
  timber: '#cfa050',
  steel: '#b3bfcb',
  trough: '#d9e9f2',
  drain: '#b9d2ea',
  pit: '#dbe8f3',
  post: '#cfc7ba',
  'must-fix': '#fbe2d8',
}

const nightInks: InkColours = {
  outline: '#ece4d4',
  wall: '#ece4d4',
  timber: '#dca850',
  steel: '#aab8c6',
  trough: '#9cc3da',
  drain: '#86b4e6',
  water: '#7fb3ef',
  crop: '#a9bf9e',
  centre: '#a79e92',
  hidden: '#b7ad9f',
  'keep-clear': '#c4a8cf',
  dimension: '#d8cfbf',
  grid: '#3f3a33',
  'must-fix': '#ff8d6e',
  note: '#ece4d4',
}

const nightWashes: WashColours = {
  paper: '#262320',
  house: '#2d2a26',
  crop: '#3a4a30',
  timber: '#694c1e',
  steel: '#4b5661',
  trough: '#2f4654',
  drain: '#2b4667',
  pit: '#24384b',
  post: '#4f483f',
  'must-fix': '#5e2a1d',
}

const themeOf = (name: Theme['name'], inks: InkColours, washes: WashColours): Theme => ({
  name,
  sheet: washes.paper,
  ink: inks.note,
  font: FONT,
  pens: pensOf(inks),
  washes: washesOf(washes, inks),
})

/** A warm off-white sheet, pencil-dark lines. */
export const paperTheme: Theme = themeOf('paper', paperInks, paperWashes)

/** The same sheet by night: warm dark paper, never a black screen. */
export const nightTheme: Theme = themeOf('night', nightInks, nightWashes)
