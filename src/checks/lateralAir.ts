import { polyOf } from '../catalogue/pipe'
import type { Point } from '../geometry/point'
import { distance } from '../geometry/point'
import type { Built } from '../model/built'
import type { FeedFacts, FeedLateral } from '../model/feedFacts'
import type { Mend } from '../model/finding'
import { climbAt, type Levels, type RowGrade } from '../model/levels'
import { rememberEach } from '../model/remember'
import { inches } from '../units/length'
import { CLOSE_MM } from './found'

/** Where air stands in a row's pipes and cannot get out. */
export interface AirTrap {
  readonly how: 'no-sight-tube' | 'falls' | 'sags' | 'droops'
  readonly at: Point
  /** How far the pipe lies out of what lets air go, and how far it may; mm. */
  readonly byMm: number
  readonly mayMm: number
  readonly mend: Mend | undefined
}

/** A tube may hang so far below its barb before it rises again. Common practice, no source. */
const DROOP_MM = inches(2)

/** What a builder's ties keep a lateral within. Common practice, no source. */
const TIED_SAG_MM = inches(1 / 8)

/** Levels are reckoned from where the row's own are: a row lies the same wherever it stands, but for its grade. */
interface Row {
  readonly built: Built
  readonly feed: FeedFacts
  readonly grade: RowGrade | undefined
}

const floorPoint = ({ x, y }: Point): Point => ({ x, y })

/** Level of a joint; of a row whose laterals were laid along its rails where they are taken as `isStraightened`. */
const levelAt = ({ feed, grade }: Row, joint: number, isStraightened = false): number => {
  const at = feed.joints[joint]
  return at ? climbAt(grade, at) + (isStraightened ? 0 : at.z) : 0
}

/** As long as the top of the one place lies over the middle of the other, air finds its way along a pipe. */
const halfBoreMm = ({ pipes }: FeedFacts): number =>
  polyOf(pipes.find(({ role }) => role === 'lateral')?.stock ?? 'pe-1/2').idMm / 2

const set = ({ built }: Row, field: string, value: string | number | boolean): Mend => ({
  kind: 'set',
  part: built.part,
  field,
  value,
})

const highest = (row: Row, joints: readonly number[]): number =>
  joints.reduce((top, joint) => (levelAt(row, joint) > levelAt(row, top) ? joint : top), joints[0] ?? 0)

/** How far the nearest vented end of a lateral lies under its highest joint, mm; Infinity without a vent. */
const underVent = (row: Row, { joints, ends }: FeedLateral, isStraightened = false): number => {
  const level = (joint: number) => levelAt(row, joint, isStraightened)
  const top = Math.max(...joints.map(level))
  return Math.min(...ends.filter(({ hasSightTube }) => hasSightTube).map(({ joint }) => top - level(joint)))
}

/** How far a straight lateral would fall to its sight tube if water came in at that end: its own rise goes along, the grade does not. */
const fallTurned = (row: Row, { fedAt, ends }: FeedLateral): number => {
  const [fed = 0, far = 0] = [fedAt[0], ends[0]?.joint]
  const climbMm = levelAt(row, far, true) - levelAt(row, fed, true)
  const riseMm = levelAt(row, far) - levelAt(row, fed) - climbMm
  return climbMm - riseMm
}

/** Laterals are laid along their rails; or on grade the water enters at the low end, so that they rise to their sight tubes. */
const ventMend = (row: Row, lateral: FeedLateral, mayMm: number): Mend | undefined => {
  if (underVent(row, lateral, true) <= mayMm) return set(row, 'lateralRiseMm', 0)
  if (row.feed.kind !== 'straight' || fallTurned(row, lateral) > mayMm) return undefined
  const isAtStart = lateral.fedAt.includes(lateral.joints[0] ?? -1)
  return set(row, 'inlet', isAtStart ? 'end' : 'start')
}

