import { distance, type Point } from '../geometry/point'
import { nameOf } from '../layout/names'
import type { Built } from '../model/built'
import { gutterEnds } from '../model/gutterEnds'
import type { PartId } from '../model/ids'
import { datumAt, type DrainRun, type Join, type Levels } from '../model/levels'
import type { PitFacts, PitLevel } from '../model/pitFacts'
import type { RackFacts } from '../model/rackFacts'
import type { TroughFacts } from '../model/troughFacts'
import { wayHome, type WayHome, type WayStretch } from '../model/wayHome'
import { inches } from '../units/length'
import { dropOver } from '../units/slope'
import type { Evaluation } from './evaluation'

/** Which level it is, whatever it is called: what edits it and what the rules measure goes by this. */
export type LevelKind =
  | 'bar-top'
  | 'tip'
  | 'lip-high'
  | 'lip-low'
  | 'invert-high'
  | 'invert-outlet'
  | 'bearer-top'
  | 'datum'
  | 'drop-end'
  | 'floor'
  | 'crown'
  | 'invert'
  | 'low-end'
  | 'inlet'
  | PitLevel

/** A level by the name that the crew knows it by, mm from the benchmark's zero. */
export interface Level {
  readonly name: string
  readonly levelMm: number
  readonly kind: LevelKind
  /** Whose it is; undefined for the bare floor. */
  readonly part: PartId | undefined
  /** Of a place in a drain: how far that is from its high end, mm. */
  readonly alongMm?: number
}

/** The stack of levels under one place. */
export interface Stack {
  /** Whose it is: `Row 2, line 3`. */
  readonly whose: string
  /** The line of a row, 1-based, of so many; 1 of 1 for all else. */
  readonly line: number
  readonly lines: number
  /** Part, drains and pit that the water passes on its way down. */
  readonly parts: readonly PartId[]
  /** Top to bottom where the water falls all the way; a level out of order is a plan that is wrong. */
  readonly levels: readonly Level[]
}

const levelsOf = (
  part: PartId | undefined,
  rows: readonly (readonly [LevelKind, string, number])[],
): Level[] => rows.map(([kind, name, levelMm]) => ({ kind, name, levelMm, part }))

/** A drop tube ends so far inside the crown, loose: it can be lifted for cleaning, and shows its flow. Common practice, no source. */
const DROP_IN_CROWN_MM = inches(1 / 2)

/** Site level of a row's rack datum, mm: where one points, at the gutters' two ends, and at their outlet. */
interface RackDatums {
  readonly hereMm: number
  readonly highMm: number
  readonly lowMm: number
  readonly outletMm: number
}

const rackLevels = (
  part: PartId,
  rack: RackFacts,
  { hereMm, highMm, lowMm, outletMm }: RackDatums,
): Level[] =>
  levelsOf(part, [
    ['bar-top', 'Bar top', hereMm + rack.barTopMm],
    ['tip', 'Tower tip', hereMm + rack.tipMm],
    ['lip-high', 'Lip, high end', highMm + rack.lipHighMm],
    ['lip-low', 'Lip, low end', lowMm + rack.lipLowMm],
    ['invert-high', 'Invert, high', highMm + rack.invertHighMm],
    ['invert-outlet', 'Invert at outlet', outletMm + rack.invertOutletMm],
    ['bearer-top', 'Bearer top', hereMm + rack.bearerTopMm],
    ['datum', 'Rack datum', hereMm],
  ])

const rackDatums = (levels: Levels, built: Built, rack: RackFacts, at: Point): RackDatums => {
  const levelAt = (p: Point) => datumAt(levels, built.part, p)
  const outlet = built.mouths.find(({ role }) => role === 'trough-outlet')?.at ?? at
  const { high, low } = gutterEnds(built, rack)
  return { hereMm: levelAt(at), highMm: levelAt(high), lowMm: levelAt(low), outletMm: levelAt(outlet) }
}

