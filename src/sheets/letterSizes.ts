import type { PaperName } from '../drawing/paper'

/** Sizes on one paper, mm: what lies on a bench is read from further than a card in the hand. */
export interface PaperSizes {
  readonly marginMm: number
  readonly insetMm: number
  /** The name of the sheet. */
  readonly title: number
  /** The bay that it is of. */
  readonly bay: number
  readonly heading: number
  readonly part: number
  readonly body: number
  readonly big: number
  readonly note: number
  /** Words of the footer, which nobody reads at work. */
  readonly foot: number
  readonly cellMm: number
  /** Lettering of tables, the first that fits is taken: while columns read well upright, and lying. */
  readonly upright: readonly Lettering[]
  readonly lying: readonly Lettering[]
}

/** How a table is lettered: height of its letters, and how many of them wide a column of words may be before it breaks into lines. */
export interface Lettering {
  readonly letterMm: number
  readonly wordsEms: number
}

/** Words so wide are read in one line, and so wide still well in several. */
const LINE_EMS = 22
const BROKEN_EMS = 14

const inLines = (...letters: readonly number[]): readonly Lettering[] =>
  letters.map((letterMm) => ({ letterMm, wordsEms: LINE_EMS }))

const broken = (...letters: readonly number[]): readonly Lettering[] =>
  letters.map((letterMm) => ({ letterMm, wordsEms: BROKEN_EMS }))

/** Letters of tables that are too wide even lying: their cells break into lines. */
export const TIGHT_LETTERS = [2.6, 2.4, 2.2, 2] as const

const full: PaperSizes = {
  marginMm: 10,
  insetMm: 3,
  title: 5.6,
  bay: 3.4,
  heading: 4.2,
  part: 3.4,
  body: 3,
  big: 5,
  note: 2.4,
  foot: 2.2,
  cellMm: 8.6,
  upright: [...inLines(3, 2.8, 2.6), ...broken(2.8, 2.6, 2.4)],
  lying: [...inLines(3, 2.8, 2.6, 2.4), ...broken(2.6, 2.4, 2.2)],
}

/** Home printers leave 6 mm of each edge bare; a card has no more to spare. */
const half: PaperSizes = {
  ...full,
  marginMm: 7,
  insetMm: 2,
  title: 4.6,
  bay: 2.8,
  heading: 3.6,
  part: 3,
  body: 2.7,
  big: 4.2,
  note: 2.2,
  foot: 2,
  cellMm: 7.6,
  upright: [...inLines(2.7, 2.5), ...broken(2.5, 2.4)],
  lying: [...inLines(2.7, 2.5, 2.4), ...broken(2.4, 2.2)],
}

const card: PaperSizes = { ...half, marginMm: 6, title: 4.2, bay: 2.5, cellMm: 7.2, body: 2.5, big: 4.6 }

const sizes: Readonly<Record<PaperName, PaperSizes>> = {
  letter: full,
  tabloid: full,
  A4: full,
  A3: full,
  'half-letter': half,
  A5: half,
  '4x6': card,
  A6: card,
}

export const sizesOn = (paper: PaperName): PaperSizes => sizes[paper]

/** A card that hangs at what it is about has no room for more than it must say. */
export const isCard = (paper: PaperName): boolean => paper === '4x6' || paper === 'A6'
