/** Length of an arrow head on paper, mm. */
export const ARROW_MM = 3.2

const pointOf = (points: Float64Array, i: number) => ({ x: points[2 * i] ?? 0, y: points[2 * i + 1] ?? 0 })

/** A slim triangle, as x, y of its three corners, with its tip at `share` of the way from one point to the other. */
const headOn = (points: Float64Array, i: number, share: number, sizeMm: number): number[] => {
  const from = pointOf(points, i)
  const to = pointOf(points, i + 1)
  const run = Math.hypot(to.x - from.x, to.y - from.y)
  if (run === 0) return []
  const ux = (to.x - from.x) / run
  const uy = (to.y - from.y) / run
  const tipMm = share === 1 ? run : run * share + sizeMm / 2
  const tip = { x: from.x + ux * tipMm, y: from.y + uy * tipMm }
  const back = { x: tip.x - ux * sizeMm, y: tip.y - uy * sizeMm }
  const half = sizeMm / 4
  return [tip.x, tip.y, back.x - uy * half, back.y + ux * half, back.x + uy * half, back.y - ux * half]
}

const runOf = (points: Float64Array, i: number): number => {
  const from = pointOf(points, i)
  const to = pointOf(points, i + 1)
  return Math.hypot(to.x - from.x, to.y - from.y)
}

/** Legs that carry a head in their middle: every one that is long enough, or else the longest. */
const headedLegs = (points: Float64Array, sizeMm: number): number[] => {
  const legs = Array.from({ length: points.length / 2 - 1 }, (_, i) => i)
  const long = legs.filter((i) => runOf(points, i) > 4 * sizeMm)
  if (long.length > 0) return long
  return legs.toSorted((a, b) => runOf(points, b) - runOf(points, a)).slice(0, 1)
}

/** Arrow heads along a run of points x, y: six numbers a head, in the unit of the points. */
export const arrowHeads = (points: Float64Array, where: 'end' | 'middle', sizeMm: number): Float64Array => {
  if (points.length < 4) return new Float64Array()
  if (where === 'end') return Float64Array.from(headOn(points, points.length / 2 - 2, 1, sizeMm))
  return Float64Array.from(headedLegs(points, sizeMm).flatMap((i) => headOn(points, i, 0.5, sizeMm)))
}