const pitLevels = (part: PartId, pit: PitFacts): Level[] =>
  levelsOf(part, [
    ['overflowMm', 'Overflow', pit.overflowMm],
    ['drainBackMm', 'Drain-back', pit.drainBackMm],
    ['runningMm', 'Running', pit.runningMm],
    ['makeUpMm', 'Make-up', pit.makeUpMm],
    ['lowAlarmMm', 'Low alarm', pit.lowAlarmMm],
    ['pumpOffMm', 'Pump off', pit.pumpOffMm],
    ['intakeMm', 'Pump intake', pit.intakeMm],
    ['bottomMm', 'Bottom', pit.bottomMm],
  ])

const nearestTo = <T>(all: readonly T[], gapMm: (one: T) => number): T | undefined =>
  all.reduce<T | undefined>((near, one) => (near && gapMm(near) <= gapMm(one) ? near : one), undefined)

/** Where a part's water goes: each drain and its levels where the water comes in, then the pit. */
interface Way {
  readonly parts: readonly PartId[]
  readonly levels: readonly Level[]
}

const NOWHERE: Way = { parts: [], levels: [] }

const nameIn = ({ layout }: Evaluation, part: PartId): string => {
  const found = layout.parts.find(({ id }) => id === part)
  return found ? nameOf(found) : part
}

/** Crown and invert of a drain at a distance from its high end; the first drain of a way needs no name of its own. */
const passed = (run: DrainRun, alongMm: number, called: string): Level[] => {
  const invertMm = run.high.invertMm - dropOver(alongMm, run.slopeMmPerM)
  const crownMm = run.high.crownMm - dropOver(alongMm, run.slopeMmPerM)
  return levelsOf(run.part, [
    ['crown', `${called} crown`, crownMm],
    ['invert', `${called} invert`, invertMm],
  ]).map((level) => ({ ...level, alongMm }))
}

/** Where a drain ends: in the pit, or at the line that it joins. */
const lowEnd = (run: DrainRun, isAtPit: boolean, called: string): Level => ({
  ...(isAtPit
    ? { kind: 'inlet' as const, name: 'Pit inlet' }
    : { kind: 'low-end' as const, name: `${called} low end` }),
  levelMm: run.low.invertMm,
  part: run.part,
  alongMm: run.lengthMm,
})

const stretchLevels = (
  evaluation: Evaluation,
  { stretches, pit }: WayHome,
  stretch: WayStretch,
  index: number,
): Level[] => {
  const run = evaluation.bay.levels.drains.get(stretch.drain)
  if (!run) return []
  const called = index === 0 ? 'Drain' : nameIn(evaluation, stretch.drain)
  const isLast = index === stretches.length - 1
  return [...passed(run, stretch.fromMm, called), lowEnd(run, isLast && pit !== undefined, called)]
}

/** The way of water that comes into a drain so far from its high end: line after line, down to the bottom of the pit. */
const drainWay = (evaluation: Evaluation, drain: PartId, alongMm: number): Way => {
  const { bay } = evaluation
  const way = wayHome(bay.joins, drain, alongMm)
  const pit = way.pit === undefined ? undefined : bay.builtOf.get(way.pit)
  return {
    parts: [...way.stretches.map((stretch) => stretch.drain), ...(way.pit === undefined ? [] : [way.pit])],
    levels: [
      ...way.stretches.flatMap((stretch, index) => stretchLevels(evaluation, way, stretch, index)),
      ...(pit?.pit ? pitLevels(pit.part, pit.pit) : []),
    ],
  }
}

/** The join of a line's outlet; of the first line where that one has none. */
const outletJoin = ({ bay }: Evaluation, part: PartId, line: number | undefined): Join | undefined => {
  const outlets = bay.joins.filter(({ kind, from }) => kind === 'outlet-to-drain' && from === part)
  return outlets.find((join) => join.line === line) ?? outlets[0]
}

/** The drop tube under an outlet, then the way of the drain. */
const outletWay = (evaluation: Evaluation, join: Join | undefined): Way => {
  if (join?.to === undefined) return NOWHERE
  const way = drainWay(evaluation, join.to, join.alongMm)
  const crown = way.levels.find(({ kind }) => kind === 'crown')
  const tube = crown
    ? levelsOf(join.from, [['drop-end', 'Drop tube end', crown.levelMm - DROP_IN_CROWN_MM]])
    : []
  return { parts: way.parts, levels: [...tube, ...way.levels] }
}

