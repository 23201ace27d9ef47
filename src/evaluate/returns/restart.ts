import { polyOf } from '../../catalogue/pipe'
import type { Bay } from '../../checks/context'
import { levelAt, litresAt } from '../../model/pitFacts'
import type { PitRestart, RestartRun, StopMoment, StopRun } from '../../model/stopRun'
import { submergenceM } from '../../solvers/water/submergence'
import { toM3PerS } from '../../units/flow'
import { headM, toHeadM } from '../../units/head'
import { toSeconds } from '../../units/time'
import { atOnce, type InParts, standings } from './standings'
import { type Placed, stopCascade } from './stopCascade'
import { stopMoment } from './stopMoment'
import { type StopPit, type StopSources, stopSources, withCheckValves } from './stopSources'
import { growingTimes } from './stopTimes'

/** Nobody watches a bay start for longer, min. */
const WATCHED_MIN = 15

/** Closer to the pump-off level than this, mm, the float has moved. */
const AT_FLOAT_MM = 1

/** Least water level for each pump of a pit, mm: its intake is taken to be as wide as its discharge pipe. */
export const leastLevelMm = ({ facts, pump, pumpedLph }: StopPit): number | undefined => {
  if (!pump || pumpedLph <= 0) return undefined
  const boreM = toHeadM(polyOf(pump.stock).idMm)
  return facts.intakeMm + headM(submergenceM(toM3PerS(pumpedLph / pump.pumps), boreM))
}

const levelNow = (moment: StopMoment | undefined, { part, facts }: StopPit): number =>
  moment?.pitMm.get(part) ?? facts.bottomMm

const pitRestart = (pit: StopPit, moments: readonly StopMoment[], lastDripS: number): PitRestart => {
  const { part, facts, pumpedLph } = pit
  const lowest = moments.reduce((low, moment) => (levelNow(moment, pit) < levelNow(low, pit) ? moment : low))
  const lowestMm = levelNow(lowest, pit)
  const leastMm = leastLevelMm(pit)
  return {
    part,
    startMm: levelNow(moments[0], pit),
    filledMm: levelNow(
      moments.find(({ seconds }) => seconds >= lastDripS),
      pit,
    ),
    settledMm: levelNow(moments.at(-1), pit),
    lowestMm,
    lowestS: lowest.seconds,
    isPumpOff: pumpedLph > 0 && lowestMm <= facts.pumpOffMm + AT_FLOAT_MM,
    isAlarm: lowestMm < facts.lowAlarmMm,
    leastMm,
    sucksAir: leastMm !== undefined && lowestMm < leastMm,
  }
}

/** The start looks at the moment when the last tower drips, too. */
const timesOf = (lastDripS: number): readonly number[] => {
  const times = growingTimes(Math.max(toSeconds(WATCHED_MIN), 2 * lastDripS))
  return [...times, lastDripS].toSorted((a, b) => a - b)
}

function* runOf(sources: StopSources, bay: Bay, stopped: StopRun): InParts<RestartRun> {
  const startL = ({ part, facts }: StopPit) =>
    litresAt(facts, stopped.pits.get(part)?.endMm ?? facts.runningMm)
  const placed = stopCascade(sources, bay.settings, 'started', stopped.hasCheckValve, startL)
  const full: Placed = stopCascade(sources, bay.settings, 'stopped', stopped.hasCheckValve, startL)
  const running = Float64Array.from(full.cascade.stores, ({ litres }) => litres)
  const lastDripS = sources.refill.seconds
  const times = timesOf(lastDripS)
  const seen = yield* standings(placed.cascade, times)
  const moments = seen.map((standing, i) => stopMoment(times[i] ?? 0, standing, running, sources, placed))
  return {
    pits: new Map(sources.pits.map((pit) => [pit.part, pitRestart(pit, moments, lastDripS)])),
    lastDripS,
    lastRow: sources.refill.lastRow,
    moments,
  }
}

/**
 * What happens when the pumps start again from where a stop ended: pipes fill at the flows that the bay has once it runs,
 * then towers, troughs and drains take up what they let go. No make-up comes in meanwhile. Undefined where no water runs.
 */
export const restart = (bay: Bay, stopped: StopRun): RestartRun | undefined =>
  atOnce(restartInParts(bay, stopped))

/** The same in parts. */
export function* restartInParts(bay: Bay, stopped: StopRun): InParts<RestartRun | undefined> {
  const asked = withCheckValves(bay, stopped.hasCheckValve)
  const sources = stopSources(asked)
  return sources && (yield* runOf(sources, asked, stopped))
}

/** The level that a pit has when so much is drawn from a level, mm. */
export const levelAfter = ({ facts }: StopPit, fromMm: number, litres: number): number =>
  levelAt(facts, litresAt(facts, fromMm) - litres)
