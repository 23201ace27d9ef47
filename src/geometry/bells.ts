import { turningPlaces } from './legs'
import { length3, type Place, distance } from './point'

/** What is left of a stick shorter than this is no stick, mm: the rounding of sums. */
const NO_STICK_MM = 0.01

/** Distances from the low end of one straight leg to its joints, mm: a first stick, and whole ones after it. */
const jointsOfLeg = (legMm: number, firstMm: number, stickMm: number): number[] => {
  const count = Math.ceil((legMm - firstMm - NO_STICK_MM) / stickMm)
  return Array.from({ length: Math.max(count, 0) }, (_, index) => firstMm + index * stickMm)
}

/**
 * Where the mouths of the bells lie along a pipe that falls from its first place to its last, from the first place on the
 * flat, mm, ascending. Each leg is laid from its low end up, bells uphill, whole sticks but for the first of the last leg;
 * at a bend the fitting takes both ends and no bell.
 */
export const bellsAlong = (
  path: readonly Place[],
  stickMm: number,
  firstMm: number = stickMm,
): readonly number[] => {
  const places = turningPlaces(path)
  const bells: number[] = []
  let startMm = 0
  for (const [index, from] of places.slice(0, -1).entries()) {
    const to = places[index + 1] ?? from
    const flatMm = distance(from, to)
    const legMm = length3(from, to)
    const isLast = index === places.length - 2
    const joints = jointsOfLeg(legMm, isLast ? firstMm : stickMm, stickMm)
    for (const upMm of joints.toReversed()) bells.push(startMm + (flatMm * (legMm - upMm)) / legMm)
    startMm += flatMm
  }
  return bells
}
