import type { Place } from '../geometry/point'
import type { PartId } from './ids'

/** How even a row's towers are fed. */
export type FlowState = 'Even' | 'Drifting' | 'Starved'

/** The solved water of a bay. Flows in litres an hour; heads as levels, mm from the benchmark's zero, unless said otherwise. */
export interface Water {
  /** Each row whose towers were reached by the solved network. A row without water is not in it. */
  readonly rows: ReadonlyMap<PartId, RowWater>
  /** Rows that no pump or head box feeds, with why. */
  readonly dry: ReadonlyMap<PartId, DryReason>
  readonly mains: ReadonlyMap<PartId, MainWater>
  /** By the pit that they stand in. */
  readonly pumps: ReadonlyMap<PartId, PumpWater>
  readonly boxes: ReadonlyMap<PartId, HeadBoxWater>
  /** By the row that has the valves. */
  readonly zones: ReadonlyMap<PartId, ZoneWater>
  /** Over all towers that are fed. */
  readonly bay: FlowFigures | undefined
  readonly totalLph: number
  /** What the solver says where the network could not be solved; the rest is then empty. */
  readonly fault: string | undefined
  readonly sweeps: number
}

/** `no-main`: joined to nothing. `no-supply`: its main meets neither pump nor head box. `shut`: behind a shut valve. */
export type DryReason = 'no-main' | 'no-supply' | 'shut'

/** A tower of a row. */
export interface TowerAt {
  readonly part: PartId
  /** 1-based, as the row's mouths count. */
  readonly station: number
  readonly line: number
  readonly at: Place
  readonly flowLph: number
}

/** Flows of many towers in a few numbers. All but the flows are shares, 1 for 100 %. */
export interface FlowFigures {
  readonly towers: number
  readonly meanLph: number
  readonly least: TowerAt
  readonly most: TowerAt
  /** (most - least) / most. */
  readonly spread: number
  readonly minOverMean: number
  /** Coefficient of variation, n - 1. */
  readonly variation: number
  readonly lowQuarter: number
  readonly christiansen: number
  /** With the scatter of the tubes themselves. */
  readonly emission: number
  readonly statistical: number
}

export interface RowWater {
  readonly part: PartId
  /** The row whose valves it is behind; itself where it has its own. */
  readonly zone: PartId
  readonly state: FlowState
  readonly figures: FlowFigures
  readonly totalLph: number
  /** In the order of the feed's tubes. */
  readonly tubeLph: Float64Array
  /** Levels, mm, in the order of the feed's joints. */
  readonly jointHeadMm: Float64Array
  /** Positive from `from` to `to`, in the order of the feed's pipes. */
  readonly pipeLph: Float64Array
  /** Mean height of the open ends of its tubes, mm from the benchmark's zero. */
  readonly outletMm: number
  /** Head at the entry of its laterals over the mean of the open ends, mm: what a sight tube there shows. */
  readonly entryHeadMm: number
  /** Of the tube that runs fastest. */
  readonly tubeReynolds: number
  /** Greatest velocity in its pipes, m/s. */
  readonly fastestMS: number
}

export interface MainWater {
  readonly part: PartId
  /** In order along the main. */
  readonly points: readonly MainPoint[]
  /** Between one point and the next, positive onward. */
  readonly legs: readonly MainLeg[]
  readonly fastestMS: number
}

export interface MainPoint {
  readonly at: Place
  readonly alongMm: number
  readonly headMm: number
  /** What joins here, if anything does. */
  readonly meets: PartId | undefined
}

export interface MainLeg {
  readonly flowLph: number
  readonly velocityMS: number
}

export interface PumpWater {
  readonly part: PartId
  /** Of all its pumps together. */
  readonly flowLph: number
  /** What they lift by, mm of water. */
  readonly headMm: number
  /** From the suction level to the mean open end, mm. */
  readonly staticMm: number
  readonly bypassLph: number
  /** Hydraulic. */
  readonly watts: number
  readonly isLifting: boolean
}

export interface HeadBoxWater {
  readonly part: PartId
  readonly inLph: number
  readonly outLph: number
}

export interface ZoneWater {
  /** The row with the valves. */
  readonly part: PartId
  readonly rows: readonly PartId[]
  readonly flowLph: number
  readonly isOpen: boolean
  /** Lost in union, ball and trim valve, mm. */
  readonly valveLossMm: number
  /** Head at its inlet, before the valves; level, mm. */
  readonly inletHeadMm: number
  /** Head behind the valves over the mean of the open ends, mm: the sight tube at the valve. */
  readonly sightMm: number
}
