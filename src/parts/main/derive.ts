import { pathLength } from '../../geometry/path'
import type { Place } from '../../geometry/point'
import type { Built, Mouth } from '../../model/built'
import type { Site } from '../../model/site'
import { onPipe } from '../onPipe'
import { elbowsOf } from '../points'
import { mainBodies } from './bodies'
import { heightAt, isRing, pathOf } from './path'
import type { Main } from './schema'
import { strapsOf } from './straps'

const endAt = (at: Place): Mouth => ({ role: 'main-end', at, line: 0, station: 0 })

/** Both ends; of a ring the one place where it closes. */
const endsOf = (part: Main, path: readonly Place[]): Mouth[] =>
  [...path.slice(0, 1), ...(isRing(part) ? [] : path.slice(-1))].map(endAt)

/** Where it turns; a ring may also turn where it closes. */
const turnsOf = (part: Main, path: readonly Place[]): Place[] =>
  elbowsOf(isRing(part) ? [...path, ...path.slice(1, 2)] : path)

/** Under the floor, where one clamp an end is too few. */
const isBuried = (part: Main, path: readonly Place[], at: Place): boolean => {
  const point = part.points[path.indexOf(at)]
  return point !== undefined && heightAt(part, point) < 0
}

/** What stands at its ends and along it depends on what is joined there: that is found later. */
export const deriveMain = (part: Main, site: Site): Built => {
  const path = pathOf(part, site)
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks: [],
    tubes: [{ role: 'main', stock: part.pipe, path, lengthMm: pathLength(path) }],
    fittings: [
      ...turnsOf(part, path).flatMap((at) => onPipe('elbow', part.pipe, at, isBuried(part, path, at))),
      ...strapsOf(part, path),
    ],
    bodies: mainBodies(part),
    mouths: endsOf(part, path),
    supports: [],
  }
}
