import type { Bay } from '../../checks/context'
import { drainPipeOf, type DrainPipe } from '../../catalogue/pipe'
import {
  drainStation,
  groundLegs,
  startInvert,
  type DrainPipeRun,
  type GroundStation,
} from '../../geometry/drainProfile'
import type { Point } from '../../geometry/point'
import type { DrainState } from '../../model/returns'
import { normalDepthMm } from '../../solvers/gravity/manning'
import { inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { dugL, type LowEnd } from './pitLines'

/** A line that takes the water of several drains. Levels and lengths mm, flows L/h, earth L. */
export interface LaidLine {
  readonly high: Point
  readonly low: Point
  readonly startInvertMm: number
  readonly lowInvertMm: number
  readonly lengthMm: number
  readonly fallMm: number
  readonly deepestMm: number
  readonly digL: number
  readonly flowLph: number
  readonly share: number
  readonly state: DrainState
}

/** What one can lay, at one of the falls that it may have. */
export interface PipeAtFall {
  readonly pipe: string
  readonly slopeMmPerM: number
}

/** A trench is this much wider than its pipe at least, so that a foot and a tamper go in beside it. Common practice, no source. */
const BESIDE_PIPE_MM = inches(6)

/** Drains run no more than half full: roots, and air over the water. Common practice, no source. */
const FULL_SHARE = 0.5

/** A line that its water comes into: no higher there than this, so many mm from its high end. */
interface Lowered {
  readonly alongMm: number
  readonly mostInvertMm: number
}

export const sumOf = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0)

export const meanOf = (all: readonly number[]): number => sumOf(all) / all.length

const stateOf = (slopeMmPerM: number, share: number): DrainState =>
  slopeMmPerM > 0 && share <= FULL_SHARE ? 'Falls' : 'Backs up'

/** How full a pipe runs of its bore; 1 where it does not take the flow. */
const shareOf = ({ idMm }: DrainPipe, flowLph: number, slopeMmPerM: number, n: number): number => {
  const depthMm = normalDepthMm({ shape: 'circle', diameterMm: idMm }, flowLph, slopeMmPerM, n)
  return depthMm === undefined ? 1 : depthMm / idMm
}

/** A line to be laid straight from a place to a place. */
interface Asked {
  readonly high: Point
  readonly low: Point
  readonly ends: readonly LowEnd[]
  readonly lowered: readonly Lowered[]
  readonly size: PipeAtFall
  readonly bay: Bay
}

const greatest = (ends: readonly LowEnd[], of: (end: LowEnd) => number): number => Math.max(...ends.map(of))

const stationsOf = ({ high, low, bay }: Asked): readonly GroundStation[] =>
  groundLegs([high, low], bay.site.groundAt).flatMap(({ stations }) => stations)

/** The line as high as cover and the drains that come into it allow. */
export const layLine = (asked: Asked): LaidLine => {
  const { high, low, ends, lowered, size, bay } = asked
  const pipe = drainPipeOf(size.pipe)
  const { slopeMmPerM } = size
  const run: DrainPipeRun = { ...pipe, bedMm: greatest(ends, ({ facts }) => facts.bedMm), slopeMmPerM }
  const stations = stationsOf(asked)
  const startInvertMm = Math.min(
    startInvert(
      stations,
      run,
      greatest(ends, ({ facts }) => facts.leastCoverMm),
    ),
    ...lowered.map(({ alongMm, mostInvertMm }) => mostInvertMm + dropOver(alongMm, slopeMmPerM)),
  )
  const digs = stations.map((station) => Math.max(drainStation(station, startInvertMm, run).digMm, 0))
  const lengthMm = stations.at(-1)?.alongMm ?? 0
  const trenchMm = Math.max(
    greatest(ends, ({ facts }) => facts.trenchMm),
    pipe.odMm + BESIDE_PIPE_MM,
  )
  const fallMm = dropOver(lengthMm, slopeMmPerM)
  const flowLph = sumOf(ends.map((end) => end.flowLph))
  const share = shareOf(pipe, flowLph, slopeMmPerM, bay.settings.manningN)
  return {
    high,
    low,
    startInvertMm,
    lowInvertMm: startInvertMm - fallMm,
    lengthMm,
    fallMm,
    deepestMm: Math.max(...digs),
    digL: dugL(meanOf(digs) * lengthMm * trenchMm),
    flowLph,
    share,
    state: stateOf(slopeMmPerM, share),
  }
}
