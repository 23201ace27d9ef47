import type { Box } from './box'

/** Where things begin and where they end along one axis, ascending. */
interface Ends {
  readonly begins: Float64Array
  readonly ends: Float64Array
}

/** The widths at which a way between boxes can open or close: each is a gap from where one thing ends to where one begins. */
export type CriticalWidths = readonly Ends[]

const ascending = (values: readonly number[]): Float64Array => Float64Array.from(new Set(values)).sort()

/** Of blocking boxes on a floor inside `inside`; `marks` are lines that matter besides, such as the sides of faces and doors. */
export const criticalWidths = (
  blocks: readonly Box[],
  inside: Box,
  marks: readonly Box[],
): CriticalWidths => {
  const x = marks.flatMap(({ x0, x1 }) => [x0, x1])
  const y = marks.flatMap(({ y0, y1 }) => [y0, y1])
  return [
    {
      begins: ascending([...blocks.map((b) => b.x0), inside.x1, ...x]),
      ends: ascending([...blocks.map((b) => b.x1), inside.x0, ...x]),
    },
    {
      begins: ascending([...blocks.map((b) => b.y0), inside.y1, ...y]),
      ends: ascending([...blocks.map((b) => b.y1), inside.y0, ...y]),
    },
  ]
}

// As both lists ascend, the first begin far enough from one end is never before that of the end before it: one pass of each.
const leastGap = ({ begins, ends }: Ends, above: number): number => {
  let least = Infinity
  let next = 0
  for (const end of ends) {
    while (next < begins.length && (begins[next] ?? Infinity) - end <= above) next++
    least = Math.min(least, (begins[next] ?? Infinity) - end)
  }
  return least
}

const greatestGap = ({ begins, ends }: Ends, below: number): number => {
  let greatest = -Infinity
  let next = 0
  for (const end of ends) {
    while (next < begins.length && (begins[next] ?? Infinity) - end < below) next++
    greatest = Math.max(greatest, (begins[next - 1] ?? -Infinity) - end)
  }
  return greatest
}

/** The least critical width greater than `width`; Infinity where there is none. */
export const criticalAbove = (widths: CriticalWidths, width: number): number =>
  Math.min(...widths.map((axis) => leastGap(axis, width)))

/** The greatest critical width less than `width`; -Infinity where there is none. */
export const criticalBelow = (widths: CriticalWidths, width: number): number =>
  Math.max(...widths.map((axis) => greatestGap(axis, width)))
