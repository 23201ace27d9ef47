import { polyOf } from '../../catalogue/pipe'
import type { Place } from '../../geometry/point'
import { strip } from '../../geometry/polyline'
import type { Body, Built, Fitting } from '../../model/built'
import type { Site } from '../../model/site'
import { bendsOf, pathLength } from '../points'
import type { Main } from './schema'

/** The pipe's centre at each point: so much above the floor there. */
const pathOf = (part: Main, site: Site): Place[] =>
  part.points.map(({ x, y }) => ({ x, y, z: site.groundAt(x, y) + part.heightMm }))

const bodiesOf = (part: Main): Body[] => {
  const { odMm } = polyOf(part.pipe)
  return strip(part.points, odMm).map((outline): Body => ({
    part: part.id,
    role: 'main',
    outline,
    fromMm: part.heightMm - odMm / 2,
    toMm: part.heightMm + odMm / 2,
  }))
}

/** Elbows at the bends, and a cap at the far end so that the next zone can be added there. */
const fittingsOf = (path: readonly Place[]): Fitting[] => [
  ...bendsOf(path).map((at) => ({ item: 'elbow', at })),
  ...path.slice(-1).map((at) => ({ item: 'main-cap', at })),
]

export const deriveMain = (part: Main, site: Site): Built => {
  const path = pathOf(part, site)
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks: [],
    tubes: [{ role: 'main', stock: part.pipe, path, lengthMm: pathLength(path) }],
    fittings: fittingsOf(path),
    bodies: bodiesOf(part),
    mouths: [],
    supports: [],
  }
}
