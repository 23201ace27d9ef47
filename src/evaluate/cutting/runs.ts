import { stockOf } from '../../catalogue/stock'
import type { StockItem } from '../../catalogue/stock'
import { straightLegs } from '../../geometry/legs'
import type { Bench } from '../../layout/bench'
import type { CutRule, Tube } from '../../model/built'
import { joinRun } from '../../solvers/cutting/splices'
import { fromTicks, toTicks } from '../../units/length'
import { overOf } from './benchStock'

/** Like pieces of a run. */
export interface RunPiece {
  readonly lengthTicks: number
  readonly cut: CutRule
  readonly count: number
}

/** A straight run of one stock: its pieces in any order, each joined to the next. */
export type Run = readonly RunPiece[]

const EXACT: CutRule = { kind: 'exact' }

/** The longest length that a stock comes in: its name and what a tape finds. */
interface Longest {
  readonly stockMm: number
  readonly ticks: number
}

const longestOf = ({ key, lengthsMm }: StockItem, measured: Bench['measured']): Longest => {
  const stockMm = Math.max(...lengthsMm)
  return { stockMm, ticks: toTicks(stockMm + overOf(key, measured)) }
}

/** Rigid pipe turns in a fitting, so each straight leg is its own run; what the tube has to spare goes on the last. */
const legsOf = ({ path, lengthMm }: Tube, form: StockItem['form']): number[] => {
  const legs = form === 'coil' ? [] : straightLegs(path)
  const before = legs.slice(0, -1)
  return [...before, lengthMm - before.reduce((sum, leg) => sum + leg, 0)]
}

/** A length under half a tick is no piece: nothing is left to cut. */
const isPiece = ({ lengthTicks, count }: RunPiece): boolean => lengthTicks > 0 && count > 0

/** Pieces that butt: couplings and bells of a run are counted, and take nothing of its length. */
const BUTT = { gapTicks: 0, leastTicks: 1 }

/** Whole lengths of stock as they come, and a rest cut to fit. */
const wholeAndRest = (legMm: number, { stockMm, ticks }: Longest): RunPiece[] => {
  const whole: CutRule = { kind: 'uncut', stockMm }
  const pieces = joinRun(toTicks(legMm), ticks, BUTT)?.pieces ?? []
  return pieces
    .map(({ lengthTicks, count }) => ({ lengthTicks, cut: lengthTicks === ticks ? whole : EXACT, count }))
    .filter(isPiece)
}

/** The last leg, where it is laid from its end with a piece of its own length. */
const laidFromEnd = (legMm: number, firstMm: number, longest: Longest): RunPiece[] => {
  const first = { lengthTicks: toTicks(firstMm), cut: EXACT, count: 1 }
  return [first, ...wholeAndRest(legMm - fromTicks(first.lengthTicks), longest)].filter(isPiece)
}

/** The straight runs of a tube, each in as few pieces as its stock allows. */
export const runsOf = (tube: Tube, measured: Bench['measured']): Run[] => {
  const item = stockOf(tube.stock)
  const longest = longestOf(item, measured)
  const legs = legsOf(tube, item.form)
  const { firstMm } = tube
  return legs.map((legMm, index) =>
    firstMm !== undefined && index === legs.length - 1 && firstMm < legMm
      ? laidFromEnd(legMm, firstMm, longest)
      : wholeAndRest(legMm, longest),
  )
}

/** Places of a run where a piece is joined to the next: couplings, or bells of a drain. */
export const jointsOf = (run: Run): number => Math.max(0, run.reduce((sum, { count }) => sum + count, 0) - 1)
