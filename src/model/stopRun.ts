import type { PartId } from './ids'
import type { PitState } from './returns'

/** The bay at one moment after its pumps stopped, or started again. */
export interface StopMoment {
  readonly seconds: number
  /** Water level of each pit, mm from the benchmark's zero. */
  readonly pitMm: ReadonlyMap<PartId, number>
  /** What has run over so far, L. */
  readonly spiltL: ReadonlyMap<PartId, number>
  /** What is left of the water that stood in each row's towers, its troughs, and each drain, as shares of the start. */
  readonly towerShare: ReadonlyMap<PartId, number>
  readonly troughShare: ReadonlyMap<PartId, number>
  readonly drainShare: ReadonlyMap<PartId, number>
}

/** Where water stands while the bay runs, in the order in which it comes home. */
export const homeKinds = ['drains', 'troughs', 'laterals', 'towers', 'mains'] as const

export type HomeKind = (typeof homeKinds)[number]

/** What comes home from one kind of place, L, and when: its first water, and all but a twentieth of it, s after the stop. */
export interface HomeSource {
  readonly kind: HomeKind
  readonly litres: number
  readonly beginsS: number
  readonly mostHomeS: number
}

/** A pit after a stop. Levels mm from the benchmark's zero. */
export interface PitStop {
  readonly part: PartId
  readonly startMm: number
  readonly endMm: number
  readonly highestMm: number
  readonly homeL: number
  /** Through the overflow pipe, and over the rim where that does not take it all, L. */
  readonly overflowL: number
  readonly overRimL: number
  /** When water first comes to the overflow's invert, s; undefined where it never does. */
  readonly overflowS: number | undefined
  readonly state: PitState
}

/** What happens when all pumps of a bay stop at once. */
export interface StopRun {
  readonly hasCheckValve: boolean
  /** Only kinds that anything comes from. */
  readonly sources: readonly HomeSource[]
  readonly totalL: number
  /** Until all but a twentieth of it is home, s. */
  readonly mostHomeS: number
  readonly pits: ReadonlyMap<PartId, PitStop>
  /** What runs from troughs that no drain takes, or drains that no pit takes, L. */
  readonly floorL: number
  readonly moments: readonly StopMoment[]
}

/** What happens when they start again, all that could come home being home. Levels mm from the benchmark's zero. */
export interface RestartRun {
  readonly pits: ReadonlyMap<PartId, PitRestart>
  /** Until the last tower drips, s, and the row that it hangs in. */
  readonly lastDripS: number
  readonly lastRow: PartId | undefined
  readonly moments: readonly StopMoment[]
}

export interface PitRestart {
  readonly part: PartId
  readonly startMm: number
  /** When the last tower drips; and when all that is under way is under way. */
  readonly filledMm: number
  readonly settledMm: number
  readonly lowestMm: number
  readonly lowestS: number
  /** Its pumps came down to the pump-off level, and the float would stop them. */
  readonly isPumpOff: boolean
  readonly isAlarm: boolean
  /** Least level that keeps its pumps from drawing air; undefined for a pit whose pumps give nothing. */
  readonly leastMm: number | undefined
  readonly sucksAir: boolean
}
