import { isOnPaper } from '../../drawing/view'
import type { Mark, Pen, Wash } from '../../model/drawing'
import { type Block, heading, stacked } from '../block'
import { lettered, LETTERS, panel, ruled } from '../ink'
import { isPegNumber } from './pegNumbers'

/** One line of the key. A swatch where the wash is used, a stroke where the pen is. */
interface Entry {
  readonly pen: Pen
  readonly wash?: Wash
  readonly words: string
}

const DRAIN_WORDS = 'Drain line, buried; arrows fall'
const PEGGED_WORDS = 'Drain line; arrows fall; ticks: pegs'

const entries: readonly Entry[] = [
  { pen: 'crop', wash: 'crop', words: 'Leaves at full reach; towers' },
  { pen: 'timber', wash: 'timber', words: 'Timber' },
  { pen: 'steel', wash: 'steel', words: 'Conduit; equipment' },
  { pen: 'trough', wash: 'trough', words: 'Gutter trough' },
  { pen: 'drain', words: DRAIN_WORDS },
  { pen: 'water', words: 'Water under pressure' },
  { pen: 'outline', wash: 'pit', words: 'Pit' },
  { pen: 'outline', wash: 'post', words: 'Post' },
  { pen: 'keep-clear', wash: 'keep-clear', words: 'Keep clear' },
  { pen: 'hidden', words: 'Hidden: below the floor or overhead' },
  { pen: 'centre', words: 'CL, centreline of a row' },
  { pen: 'must-fix', words: 'Must be mended first' },
]

const isInked = (mark: Mark): mark is Extract<Mark, { wash: Wash }> => 'wash' in mark

/** Entries whose wash, or pen where they have none, is on the sheet at its scale. */
const usedIn = (all: readonly Mark[], ratio: number): Entry[] => {
  const marks = all.filter((mark) => mark.as === 'dimension' || isOnPaper(mark.nearMm, ratio))
  const pens = new Set(marks.map(({ pen }) => pen))
  const washes = new Set(marks.filter(isInked).map(({ wash }) => wash))
  const used = entries.filter(({ pen, wash }) => (wash === undefined ? pens.has(pen) : washes.has(wash)))
  if (!marks.some(isPegNumber)) return used
  return used.map((entry) => (entry.words === DRAIN_WORDS ? { ...entry, words: PEGGED_WORDS } : entry))
}

const ROW_MM = 4.1
const SWATCH_MM = 8

const entryBlock = ({ pen, wash, words }: Entry): Block => ({
  heightMm: ROW_MM,
  draw: (left, top) => {
    const y = top - ROW_MM / 2
    const swatch =
      wash === undefined
        ? ruled({ x: left, y }, { x: left + SWATCH_MM, y }, pen)
        : panel({ x0: left, y0: y - 1.3, x1: left + SWATCH_MM, y1: y + 1.3 }, pen, wash)
    return [swatch, lettered(words, { x: left + SWATCH_MM + 2.5, y }, LETTERS.body)]
  },
})

/** What the pens and washes of these marks mean. */
export const keyBlock = (marks: readonly Mark[], ratio: number, widthMm: number): Block =>
  stacked([heading('Key', widthMm), ...usedIn(marks, ratio).map(entryBlock)])
