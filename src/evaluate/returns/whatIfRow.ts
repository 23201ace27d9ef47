import { litresAt } from '../../model/pitFacts'
import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import type { PitState } from '../../model/returns'
import type { PitStop } from '../../model/stopRun'
import { MINUTES_PER_HOUR } from '../../units/time'
import type { StopPit, StopSources } from './stopSources'

/** A pit as it stands in its bay, and what a stop makes of it. */
export interface PitNow extends StopPit {
  readonly stop: PitStop
  readonly bay: Bay
  readonly sources: StopSources | undefined
}

/** Of one thing that goes wrong at a pit. Times min, levels mm from the benchmark's zero, volumes L, flows L/h. */
export type WhatIfRow =
  | {
      readonly kind: 'power-cut'
      readonly state: PitState
      readonly levelMm: number
      readonly spiltL: number
      /** Until water runs through the overflow; undefined where it does not. */
      readonly overflowMin: number | undefined
    }
  | {
      readonly kind: 'return-blocked'
      readonly state: PitState
      readonly alarmMin: number
      readonly pumpOffMin: number
      /** What the pump has put out by then, and how much of it fits into the drains before it stands over the floor. */
      readonly outL: number
      readonly drainsHoldL: number
    }
  | {
      readonly kind: 'drain-blocked'
      readonly state: PitState
      readonly drain: PartId
      /** Of the worst hole, from the low end, and the peg's number by it if it has one. */
      readonly fromLowMm: number
      readonly cutLph: number
      /** Until the drain stands to the floor there. */
      readonly surchargeMin: number
      readonly pumpOffMin: number
    }
  | {
      readonly kind: 'make-up-stuck'
      readonly state: PitState
      readonly flowLph: number
      readonly overflowMin: number
      /** Over the overflow's invert, mm, where its pipe passes all of it; Infinity where it does not. */
      readonly overMm: number
      /** Until it runs over the rim; Infinity where the overflow passes it. */
      readonly rimMin: number
    }
  | {
      readonly kind: 'zone-flushed'
      readonly state: PitState
      readonly zone: PartId
      readonly litres: number
      readonly minutes: number
      readonly levelMm: number
      readonly pumpOffMin: number
    }
  | {
      readonly kind: 'no-make-up'
      readonly state: PitState
      readonly perDayL: number
      readonly alarmDays: number
      readonly pumpOffDays: number
      /** What the make-up valve lets in a day if it has to. */
      readonly valveDayL: number
    }

export type WhatIfKind = WhatIfRow['kind']

/** L between two levels of a pit, mm. */
export const litresBetween = ({ facts }: StopPit, highMm: number, lowMm: number): number =>
  litresAt(facts, highMm) - litresAt(facts, lowMm)

/** How long a flow, L/h, takes for a volume, L, min; Infinity where nothing flows. */
export const minutesFor = (litres: number, lph: number): number =>
  lph > 0 ? (Math.max(0, litres) / lph) * MINUTES_PER_HOUR : Infinity

/** Runs dry: thin where the alarm leaves less time to the pump's end than someone takes to come. */
export const dryState = (pit: PitNow, lostLph: number): PitState => {
  const { lowAlarmMm, pumpOffMm } = pit.facts
  const leftMin = minutesFor(litresBetween(pit, lowAlarmMm, pumpOffMm), lostLph)
  return leftMin < pit.bay.settings.alarmMin ? 'Thin' : 'Holds'
}
