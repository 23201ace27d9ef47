import { polyOf } from '../../catalogue/pipe'
import type { Settings } from '../../layout/settings'
import type { FeedFacts } from '../../model/feedFacts'
import { deriveFeed } from '../../parts/rack-row/deriveFeed'
import type { RackRow } from '../../parts/rack-row/schema'
import { type GradedCut, gradedCut, type GradedWish } from '../../solvers/water/gradedCut'
import { waterAt } from '../../solvers/water/properties'
import { TUBE_LOSS_K } from '../../solvers/water/tube'
import { toM3PerS } from '../../units/flow'
import { inches, onTick } from '../../units/length'
import { boresOf } from './bores'
import { type Branch, branchesOf } from './branches'
import type { RowBay } from './feedVariant'
import { toM, toMm } from './metres'
import { pieceAlone, type RowAlone, rowAlone } from './rowAlone'

/** Stations next to each other, by the row's own numbers. */
export interface StationRun {
  readonly from: number
  readonly to: number
}

/** One bundle of the bench's cut card. */
export interface GradedGroup {
  /** From 0 where the water enters. */
  readonly group: number
  /** Letter on the bundle. */
  readonly label: string
  readonly lengthMm: number
  /** Counted from where the water enters, along each branch, 1-based. */
  readonly fromEntry: StationRun
  /** The row's stations that get it: one run of a straight feed, several of a split one. */
  readonly stations: readonly StationRun[]
  readonly tubes: number
}

/** Tubes cut by station for one row. */
export interface GradedRow {
  readonly groups: readonly GradedGroup[]
  /** Length that would give every tower the same, station by station from where the water enters, mm. */
  readonly exactMm: readonly number[]
  readonly stepMm: number
  /** The row solved by itself with its tubes cut alike, and with these groups. */
  readonly before: RowAlone
  readonly after: RowAlone
  /** What one press writes into the row. */
  readonly gradedTubes: RackRow['gradedTubes']
}

export type GradedBay = Pick<RowBay, 'site' | 'settings' | 'levels'>

/** Four colours of tape tell bundles apart at a glance. Common practice, no source. */
const MOST_GROUPS = 4

const METRIC_STEP_MM = 25

/** What a bench is cut to: whole inches, or the metric length next to them. */
export const benchStepMm = ({ units }: Pick<Settings, 'units'>): number =>
  units === 'metric' ? METRIC_STEP_MM : inches(1)

/** The shortest tube: what the row's tubes are cut to, or what its furthest tower needs to be turned, in whole steps. */
const shortestMm = ({ microtubeMm }: RackRow, { tubes }: FeedFacts, stepMm: number): number => {
  const longest = tubes.reduce((most, { lengthMm }) => Math.max(most, lengthMm), microtubeMm)
  return longest > microtubeMm ? Math.ceil(longest / stepMm) * stepMm : microtubeMm
}

const wishOf = (
  row: RackRow,
  feed: FeedFacts,
  { targetLph, bucket }: Settings,
  stepMm: number,
): GradedWish => ({
  flowM3S: toM3PerS(targetLph),
  shortestM: toM(shortestMm(row, feed, stepMm)),
  stock: { boreM: boresOf(bucket)(row.microtube), lossK: TUBE_LOSS_K },
  mostGroups: MOST_GROUPS,
  stepM: toM(stepMm),
})

const isAlike = (a: Branch, b: Branch): boolean =>
  a.stations.length === b.stations.length && a.towers.every((towers, i) => towers === b.towers[i])

const towersOf = ({ towers }: Branch): number => towers.reduce((sum, each) => sum + each, 0)

const TRIED = 3

/** The branches that groups are found for: those with most towers, and of like ones the first. */
const unlikeBranches = (branches: readonly Branch[]): readonly Branch[] =>
  branches
    .filter((branch, i) => branches.findIndex((other) => isAlike(other, branch)) === i)
    .toSorted((a, b) => towersOf(b) - towersOf(a))
    .slice(0, TRIED)

const gradedTubesOf = ({ groups }: GradedCut): RackRow['gradedTubes'] =>
  groups.map(({ count, lengthM }) => ({ stations: count, lengthMm: onTick(toMm(lengthM)) }))

const runsOf = (stations: readonly number[]): readonly StationRun[] => {
  const runs: { from: number; to: number }[] = []
  for (const station of [...new Set(stations)].toSorted((a, b) => a - b)) {
    const last = runs.at(-1)
    if (last && station === last.to + 1) last.to = station
    else runs.push({ from: station, to: station })
  }
  return runs
}

const FIRST_LETTER = 'A'.charCodeAt(0)

const groupsOf = ({ tubes }: FeedFacts, gradedTubes: RackRow['gradedTubes']): readonly GradedGroup[] => {
  let before = 0
  return gradedTubes.map(({ stations, lengthMm }, group) => {
    const own = tubes.filter((tube) => tube.group === group)
    const from = before + 1
    before += stations
    return {
      group,
      label: String.fromCharCode(FIRST_LETTER + group),
      lengthMm,
      fromEntry: { from, to: before },
      stations: runsOf(own.map(({ station }) => station)),
      tubes: own.length,
    }
  })
}

const withCut = (
  row: RackRow,
  cut: GradedCut,
  bay: GradedBay,
): Omit<GradedRow, 'before' | 'stepMm'> | undefined => {
  const part = { ...row, gradedTubes: gradedTubesOf(cut) }
  const built = deriveFeed(part, bay.site)
  const after = rowAlone(built, bay)
  return built.feed && after
    ? {
        groups: groupsOf(built.feed, part.gradedTubes),
        exactMm: [...cut.exactM].map(toMm),
        after,
        gradedTubes: part.gradedTubes,
      }
    : undefined
}

/**
 * Tubes cut by station that cancel the head line of a row's laterals at the flow wanted: at most four lengths, in whole
 * steps, the same along every branch. The groups are found for the branches one by one and each is tried on the whole
 * row; the most even one is taken. Undefined for a row without towers, or where no length of tube helps. Cutting tubes by
 * station to even out their flow is published practice (microtube laterals designed step by step).
 */
export const gradedRow = (
  row: RackRow,
  bay: GradedBay,
  stepMm: number = benchStepMm(bay.settings),
): GradedRow | undefined => {
  const alike = { ...row, gradedTubes: [] }
  const built = deriveFeed(alike, bay.site)
  const before = rowAlone(built, bay)
  if (!built.feed || !before) return undefined
  const piece = pieceAlone(built, built.feed, bay)
  const wish = wishOf(alike, built.feed, bay.settings, stepMm)
  const { kinematicM2S } = waterAt(bay.settings.waterC)
  const tried = unlikeBranches(branchesOf(built.feed, piece, toM(polyOf(row.lateral).idMm))).flatMap(
    (branch) => {
      const cut = gradedCut(branch, wish, kinematicM2S)
      return (cut && withCut(alike, cut, bay)) ?? []
    },
  )
  const [best] = tried.toSorted((a, b) => a.after.figures.spread - b.after.figures.spread)
  return best && { ...best, before, stepMm }
}
