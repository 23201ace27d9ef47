import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import type { PitFacts } from '../../model/pitFacts'
import type { PitState } from '../../model/returns'
import { type HomeKind, homeKinds, type HomeSource, type PitStop, type StopRun } from '../../model/stopRun'
import { atOnce, type InParts, type Standing, standings } from './standings'
import { type Placed, pitLevel, pitLitres, stopCascade, TOWER_LEFT } from './stopCascade'
import { stopMoment } from './stopMoment'
import { haveCheckValves, type StopSources, stopSources, withCheckValves } from './stopSources'
import { growingTimes, passedAt, untilAllHome, watchedS } from './stopTimes'

/** Less than this over the edge, L, is the rounding of levels. */
const SPILL_L = 0.05

const MOST = 1 - TOWER_LEFT

const sumAt = (places: ReadonlyMap<PartId, number>, litres: Standing): number => {
  let sum = 0
  for (const place of places.values()) sum += litres[place] ?? 0
  return sum
}

/** Stores by the kind of place that their water stands in. */
const storesOf = (placed: Placed): Readonly<Record<HomeKind, ReadonlyMap<PartId, number>>> => ({
  drains: placed.drains,
  troughs: placed.troughs,
  laterals: placed.pipes,
  towers: placed.towers,
  mains: placed.mains,
})

/**
 * When each kind's own water comes home. What goes one way keeps its order, as in a pipe: first what stood in the drains,
 * then what stood in the troughs, then towers and, behind a check valve, the laterals that drain through them. What runs
 * back through the pumps has its own way.
 */
const sourcesOf = (placed: Placed, times: readonly number[], seen: readonly Standing[], holds: boolean) => {
  const stores = storesOf(placed)
  const start = (kind: HomeKind) => sumAt(stores[kind], seen[0] ?? [])
  const byDrain: readonly HomeKind[] = holds
    ? ['drains', 'troughs', 'laterals', 'towers']
    : ['drains', 'troughs', 'towers']
  const gone = (kinds: readonly HomeKind[]) => {
    const all = kinds.reduce((sum, kind) => sum + start(kind), 0)
    return seen.map((litres) => all - kinds.reduce((sum, kind) => sum + sumAt(stores[kind], litres), 0))
  }
  const goneByDrain = gone(byDrain)
  const source = (kind: HomeKind): HomeSource[] => {
    const litres = start(kind)
    if (litres <= 0) return []
    if (!byDrain.includes(kind)) {
      return [{ kind, litres, beginsS: 0, mostHomeS: passedAt(times, gone([kind]), MOST * litres) }]
    }
    const ahead = kind === 'drains' ? 0 : start('drains') + (kind === 'troughs' ? 0 : start('troughs'))
    const together =
      kind === 'drains' || kind === 'troughs' ? litres : start('towers') + (holds ? start('laterals') : 0)
    return [
      {
        kind,
        litres,
        beginsS: ahead === 0 ? 0 : passedAt(times, goneByDrain, ahead),
        mostHomeS: passedAt(times, goneByDrain, ahead + MOST * together),
      },
    ]
  }
  const mostHomeS = passedAt(
    times,
    gone(homeKinds),
    MOST * homeKinds.reduce((sum, kind) => sum + start(kind), 0),
  )
  return { sources: homeKinds.flatMap(source), mostHomeS }
}

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
  const endMm = pitLevel(facts, at(placed.pits, last))
  const [overflowL, overRimL] = [at(placed.overflows, last), at(placed.rims, last)]
  const startL = at(placed.pits, seen[0])
  const levels = seen.map((litres) => pitLevel(facts, at(placed.pits, litres)))
  const isOver = overflowL + overRimL > SPILL_L
  return {
    part,
    startMm: pitLevel(facts, startL),
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
    pitLitres(facts, facts.runningMm),
  )
  const lastS = watchedS(bay.settings.towerDripMin)
  const shown = growingTimes(lastS)
  const times = [...shown, ...untilAllHome(lastS)]
  const seen = yield* standings(placed.cascade, times)
  const { sources: homes, mostHomeS } = sourcesOf(placed, times, seen, holds)
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
