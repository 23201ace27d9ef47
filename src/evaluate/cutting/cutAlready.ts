import type { CutPiece } from '../../layout/bench'
import type { Piece, Saw } from '../../solvers/cutting/problem'
import { toTicks } from '../../units/length'
import { rightPieces } from '../sawn/rightPieces'

/** How many of each wanted line are cut already, in the order of the lines; what no line wants is in none. */
export const cutAlready = (
  lines: readonly Piece[],
  cut: readonly Pick<CutPiece, 'lengthMm' | 'count'>[],
  saw: Saw,
): number[] => {
  const have = lines.map(() => 0)
  const lengths = cut.map(({ lengthMm, count }) => ({ ticks: toTicks(lengthMm), count }))
  for (const { line, count } of rightPieces(lines, lengths, saw)) have[line] = (have[line] ?? 0) + count
  return have
}