/** Air goes to the highest place of a lateral: a sight tube must stand there. */
const trapInLateral = (row: Row, lateral: FeedLateral): AirTrap[] => {
  if (lateral.ends.length === 0) return []
  const mayMm = halfBoreMm(row.feed)
  const byMm = underVent(row, lateral)
  if (byMm <= mayMm) return []
  const top = highest(row, lateral.joints)
  const at = floorPoint(row.feed.joints[top] ?? { x: 0, y: 0 })
  if (Number.isFinite(byMm)) return [{ how: 'falls', at, byMm, mayMm, mend: ventMend(row, lateral, mayMm) }]
  const vented = { ...lateral, ends: lateral.ends.map((end) => ({ ...end, hasSightTube: true })) }
  const mend = underVent(row, vented) <= mayMm ? set(row, 'sightTube', true) : undefined
  return [{ how: 'no-sight-tube', at, byMm: 0, mayMm, mend }]
}

const trapInSag = (row: Row): AirTrap[] => {
  const mayMm = halfBoreMm(row.feed)
  const sagging = row.feed.laterals.find(({ sagMm }) => sagMm > mayMm)
  const at = row.feed.joints[sagging?.fedAt[0] ?? -1]
  return sagging && at
    ? [
        {
          how: 'sags',
          at: floorPoint(at),
          byMm: sagging.sagMm,
          mayMm,
          mend: set(row, 'lateralSagMm', TIED_SAG_MM),
        },
      ]
    : []
}

/**
 * How far below its barb a tube hangs at its lowest if its spare length hangs free, as two straight legs of one slope:
 * their heights together are sqrt(L^2 - d^2). 0 where it falls all the way to its end, or can be laid over the bars.
 */
const droopMm = (feed: FeedFacts, index: number): number => {
  const tube = feed.tubes[index]
  const barb = tube && feed.joints[tube.joint]
  if (!tube || !barb) return 0
  const overMm = barb.z - tube.outlet.z
  const heightsMm = Math.sqrt(Math.max(0, tube.lengthMm ** 2 - distance(barb, tube.outlet) ** 2))
  const belowEndMm = (heightsMm - overMm) / 2
  return overMm > DROOP_MM || belowEndMm <= 0 ? 0 : (heightsMm + overMm) / 2
}

/** The tube that hangs lowest, and by how much; levels within a row do not ask where it stands. */
const lowestDroop = rememberEach<FeedFacts, null, { readonly byMm: number; readonly at: Point }>((feed) => {
  const droops = feed.tubes.map((_, index) => droopMm(feed, index))
  const byMm = Math.max(0, ...droops)
  const lowest = feed.tubes[droops.findIndex((droop) => droop >= byMm - CLOSE_MM)]
  return { byMm, at: floorPoint(lowest?.outlet ?? { x: 0, y: 0 }) }
})

const trapInTubes = (row: Row): AirTrap[] => {
  const { byMm, at } = lowestDroop(row.feed, null)
  if (byMm <= DROOP_MM) return []
  const mend = set(row, 'lateralAt', 'above-bars')
  return [{ how: 'droops', at, byMm, mayMm: DROOP_MM, mend }]
}

const worst = (traps: readonly AirTrap[]): AirTrap[] => {
  const [first, ...others] = traps
  return first ? [others.reduce((a, b) => (b.byMm > a.byMm + CLOSE_MM ? b : a), first)] : []
}

/** Where air stands in the laterals and tubes of a row, each sort once, where it is worst. */
export const lateralTraps = (built: Built, levels: Levels): readonly AirTrap[] =>
  trapsOf(built, levels.grades.get(built.part))

const trapsOf = rememberEach<Built, RowGrade | undefined, readonly AirTrap[]>((built, grade) => {
  const { feed } = built
  if (!feed) return []
  const row: Row = { built, feed, grade }
  return [
    ...worst(feed.laterals.flatMap((lateral) => trapInLateral(row, lateral))),
    ...trapInSag(row),
    ...trapInTubes(row),
  ]
})
