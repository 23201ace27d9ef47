import { leastOf } from '../../solvers/cutting/problem'
import type { Piece } from '../../solvers/cutting/problem'
import type { CutLength } from './rightPieces'

/** One piece that comes of a cut piece. */
export interface Making {
  /** Index of the wanted line that it is for. */
  readonly line: number
  readonly lengthTicks: number
}

/** Like cut pieces that are cut up alike. */
export interface Recut {
  /** Index of the cut length. */
  readonly cut: number
  readonly count: number
  /** What comes of each, in the order of cutting. */
  readonly makes: readonly [Making, ...Making[]]
  /** What is left of each. */
  readonly restTicks: number
}

/** Like pieces, as far as they are cut up. */
interface Group {
  readonly cut: number
  readonly restTicks: number
  readonly makes: readonly Making[]
  count: number
}

/** The shortest that still holds a piece; of two alike the one that was there first. */
const tightest = (groups: readonly Group[], leastTicks: number): Group | undefined =>
  groups
    .filter(({ count, restTicks }) => count > 0 && restTicks >= leastTicks)
    .reduce<Group | undefined>(
      (best, group) => (best && best.restTicks <= group.restTicks ? best : group),
      undefined,
    )

const isMade = (group: Group): group is Group & Recut => group.makes.length > 0

/**
 * What cut pieces that are right for nothing can still be made into. Greedy, longest want first: each comes of the shortest cut
 * piece, or rest of one, that holds it, and every cut but one at the very end takes a kerf. So a long piece is not spent on a short
 * want while it can make a long one; it is not proved that nothing saves more.
 */
export const recut = (
  wanted: readonly Piece[],
  cut: readonly CutLength[],
  kerfTicks: number,
): readonly Recut[] => {
  const groups: Group[] = cut.map(({ ticks, count }, index) => ({
    cut: index,
    restTicks: ticks,
    makes: [],
    count,
  }))
  const order = [...wanted.keys()].sort(
    (a, b) => (wanted[b]?.lengthTicks ?? 0) - (wanted[a]?.lengthTicks ?? 0),
  )
  for (const line of order) {
    const piece = wanted[line]
    let left = piece?.count ?? 0
    while (piece && left > 0) {
      const from = tightest(groups, leastOf(piece))
      if (!from) break
      const count = Math.min(left, from.count)
      const lengthTicks = Math.min(piece.lengthTicks, from.restTicks)
      from.count -= count
      left -= count
      groups.push({
        cut: from.cut,
        restTicks: Math.max(0, from.restTicks - lengthTicks - kerfTicks),
        makes: [...from.makes, { line, lengthTicks }],
        count,
      })
    }
  }
  return groups.filter(isMade).filter(({ count }) => count > 0)
}
