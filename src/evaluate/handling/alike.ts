import type { LineLift } from './handling'

/** Lines of a row that ask the same of whoever hangs them. */
export interface AlikeLines {
  readonly lines: readonly number[]
  readonly lift: LineLift
}

/** Indexes are read to a tenth: what is nearer than half of one is alike. */
const isAlike = (a: number, b: number): boolean => a === b || Math.abs(a - b) < 0.05

/** Lines gathered by their index, the worst first; lines of each in their own order. */
export const alikeLines = (lifts: readonly LineLift[]): readonly AlikeLines[] => {
  const groups: { lines: number[]; lift: LineLift }[] = []
  for (const lift of lifts) {
    const known = groups.find((group) => isAlike(group.lift.index, lift.index))
    if (known) known.lines.push(lift.line)
    else groups.push({ lines: [lift.line], lift })
  }
  return groups
    .map(({ lines, lift }) => ({ lines: lines.toSorted((a, b) => a - b), lift }))
    .toSorted((a, b) => (a.lift.index === b.lift.index ? 0 : b.lift.index - a.lift.index))
}