/** The line of a row that a place lies in or nearest to, 1-based. */
const lineAt = ({ leftFace: { from, to }, runMm, lineReachMm }: RackFacts, p: Point): number => {
  const rightMm = ((p.x - from.x) * (to.y - from.y) - (p.y - from.y) * (to.x - from.x)) / runMm
  const near = nearestTo(lineReachMm, (reachMm) => Math.abs(reachMm - rightMm))
  return near === undefined ? 1 : lineReachMm.indexOf(near) + 1
}

const rackStack = (
  evaluation: Evaluation,
  built: Built,
  rack: RackFacts,
  { at, line = lineAt(rack, at) }: StackAt,
): Stack => {
  const way = outletWay(evaluation, outletJoin(evaluation, built.part, line))
  return {
    whose: `${nameIn(evaluation, built.part)}, line ${line}`,
    line,
    lines: rack.lines,
    parts: [built.part, ...way.parts],
    levels: [
      ...rackLevels(built.part, rack, rackDatums(evaluation.bay.levels, built, rack, at)),
      ...way.levels,
    ],
  }
}

const ONE = { line: 1, lines: 1 }

const drainStack = (evaluation: Evaluation, run: DrainRun, at: Point): Stack => {
  const stations = [run.high, ...run.outlets, ...run.pegs, run.low]
  const station = nearestTo(stations, (one) => distance(one.at, at)) ?? run.high
  const way = drainWay(evaluation, run.part, station.alongMm)
  const floor = levelsOf(undefined, [['floor', 'Floor', station.groundMm]])
  return {
    ...ONE,
    whose: nameIn(evaluation, run.part),
    parts: way.parts,
    levels: [...floor, ...way.levels],
  }
}

const pitStack = (evaluation: Evaluation, part: PartId, pit: PitFacts): Stack => ({
  ...ONE,
  whose: nameIn(evaluation, part),
  parts: [part],
  levels: [...levelsOf(part, [['rimMm', 'Rim', pit.rimMm]]), ...pitLevels(part, pit)],
})

/** A lone trough's own inverts; it stands on the floor, so that they are levels of the site. */
const troughLevels = (part: PartId, { fallMmPerM, outletFromHighMm }: TroughFacts, outlet: Join): Level[] =>
  levelsOf(part, [
    ['invert-high', 'Invert, high', outlet.at.z + dropOver(outletFromHighMm, fallMmPerM)],
    ['invert-outlet', 'Invert at outlet', outlet.at.z],
  ])

/** A part that is neither rack, drain nor pit: its outlet if it has one, and the floor under it. */
const otherStack = (evaluation: Evaluation, built: Built | undefined, at: Point): Stack => {
  const { site } = evaluation.bay
  const join = built && outletJoin(evaluation, built.part, undefined)
  const way = outletWay(evaluation, join)
  const own = built?.trough && join ? troughLevels(built.part, built.trough, join) : []
  const floor = levelsOf(undefined, [['floor', 'Floor', site.groundAt(at.x, at.y)]])
  return {
    ...ONE,
    whose: built ? nameIn(evaluation, built.part) : 'Floor here',
    parts: built ? [built.part, ...way.parts] : [],
    levels: [...own, ...floor, ...way.levels],
  }
}

/** Where the stack is wanted: a place, and of a row the line where it is not the one nearest to the place. */
export interface StackAt {
  readonly at: Point
  readonly line?: number | undefined
}

/**
 * All levels known at a place: of the part there, and of each drain and the pit that take its water. mm from the
 * benchmark's zero.
 */
export const levelStack = (evaluation: Evaluation, part: PartId | undefined, where: StackAt): Stack => {
  const { bay } = evaluation
  const built = part === undefined ? undefined : bay.builtOf.get(part)
  if (!built) return otherStack(evaluation, undefined, where.at)
  if (built.rack) return rackStack(evaluation, built, built.rack, where)
  if (built.pit) return pitStack(evaluation, built.part, built.pit)
  const run = bay.levels.drains.get(built.part)
  return run ? drainStack(evaluation, run, where.at) : otherStack(evaluation, built, where.at)
}
