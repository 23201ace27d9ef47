import { distance, type Point } from '../geometry/point'
import { findingsOf } from '../evaluate/8-checks'
import type { Evaluation } from '../evaluate/evaluation'
import type { Built } from '../model/built'
import { rankOf, type Finding } from '../model/finding'
import { gutterEnds } from '../model/gutterEnds'
import type { PartId } from '../model/ids'
import { datumAt, type DrainRun, type DrainStation, type Join, type Levels } from '../model/levels'
import type { PitFacts } from '../model/pitFacts'
import type { RackFacts } from '../model/rackFacts'
import { nameOf } from '../store/partNames'

/** A level by the name that the crew knows it by, mm from the benchmark's zero. */
export interface Level {
  readonly name: string
  readonly levelMm: number
}

/** The stack of levels under one place. */
export interface Stack {
  /** Whose it is: `Row 2, line 3`. */
  readonly whose: string
  /** Part, drain and pit that the water passes on its way down. */
  readonly parts: readonly PartId[]
  /** Top to bottom where the water falls all the way; a level out of order is a plan that is wrong. */
  readonly levels: readonly Level[]
}

const level = (name: string, levelMm: number): Level => ({ name, levelMm })

/** Site level of a row's rack datum, mm: where one points, at the gutters' high end, and at their outlet. */
interface RackDatums {
  readonly hereMm: number
  readonly highMm: number
  readonly outletMm: number
}

const rackLevels = (rack: RackFacts, { hereMm, highMm, outletMm }: RackDatums): Level[] => [
  level('Bar top', hereMm + rack.barTopMm),
  level('Tower tip', hereMm + rack.tipMm),
  level('Lip, high end', highMm + rack.lipHighMm),
  level('Invert, high', highMm + rack.invertHighMm),
  level('Invert at outlet', outletMm + rack.invertOutletMm),
  level('Rack datum', hereMm),
]

const rackDatums = (levels: Levels, built: Built, rack: RackFacts, at: Point): RackDatums => {
  const levelAt = (p: Point) => datumAt(levels, built.part, p)
  const outlet = built.mouths.find(({ role }) => role === 'trough-outlet')?.at ?? at
  return {
    hereMm: levelAt(at),
    highMm: levelAt(gutterEnds(built, rack).high),
    outletMm: levelAt(outlet),
  }
}

const pitLevels = (pit: PitFacts): Level[] => [
  level('Overflow', pit.overflowMm),
  level('Drain-back', pit.drainBackMm),
  level('Running', pit.runningMm),
  level('Make-up', pit.makeUpMm),
  level('Low alarm', pit.lowAlarmMm),
  level('Pump off', pit.pumpOffMm),
  level('Bottom', pit.bottomMm),
]

const nearestTo = <T>(all: readonly T[], gapMm: (one: T) => number): T | undefined =>
  all.reduce<T | undefined>((near, one) => (near && gapMm(near) <= gapMm(one) ? near : one), undefined)

/** Where a part's water goes: the drain and its levels there, then the pit. */
interface Way {
  readonly parts: readonly PartId[]
  readonly levels: readonly Level[]
}

const NOWHERE: Way = { parts: [], levels: [] }

const pitWay = (pit: Built | undefined): Way =>
  pit?.pit ? { parts: [pit.part], levels: pitLevels(pit.pit) } : NOWHERE

const drainWay = ({ bay }: Evaluation, run: DrainRun, station: DrainStation): Way => {
  const into = bay.joins.find(({ kind, from }) => kind === 'drain-to-pit' && from === run.part)?.to
  const pit = pitWay(into === undefined ? undefined : bay.builtOf.get(into))
  return {
    parts: [run.part, ...pit.parts],
    levels: [
      level('Drain crown', station.crownMm),
      level('Drain invert', station.invertMm),
      ...(into === undefined ? [] : [level('Pit inlet', run.low.invertMm)]),
      ...pit.levels,
    ],
  }
}

/** The line whose outlet is nearest across the row, since that is the one pointed at. */
const outletJoin = ({ bay }: Evaluation, part: PartId, line: number | undefined): Join | undefined => {
  const outlets = bay.joins.filter(({ kind, from }) => kind === 'outlet-to-drain' && from === part)
  return outlets.find((join) => join.line === line) ?? outlets[0]
}

