import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import { levelAt, litresAt, type PitFacts } from '../../model/pitFacts'
import type { PitState } from '../../model/returns'
import type { PitStop, StopRun } from '../../model/stopRun'
import { homeSources } from './homeSources'
import { atOnce, type InParts, type Standing, standings } from './standings'
import { type Placed, stopCascade } from './stopCascade'
import { stopMoment } from './stopMoment'
import { haveCheckValves, type StopSources, stopSources, withCheckValves } from './stopSources'
import { growingTimes, passedAt, untilAllHome, watchedS } from './stopTimes'

/** Less than this over the edge, L, is the rounding of levels. */
const SPILL_L = 0.05

const stateOf = (spiltL: number, endMm: number, { drainBackMm }: PitFacts): PitState => {
  if (spiltL > SPILL_L) return 'Spills'
  return endMm > drainBackMm ? 'Thin' : 'Holds'
}

const pitStop = (
  part: PartId,
  facts: PitFacts,
  placed: Placed,
  times: readonly number[],
  seen: readonly Standing[],
): PitStop => {
  const at = (places: ReadonlyMap<PartId, number>, litres: Standing | undefined) =>
    litres?.[places.get(part) ?? -1] ?? 0
  const last = seen.at(-1)
  const endMm = levelAt(facts, at(placed.pits, last))
  const [overflowL, overRimL] = [at(placed.overflows, last), at(placed.rims, last)]
  const startL = at(placed.pits, seen[0])
  const levels = seen.map((litres) => levelAt(facts, at(placed.pits, litres)))
  const isOver = overflowL + overRimL > SPILL_L
  return {
    part,
    startMm: levelAt(facts, startL),
    endMm,
    highestMm: Math.max(...levels),
    homeL: at(placed.pits, last) + overflowL + overRimL - startL,
    overflowL,
    overRimL,
    overflowS: isOver ? passedAt(times, levels, facts.overflowMm) : undefined,
    state: stateOf(overflowL + overRimL, endMm, facts),
  }
}

export interface StopOptions {
  /** As drawn where it is not said. */
  readonly hasCheckValve?: boolean
}

function* runOf(sources: StopSources, bay: Bay, holds: boolean): InParts<StopRun> {
  const placed = stopCascade(sources, bay.settings, 'stopped', holds, ({ facts }) =>
    litresAt(facts, facts.runningMm),
  )
  const lastS = watchedS(bay.settings.towerDripMin)
  const shown = growingTimes(lastS)
  const times = [...shown, ...untilAllHome(lastS)]
  const seen = yield* standings(placed.cascade, times)
  const { sources: homes, mostHomeS } = homeSources(placed, { times, seen }, holds)
  return {
    hasCheckValve: holds,
    sources: homes,
    totalL: homes.reduce((sum, { litres }) => sum + litres, 0),
    mostHomeS,
    pits: new Map(sources.pits.map(({ part, facts }) => [part, pitStop(part, facts, placed, times, seen)])),
    floorL: seen.at(-1)?.[placed.floor] ?? 0,
    moments: shown.map((seconds, i) => stopMoment(seconds, seen[i] ?? [], seen[0] ?? [], sources, placed)),
  }
}

/**
 * What happens when all pumps of a bay stop at once while it runs: water that stands in drains, troughs, towers and pipes
 * runs home through each other, pits rise from their running levels, and what is too much runs over. A model of stores:
 * gutters and drains let go as water at its normal depth does, towers so that their setting is met, pipes as a tank does
 * through a hole; waves and the seconds that water takes down a drain are left out. Undefined where no water runs.
 */
export const stopPump = (bay: Bay, options: StopOptions = {}): StopRun | undefined =>
  atOnce(stopInParts(bay, options))

/** The same in parts. */
export function* stopInParts(bay: Bay, { hasCheckValve }: StopOptions): InParts<StopRun | undefined> {
  const asked = withCheckValves(bay, hasCheckValve)
  const sources = stopSources(asked)
  return sources && (yield* runOf(sources, asked, haveCheckValves(asked)))
}
