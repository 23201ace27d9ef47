import { between, distance, length3, type Place, type Point } from './point'

/** Where a path is met: the place on it, how far along its length in space, and how far off; mm. */
export interface Meeting {
  readonly at: Place
  readonly alongMm: number
  readonly gapMm: number
}

const between3 = (a: Place, b: Place, t: number): Place => ({ ...between(a, b, t), z: a.z + (b.z - a.z) * t })

/** Share (0..1) of the way from `a` to `b` at which `p` is nearest, seen from above; 0 on a leg that only rises. */
const floorShare = (a: Place, b: Place, p: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const square = dx * dx + dy * dy
  return square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0
}

const spaceShare = (a: Place, b: Place, p: Place): number => {
  const [dx, dy, dz] = [b.x - a.x, b.y - a.y, b.z - a.z]
  const square = dx * dx + dy * dy + dz * dz
  if (square === 0) return 0
  return Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy + (p.z - a.z) * dz) / square))
}

const nearest = <P extends Point>(
  path: readonly Place[],
  p: P,
  shareOf: (a: Place, b: Place, p: P) => number,
  gapTo: (at: Place) => number,
): Meeting => {
  const [first] = path
  if (!first) throw new RangeError('A path needs at least 1 place, and this one has 0')
  let best: Meeting = { at: first, alongMm: 0, gapMm: gapTo(first) }
  let startMm = 0
  let from = first
  for (const to of path.slice(1)) {
    const at = between3(from, to, shareOf(from, to, p))
    const gapMm = gapTo(at)
    if (gapMm < best.gapMm) best = { at, alongMm: startMm + length3(from, at), gapMm }
    startMm += length3(from, to)
    from = to
  }
  return best
}

/**
 * The place on a path nearest to a place, seen from above: of equally near ones, such as those of a rise, the first.
 * `gapMm` is on the floor, `alongMm` along the pipe in space.
 */
export const nearestFromAbove = (path: readonly Place[], p: Point): Meeting =>
  nearest(path, p, floorShare, (at) => distance(at, p))

/** The place on a path nearest to a place in space. */
export const nearestInSpace = (path: readonly Place[], p: Place): Meeting =>
  nearest(path, p, spaceShare, (at) => length3(at, p))

/** Length of a path in space, mm; 0 for fewer than two places. */
export const pathLength = (path: readonly Place[]): number =>
  path.slice(1).reduce((sum, to, index) => sum + length3(path[index] ?? to, to), 0)

/** The place `alongMm` of pipe from the first place; before the start and past the end it stays at the end. */
export const placeAlong = (path: readonly Place[], alongMm: number): Place => {
  let [last] = path
  if (!last) throw new RangeError('A path needs at least 1 place, and this one has 0')
  let startMm = 0
  for (const to of path.slice(1)) {
    const legMm = length3(last, to)
    if (alongMm < startMm + legMm) return between3(last, to, Math.max(0, (alongMm - startMm) / legMm))
    startMm += legMm
    last = to
  }
  return last
}

/** How far the way turns at `b` from straight on, radians: 0 for none, pi for back. 0 where a leg has no length. */
export const turnAt = (a: Place, b: Place, c: Place): number => {
  const into = { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z }
  const out = { x: c.x - b.x, y: c.y - b.y, z: c.z - b.z }
  const lengths = length3(a, b) * length3(b, c)
  if (lengths === 0) return 0
  const cosine = (into.x * out.x + into.y * out.y + into.z * out.z) / lengths
  return Math.acos(Math.min(1, Math.max(-1, cosine)))
}