const outletWay = (evaluation: Evaluation, join: Join | undefined): Way => {
  const run = join?.to === undefined ? undefined : evaluation.bay.levels.drains.get(join.to)
  const station = run && join && nearestTo(run.outlets, ({ alongMm }) => Math.abs(alongMm - join.alongMm))
  return run && station ? drainWay(evaluation, run, station) : NOWHERE
}

/** The line of a row that a place lies in or nearest to, 1-based. */
const lineAt = ({ leftFace: { from, to }, runMm, lineReachMm }: RackFacts, p: Point): number => {
  const rightMm = ((p.x - from.x) * (to.y - from.y) - (p.y - from.y) * (to.x - from.x)) / runMm
  const near = nearestTo(lineReachMm, (reachMm) => Math.abs(reachMm - rightMm))
  return near === undefined ? 1 : lineReachMm.indexOf(near) + 1
}

const rackStack = (evaluation: Evaluation, built: Built, rack: RackFacts, at: Point, name: string): Stack => {
  const line = lineAt(rack, at)
  const way = outletWay(evaluation, outletJoin(evaluation, built.part, line))
  return {
    whose: `${name}, line ${line}`,
    parts: [built.part, ...way.parts],
    levels: [...rackLevels(rack, rackDatums(evaluation.bay.levels, built, rack, at)), ...way.levels],
  }
}

const drainStack = (evaluation: Evaluation, run: DrainRun, at: Point, name: string): Stack => {
  const stations = [run.high, ...run.outlets, run.low]
  const station = nearestTo(stations, (one) => distance(one.at, at)) ?? run.high
  const way = drainWay(evaluation, run, station)
  return { whose: name, parts: way.parts, levels: [level('Floor', station.groundMm), ...way.levels] }
}

const pitStack = ({ part }: Built, pit: PitFacts, name: string): Stack => ({
  whose: name,
  parts: [part],
  levels: [level('Rim', pit.rimMm), ...pitLevels(pit)],
})

/** A part that is neither rack, drain nor pit: the floor under it, and its outlet if it has one. */
const otherStack = (evaluation: Evaluation, built: Built | undefined, at: Point, name: string): Stack => {
  const { site } = evaluation.bay
  const join = built && outletJoin(evaluation, built.part, undefined)
  const way = outletWay(evaluation, join)
  const outlet = join ? [level('Invert at outlet', join.at.z)] : []
  return {
    whose: name,
    parts: built ? [built.part, ...way.parts] : [],
    levels: [...outlet, level('Floor', site.groundAt(at.x, at.y)), ...way.levels],
  }
}

/** All levels known so far at a place: of the part there, and of the drain and the pit that take its water. */
export const levelStack = (evaluation: Evaluation, part: PartId | undefined, at: Point): Stack => {
  const found = evaluation.layout.parts.find(({ id }) => id === part)
  const built = part === undefined ? undefined : evaluation.bay.builtOf.get(part)
  const name = found ? nameOf(found) : 'Floor here'
  if (!built) return otherStack(evaluation, undefined, at, name)
  if (built.rack) return rackStack(evaluation, built, built.rack, at, name)
  if (built.pit) return pitStack(built, built.pit, name)
  const run = evaluation.bay.levels.drains.get(built.part)
  return run ? drainStack(evaluation, run, at, name) : otherStack(evaluation, built, at, name)
}

/** A gap between two levels that a check found too small. */
export interface ShortGap {
  readonly from: Level
  readonly to: Level
  readonly finding: Finding
}

/** Which two levels a rule measures between. */
const measuredBetween: Readonly<Record<string, readonly [string, string]>> = {
  'level-stack-short': ['Tower tip', 'Invert, high'],
  'outlet-drop-min': ['Invert at outlet', 'Drain crown'],
  'drain-cover-min': ['Floor', 'Drain crown'],
  'pit-inlet-level': ['Pit inlet', 'Overflow'],
}

/** The gaps of a stack that are too small, as the checks found them: the pole judges nothing by itself. */
export const shortGaps = ({ bay }: Evaluation, { parts, levels }: Stack): ShortGap[] =>
  findingsOf(bay).flatMap((finding) => {
    const names = measuredBetween[finding.rule]
    if (!names || rankOf(finding) === 0 || !finding.parts.every((part) => parts.includes(part))) return []
    const [from, to] = names.map((name) => levels.find((one) => one.name === name))
    return from && to ? [{ from, to, finding }] : []
  })
