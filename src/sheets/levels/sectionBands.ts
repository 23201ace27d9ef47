import { textWidth } from '../../drawing/lettering'
import type { CutPeg, LongCut } from '../../evaluate/longCut/section'
import type { Mark } from '../../model/drawing'
import type { Writer } from '../../units/writer'
import { lettered, LETTERS, ruled } from '../ink'
import { spread } from '../spread'
import type { SectionView } from './sectionView'

/** Words that stand upright side by side, mm of paper from one to the next. */
const APART_MM = 3.7
const PAD_MM = 1.2

/** One line of the table under the section. */
interface Band {
  readonly title: string
  readonly letterMm: number
  readonly isUpright: boolean
  readonly textOf: (peg: BandPeg) => string
}

/** A peg as the table under the section has it. */
export interface BandPeg extends CutPeg {
  readonly fromLowMm: number
}

const bandsOf = ({ length, level, onTape }: Writer, isShort: boolean): readonly Band[] => {
  const upright = { letterMm: LETTERS.body, isUpright: true }
  const all: readonly Band[] = [
    { title: 'Peg', letterMm: LETTERS.body, isUpright: false, textOf: ({ number }) => String(number) },
    { ...upright, title: 'From low end', textOf: ({ fromLowMm }) => length(fromLowMm) },
    { ...upright, title: 'Floor', textOf: ({ groundMm }) => level(groundMm) },
    { ...upright, title: 'Invert', textOf: ({ invertMm }) => level(invertMm) },
    {
      title: 'CUT',
      letterMm: LETTERS.heading,
      isUpright: true,
      textOf: ({ cutMm }) => (cutMm < 0 ? `up ${onTape(-cutMm)}` : onTape(cutMm)),
    },
  ]
  return isShort ? all.filter(({ title }) => title !== 'Floor' && title !== 'From low end') : all
}

const bandHeight = ({ isUpright, letterMm, textOf }: Band, pegs: readonly BandPeg[]): number =>
  2 * PAD_MM + (isUpright ? Math.max(8, ...pegs.map((peg) => textWidth(textOf(peg), letterMm))) : letterMm)

/** Pegs of all drains on the section, from its high end; those at every 10 ft are left out first where they find no room. */
export const bandPegs = (cut: LongCut, widthMm: number): readonly BandPeg[] => {
  const all = cut.drains
    .flatMap((drain) => drain.pegs.map((peg) => ({ ...peg, fromLowMm: drain.toMm - peg.sMm })))
    .toSorted((a, b) => a.sMm - b.sMm)
  const room = Math.max(2, Math.floor(widthMm / APART_MM))
  if (all.length <= room) return all
  const kept = all.filter(({ why }) => why.some((each) => each !== 'step'))
  const every = Math.ceil(kept.length / room)
  return kept.filter((_, i) => i % every === 0)
}

/** The table under a section: how tall it is, and its marks from its top left corner. */
export interface Bands {
  readonly heightMm: number
  readonly draw: (view: SectionView) => Mark[]
}

/** Paper that the names of the lines take, before the first column, mm. */
export const HEAD_OF_BANDS_MM = 26

/** From a peg down to its column. */
const FAN_MM = 6

/** Where the columns stand, no two closer than they can be read, all right of the names of the lines. */
const columnsAt = (pegs: readonly BandPeg[], view: SectionView): readonly number[] => {
  const places = spread(
    pegs.map(({ sMm }) => view.xOf(sMm)),
    APART_MM,
  )
  const least = HEAD_OF_BANDS_MM + APART_MM / 2
  return places.map((x, i) => Math.max(x, least + i * APART_MM))
}

/** Peg, place, floor, invert and cut under every peg, with a line up to it. */
export const bandsUnder = (pegs: readonly BandPeg[], write: Writer, isShort: boolean): Bands => {
  const bands = pegs.length === 0 ? [] : bandsOf(write, isShort)
  const heights = bands.map((band) => bandHeight(band, pegs))
  const heightMm = heights.reduce((sum, mm) => sum + mm, 0) + (bands.length > 0 ? FAN_MM : 0)
  return {
    heightMm,
    draw: (view) => {
      const xs = columnsAt(pegs, view)
      const left = 0
      const right = Math.max(view.box.x1, (xs.at(-1) ?? 0) + APART_MM)
      let top = view.box.y0 - FAN_MM
      const fans = pegs.flatMap(({ sMm, invertMm }, i) => [
        ruled({ x: view.xOf(sMm), y: view.yOf(invertMm) }, { x: view.xOf(sMm), y: view.box.y0 }, 'grid'),
        ruled(
          { x: view.xOf(sMm), y: view.box.y0 },
          { x: xs[i] ?? 0, y: view.box.y0 - FAN_MM + 0.4 },
          'dimension',
        ),
      ])
      const lines = bands.flatMap((band, row) => {
        const tall = heights[row] ?? 0
        const middle = top - tall / 2
        top -= tall
        return [
          ruled({ x: left, y: top + tall }, { x: right, y: top + tall }, 'dimension'),
          lettered(band.title, { x: left + 1, y: middle }, LETTERS.body),
          ...pegs.map((peg, i) =>
            lettered(band.textOf(peg), { x: xs[i] ?? 0, y: middle }, band.letterMm, {
              anchor: 'middle',
              upright: band.isUpright,
            }),
          ),
        ]
      })
      return [...fans, ...lines, ruled({ x: left, y: top }, { x: right, y: top }, 'dimension')]
    },
  }
}
