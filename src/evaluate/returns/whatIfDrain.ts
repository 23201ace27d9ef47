import type { DrainRun } from '../../model/levels'
import { drainHoldsL } from './drainFill'
import type { StopDrain } from './stopSources'
import { dryState, litresBetween, minutesFor, type PitNow, type WhatIfRow } from './whatIfRow'

/** A rag just under a hole, and the flow that it cuts off. */
interface Blocked {
  readonly drain: StopDrain
  readonly run: DrainRun
  readonly fromLowMm: number
}

/** Of each line the lowest hole is the worst: all that comes into the line has passed it or comes in there. */
const lowestHole = (drain: StopDrain, run: DrainRun | undefined): readonly Blocked[] => {
  const last = run?.outlets.reduce<number>((most, { alongMm }) => Math.max(most, alongMm), 0)
  return run && last !== undefined ? [{ drain, run, fromLowMm: run.lengthMm - last }] : []
}

/** The drain blocked just under the hole where that cuts most water off, while the pumps go on. */
export const blockedDrain = (pit: PitNow): WhatIfRow | undefined => {
  const { sources, bay, facts, part } = pit
  const all = (sources?.drains ?? [])
    .filter(({ to, flowLph }) => to === part && flowLph > 0)
    .flatMap((drain) => lowestHole(drain, bay.levels.drains.get(drain.part)))
  const worst = all.reduce<Blocked | undefined>(
    (most, each) => (most && most.drain.flowLph >= each.drain.flowLph ? most : each),
    undefined,
  )
  if (!worst) return undefined
  const cutLph = worst.drain.flowLph
  return {
    kind: 'drain-blocked',
    state: dryState(pit, cutLph),
    drain: worst.drain.part,
    fromLowMm: worst.fromLowMm,
    cutLph,
    surchargeMin: minutesFor(drainHoldsL(bay, worst.drain, worst.fromLowMm), cutLph),
    pumpOffMin: minutesFor(litresBetween(pit, facts.runningMm, facts.pumpOffMm), cutLph),
  }
}
