import { sizeOf } from '../../catalogue/fittings'
import { drainPipeOf } from '../../catalogue/pipe'
import {
  drainStation,
  groundLegs,
  startInvert,
  type DrainPipeRun,
  type GroundLeg,
} from '../../geometry/drainProfile'
import { pathLength } from '../../geometry/path'
import { distance, type Place } from '../../geometry/point'
import { strip } from '../../geometry/polyline'
import type { Body, Built, Fitting, Mouth } from '../../model/built'
import type { DrainFacts } from '../../model/drainFacts'
import type { Site } from '../../model/site'
import { dropOver } from '../../units/slope'
import { bendsOf } from '../points'
import { cleanoutsOf } from './cleanouts'
import type { DrainLine } from './schema'

const pipeRunOf = (part: DrainLine): DrainPipeRun => {
  const { odMm, wallMm } = drainPipeOf(part.pipe)
  return { odMm, wallMm, bedMm: part.bedMm, slopeMmPerM: part.slope }
}

const highInvert = (part: DrainLine, legs: readonly GroundLeg[], pipe: DrainPipeRun): number =>
  part.startInvertMm ??
  startInvert(
    legs.flatMap(({ stations }) => stations),
    pipe,
    part.coverMm,
  )

/** The invert at each point of the line, from the benchmark, mm. */
const invertPath = (part: DrainLine, highMm: number): Place[] => {
  let alongMm = 0
  return part.points.map((p, index) => {
    alongMm += distance(part.points[index - 1] ?? p, p)
    return { x: p.x, y: p.y, z: highMm - dropOver(alongMm, part.slope) }
  })
}

/** One trench a leg, as deep throughout as its deepest place; a leg without length has none. */
const trenchesOf = (
  part: DrainLine,
  legs: readonly GroundLeg[],
  highMm: number,
  pipe: DrainPipeRun,
): Body[] =>
  legs.flatMap(({ from, to, stations }) => {
    const deepestMm = Math.max(...stations.map((ground) => drainStation(ground, highMm, pipe).digMm))
    return strip([from, to], part.trenchMm).map((outline): Body => ({
      part: part.id,
      role: 'trench',
      outline,
      fromMm: Math.min(-deepestMm, 0),
      toMm: 0,
    }))
  })

/** A bend at every change of direction, the cleanouts, and a cap at the high end where no cleanout closes it. */
const fittingsOf = (part: DrainLine, path: readonly Place[]): Fitting[] => {
  const size = sizeOf(part.pipe)
  const ends = path.slice(0, 1)
  const bends = bendsOf(path)
  const cleanouts = cleanoutsOf(part, path, [...ends, ...bends])
  return [
    ...ends.filter((at) => !cleanouts.includes(at)).map((at) => ({ item: `drain-cap-${size}`, at })),
    ...bends.map((at) => ({ item: `drain-bend-${size}`, at })),
    ...cleanouts.map((at) => ({ item: `drain-cleanout-${size}`, at })),
  ]
}

const lowEnd = (path: readonly Place[]): Mouth[] =>
  path.slice(-1).map((at) => ({ role: 'drain-end', at, line: 0, station: 0 }))

const factsOf = (part: DrainLine): DrainFacts => ({
  slopeMmPerM: part.slope,
  leastSlopeMmPerM: part.leastSlope ?? drainPipeOf(part.pipe).leastFallMmPerM,
  leastCoverMm: part.coverMm,
  bedMm: part.bedMm,
  trenchMm: part.trenchMm,
  pegTopMm: part.pegTopMm,
  firstStickMm: part.firstStickMm,
})

/** A pipe along the inverts in its trench. */
export const deriveDrainLine = (part: DrainLine, site: Site): Built => {
  const legs = groundLegs(part.points, site.groundAt)
  const pipe = pipeRunOf(part)
  const highMm = highInvert(part, legs, pipe)
  const path = invertPath(part, highMm)
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks: [],
    tubes: [
      {
        role: 'drain',
        stock: part.pipe,
        path,
        lengthMm: pathLength(path),
        ...(part.firstStickMm !== null && { firstMm: part.firstStickMm }),
      },
    ],
    fittings: fittingsOf(part, path),
    bodies: trenchesOf(part, legs, highMm, pipe),
    mouths: lowEnd(path),
    supports: [],
    drain: factsOf(part),
  }
}
