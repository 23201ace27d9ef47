import { mateOf } from '../../solvers/cutting/problem'
import type { Piece, Saw } from '../../solvers/cutting/problem'
import { inches, toTicks } from '../../units/length'

/** A cut piece does for a wanted line though it is so much longer: what a tape can tell at the saw. Common practice, no source. */
const OVER_TICKS = toTicks(inches(1 / 16))

/** A file keeps lengths to the tick, and the mates of a board are a tick apart. */
const SAME_TICKS = 1

/** A half of a board that is longer than its name is as much longer than it was drawn, and right all the same. */
const mostOf = ({ lengthTicks, rule }: Piece, saw: Saw): number => {
  if (rule.kind === 'exact') return lengthTicks
  const made = rule.kind === 'uncut' ? rule.stockTicks : mateOf(rule.stockTicks, rule.parts, saw)
  return Math.max(lengthTicks, made)
}

/** Whether a piece that was cut so long does for what is wanted, as it is. */
export const isRight = (cutTicks: number, wanted: Piece, saw: Saw): boolean =>
  cutTicks >= wanted.lengthTicks - wanted.minusTicks - SAME_TICKS &&
  cutTicks <= mostOf(wanted, saw) + OVER_TICKS

/** Like cut pieces of one length. */
export interface CutLength {
  readonly ticks: number
  readonly count: number
}

/** So many of a cut length do for a wanted line; both are indices. */
export interface Pair {
  readonly cut: number
  readonly line: number
  readonly count: number
}

/**
 * Which cut pieces do for which of the wanted lines, as they are. A cut piece does for the line that it is nearest to in length, and
 * for the next nearest once that has all it wants; what no line wants is in no pair.
 */
export const rightPieces = (wanted: readonly Piece[], cut: readonly CutLength[], saw: Saw): Pair[] => {
  const open = wanted.map(({ count }) => count)
  const spare = cut.map(({ count }) => count)
  const fits = cut.flatMap(({ ticks }, c) =>
    wanted.flatMap((line, l) =>
      isRight(ticks, line, saw) ? [{ c, l, off: Math.abs(line.lengthTicks - ticks) }] : [],
    ),
  )
  return fits
    .sort((a, b) => a.off - b.off)
    .flatMap(({ c, l }) => {
      const count = Math.min(spare[c] ?? 0, open[l] ?? 0)
      spare[c] = (spare[c] ?? 0) - count
      open[l] = (open[l] ?? 0) - count
      return count > 0 ? [{ cut: c, line: l, count }] : []
    })
}
