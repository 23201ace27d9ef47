import type { CutPiece } from '../../layout/bench'
import { mateOf } from '../../solvers/cutting/problem'
import type { PieceRule, Saw } from '../../solvers/cutting/problem'
import { toTicks } from '../../units/length'

/** What is asked of a cut piece: the length that the bay wants, how much shorter it may be, how it is made, how many. */
export interface Wanted {
  readonly lengthTicks: number
  readonly minusTicks: number
  readonly rule: PieceRule
  readonly count: number
}

/** A file keeps lengths to the tick, and the mates of a board are a tick apart. */
const SAME_TICKS = 1

/** A half of a board that is longer than its name is as much longer than it was drawn, and right all the same. */
const mostOf = ({ lengthTicks, rule }: Wanted, saw: Saw): number => {
  if (rule.kind === 'exact') return lengthTicks
  const made = rule.kind === 'uncut' ? rule.stockTicks : mateOf(rule.stockTicks, rule.parts, saw)
  return Math.max(lengthTicks, made)
}

/** Whether a piece that was cut so long does for what is wanted. */
const isRight = (cutTicks: number, wanted: Wanted, saw: Saw): boolean =>
  cutTicks >= wanted.lengthTicks - wanted.minusTicks - SAME_TICKS &&
  cutTicks <= mostOf(wanted, saw) + SAME_TICKS

/**
 * How many of each wanted line are cut already, in the order of the lines. A cut piece does for the line that it is nearest to
 * in length, and for the next nearest once that has all it wants; what no line wants is in none.
 */
export const cutAlready = (
  lines: readonly Wanted[],
  cut: readonly Pick<CutPiece, 'lengthMm' | 'count'>[],
  saw: Saw,
): number[] => {
  const have = lines.map(() => 0)
  const pieces = cut.map(({ lengthMm, count }) => ({ ticks: toTicks(lengthMm), left: count }))
  const fits = pieces.flatMap((piece) =>
    lines.flatMap((line, index) =>
      isRight(piece.ticks, line, saw)
        ? [{ piece, line, index, off: Math.abs(line.lengthTicks - piece.ticks) }]
        : [],
    ),
  )
  for (const { piece, line, index } of fits.sort((a, b) => a.off - b.off)) {
    const before = have[index] ?? 0
    const count = Math.min(piece.left, line.count - before)
    piece.left -= count
    have[index] = before + count
  }
  return have
}
