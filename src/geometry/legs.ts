import { length3 } from './point'
import type { Place } from './point'

/** A run that strays less than this from straight, as a share of its length, is one leg: no fitting turns so little. */
const STRAIGHT_SHARE = 1e-6

const isStraight = (from: Place, via: Place, to: Place): boolean => {
  const direct = length3(from, to)
  return length3(from, via) + length3(via, to) - direct <= STRAIGHT_SHARE * direct
}

/** The ends of a path and the places where it turns; points on the way along a leg are none of them. */
export const turningPlaces = (path: readonly Place[]): Place[] => {
  const bends: Place[] = []
  for (const [i, at] of path.entries()) {
    const last = bends.at(-1)
    const next = path[i + 1]
    if (last === undefined || next === undefined || !isStraight(last, at, next)) bends.push(at)
  }
  return bends
}

/** Lengths of the straight legs of a path in space, mm. */
export const straightLegs = (path: readonly Place[]): number[] => {
  const bends = turningPlaces(path)
  return bends.flatMap((at, i) => {
    const next = bends[i + 1]
    return next === undefined ? [] : [length3(at, next)]
  })
}
