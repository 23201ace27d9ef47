import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import type { StopRun } from '../../model/stopRun'
import { blockedDrain } from './whatIfDrain'
import { dryDays, stuckMakeUp } from './whatIfMakeUp'
import { flushedZone } from './whatIfFlush'
import type { PitNow, WhatIfRow } from './whatIfRow'
import { powerCut, returnBlocked } from './whatIfStop'
import { flushPlan, type ZoneFlush } from '../water/flush'
import { stopSources } from './stopSources'

/** A what-if needs the stop that has been run, and flushes take a solution each. */
export interface WhatIfInputs {
  readonly bay: Bay
  readonly stopped: StopRun
  readonly flushes: readonly ZoneFlush[]
}

const pitsOf = ({ bay, stopped }: WhatIfInputs): readonly PitNow[] => {
  const sources = stopSources(bay)
  return (sources?.pits ?? []).flatMap((pit) => {
    const stop = stopped.pits.get(pit.part)
    return stop ? [{ ...pit, stop, bay, sources }] : []
  })
}

/** Everything that may go wrong at one pit, in the order of how often it does. Common practice, no source. */
const rowsOf = (pit: PitNow, { flushes }: WhatIfInputs): readonly WhatIfRow[] =>
  [
    powerCut(pit),
    returnBlocked(pit),
    blockedDrain(pit),
    stuckMakeUp(pit),
    flushedZone(pit, flushes),
    dryDays(pit),
  ].flatMap((row) => row ?? [])

/** What goes wrong at each pit of a bay, and how long it takes. Screenings: what runs meanwhile is taken to run on as it does. */
export const whatIfRows = (inputs: WhatIfInputs): ReadonlyMap<PartId, readonly WhatIfRow[]> =>
  new Map(pitsOf(inputs).map((pit) => [pit.part, rowsOf(pit, inputs)]))

/** The flush of one zone after the other; each takes a few solutions of the bay. */
export function* zoneFlushes(bay: Bay): Generator<undefined, readonly ZoneFlush[]> {
  const plan = flushPlan(bay)
  const found: ZoneFlush[] = []
  for (const part of plan.zones) {
    yield undefined
    const zone = plan.zone(part)
    if (zone && zone.litres > 0) found.push(zone)
  }
  return found
}
