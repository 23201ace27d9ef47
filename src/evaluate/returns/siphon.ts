import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import { toMm } from '../water/metres'
import type { PlacedRow } from '../water/plan'
import { planOf } from '../water/planOf'
import { refill } from '../water/refill'
import { haveCheckValves, withCheckValves } from './stopSources'

/** The open end of a tube. Level mm from the benchmark's zero. */
export interface TubeEnd {
  readonly part: PartId
  readonly station: number
  readonly line: number
  readonly levelMm: number
}

/** What pipes that stand open to each other let go once nothing pushes any more. Volumes L. */
export interface Siphon {
  readonly hasCheckValve: boolean
  /** Where water runs out longest, and where air is drawn in first. */
  readonly lowest: TubeEnd
  readonly highest: TubeEnd
  /** Behind check valves: out of the pipes that lie higher than the lowest end of their row, through its lowest tubes. */
  readonly throughTubesL: number
  /** Without them: pipes and mains all the way back to the pits. */
  readonly backL: number
}

const endsOf = ({ piece, datumM, built, feed }: PlacedRow): readonly TubeEnd[] =>
  feed.tubes.map(({ station, line }, i) => ({
    part: built.part,
    station,
    line,
    levelMm: toMm((piece.mouths.levelM[i] ?? 0) + datumM),
  }))

/** Ends that are nearer in height than this, mm, are level: the first of them is named. */
const LEVEL_MM = 0.1

const litresHome = (bay: Bay, hasCheckValve: boolean): number => {
  const found = refill(withCheckValves(bay, hasCheckValve))
  return found ? found.rowsLitres + found.mainsLitres : 0
}

/**
 * What siphons when the pumps stop. Behind a check valve nothing holds a lateral but the height of its open ends: the lowest
 * ones drain all that lies higher. Without one the column in the mains falls back through the pumps and pulls all pipes with
 * it, until air comes in at the highest ends. Undefined where no water runs.
 */
export const siphonOf = (bay: Bay): Siphon | undefined => {
  const ends = planOf(bay)
    .rows.filter(({ built }) => bay.water.rows.has(built.part))
    .flatMap(endsOf)
  const [first] = ends
  if (!first) return undefined
  return {
    hasCheckValve: haveCheckValves(bay),
    lowest: ends.reduce((low, end) => (end.levelMm < low.levelMm - LEVEL_MM ? end : low), first),
    highest: ends.reduce((high, end) => (end.levelMm > high.levelMm + LEVEL_MM ? end : high), first),
    throughTubesL: litresHome(bay, true),
    backL: litresHome(bay, false),
  }
}
