import type { Evaluation } from '../../evaluate/evaluation'
import type { Point } from '../../geometry/point'
import type { Mark, TextMark } from '../../model/drawing'
import type { DrainRun, Peg } from '../../model/levels'
import { lineMark } from '../../parts/marks'
import { textBox, type ClearWords } from '../clearWords'
import { lettered, LETTERS } from '../ink'

/** A tick across the drain, from its middle to each end, mm of paper. */
const HALF_TICK_MM = 0.9

/** From the middle of the drain to the middle of a number, mm of paper. */
const OFF_MM = 2.1

/** Above this ratio pegs stand closer on paper than their numbers are high. Common practice, no source. */
const SMALLEST_RATIO = 130

/** The way of the drain at a peg, downhill, of length 1. */
const wayAt = ({ pegs }: DrainRun, index: number): Point => {
  const [from, to] = [pegs[index + 1] ?? pegs[index], pegs[index - 1] ?? pegs[index]]
  const [dx, dy] = [(to?.at.x ?? 0) - (from?.at.x ?? 0), (to?.at.y ?? 0) - (from?.at.y ?? 0)]
  const run = Math.hypot(dx, dy)
  return run > 0 ? { x: dx / run, y: dy / run } : { x: 1, y: 0 }
}

const beside = ({ x, y }: Point, way: Point, off: number): Point => ({
  x: x - way.y * off,
  y: y + way.x * off,
})

const tickAt = ({ at }: Peg, way: Point, ratio: number): Mark =>
  lineMark([beside(at, way, HALF_TICK_MM * ratio), beside(at, way, -HALF_TICK_MM * ratio)], 'drain')

const numberAt = (
  { at, number }: Peg,
  way: Point,
  ratio: number,
  words: ClearWords,
): TextMark | undefined => {
  const tries = [OFF_MM, -OFF_MM, 1.6 * OFF_MM, -1.6 * OFF_MM].map((off) =>
    lettered(String(number), beside(at, way, off * ratio), LETTERS.small, { pen: 'drain', anchor: 'middle' }),
  )
  return words.first(tries, (mark) => [textBox(mark, ratio)])
}

/** Ends first, then what the crew cuts a hole or a bend at, then the steps between. */
const need = ({ why }: Peg): number => {
  if (why.includes('start') || why.includes('end')) return 0
  return why.every((one) => one === 'step') ? 2 : 1
}

const pegsOf = (run: DrainRun, ratio: number, words: ClearWords): Mark[] => {
  const ways = new Map(run.pegs.map((peg, index) => [peg, wayAt(run, index)]))
  const wayOf = (peg: Peg): Point => ways.get(peg) ?? { x: 1, y: 0 }
  const numbers = run.pegs
    .toSorted((a, b) => need(a) - need(b))
    .flatMap((peg) => numberAt(peg, wayOf(peg), ratio, words) ?? [])
  return [...run.pegs.map((peg) => tickAt(peg, wayOf(peg), ratio)), ...numbers]
}

/**
 * A tick at every peg of every drain, with its number where there is room; they count from the low end, so that a number
 * left out is told by its neighbours. In mm of floor; none where the drawing is too small to tell them apart.
 */
export const pegNumbers = ({ bay }: Evaluation, ratio: number, words: ClearWords): readonly Mark[] =>
  ratio > SMALLEST_RATIO ? [] : [...bay.levels.drains.values()].flatMap((run) => pegsOf(run, ratio, words))

/** Whether a mark is the number of a peg. */
export const isPegNumber = (mark: Mark): boolean =>
  mark.as === 'text' && mark.pen === 'drain' && /^\d+$/.test(mark.text)
