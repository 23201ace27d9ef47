import type { Point } from '../geometry/point'
import type { PartId } from './ids'

/** The water on its way home by gravity: from tips over troughs and drains to the pits. Flows L/h, depths and levels mm, volumes L. */
export interface Returns {
  /** Of each row with troughs, and each lone trough. */
  readonly troughs: ReadonlyMap<PartId, TroughReturn>
  readonly drains: ReadonlyMap<PartId, DrainReturn>
  readonly pits: ReadonlyMap<PartId, PitReturn>
}

/** What holds an outlet's flow back: its rim as a weir, its bore as an orifice, or nothing yet. */
export type OutletRegime = 'weir' | 'orifice'

/** The troughs of a row, told by the line that carries most. */
export interface TroughReturn {
  readonly part: PartId
  /** The line that carries most, 1-based, and what it carries. */
  readonly line: number
  readonly towers: number
  readonly flowLph: number
  /** Of all its lines together. */
  readonly totalLph: number
  /** True where no water was solved for the row, so that its flow is what is wanted of each tower. */
  readonly isWanted: boolean
  /** Water over the invert where it is deepest, and how far that is from the high end. */
  readonly deepestMm: number
  readonly deepestAtMm: number
  /** Water over the invert at the outlet: what the outlet needs to pass the flow, or the flow's own depth if that is more. */
  readonly outletDepthMm: number
  readonly outletRegime: OutletRegime
  /** Most that the outlet passes without gulping air (Froude 0.3 on its full bore). */
  readonly ventedLph: number
  /** Water standing in all its lines while it runs. */
  readonly standingL: number
  /** Film that stands behind the outlet when nothing runs, at the low end. */
  readonly puddleMm: number
  /** From the water to the lip where it is least, as it runs; and once one outlet has been blocked for a minute. */
  readonly freeboardMm: number
  readonly blockedFreeboardMm: number
  /** From the tips down to the water as it runs, where it is least; less than 0 where one hangs in it; undefined without towers. */
  readonly tipAirMm: number | undefined
  /** How much a line grows from frost to noon, how much of that comes to one joiner, and what is left there; 0 without joiners. */
  readonly growthMm: number
  readonly joinerGrowthMm: number
  readonly joinerRoomMm: number
}

/** Of a drain line, between two places where water comes in or the line turns. */
export interface DrainReach {
  readonly fromMm: number
  readonly toMm: number
  readonly from: Point
  readonly to: Point
  readonly flowLph: number
  /** Water over the invert, and its share of the bore; 1 where it runs full. */
  readonly depthMm: number
  readonly share: number
  readonly velocityMS: number
  readonly state: DrainState
}

export type DrainState = 'Falls' | 'Flat' | 'Backs up'

export interface DrainReturn {
  readonly part: PartId
  /** From the high end down. */
  readonly reaches: readonly DrainReach[]
  /** At the low end. */
  readonly flowLph: number
  /** The worst state of its reaches, and the fullest of them. */
  readonly state: DrainState
  readonly fullest: DrainReach
  /** What it carries half full at its slope, and what it would take for 2 ft/s; 0 where it does not fall, or never runs so fast. */
  readonly halfFullLph: number
  readonly scourLph: number
  /** Water in the line as it runs. */
  readonly standingL: number
}

/** What comes home to a pit when its pumps stop, L. */
export interface Transit {
  readonly towersL: number
  readonly troughsL: number
  readonly drainsL: number
  /** Mains, zone pipes and pump pipes; 0 behind a check valve. */
  readonly mainsL: number
  /** Riser pipes, headers, laterals and microtubes; behind a check valve only what of them lies over the tube ends. */
  readonly lateralsL: number
  readonly totalL: number
}

export type PitState = 'Holds' | 'Thin' | 'Spills'

/** A pit: what comes to it, and how its depth is spent. */
export interface PitReturn {
  readonly part: PartId
  /** Drains and rows whose water comes here, and what they bring. */
  readonly drains: readonly PartId[]
  readonly rows: readonly PartId[]
  readonly inLph: number
  readonly transit: Transit
  /** With a quarter more, as pits are sized. Common practice, no source. */
  readonly designL: number
  /** From the bottom to pump off; from there to running; from running to the overflow less its margin; and to the rim. */
  readonly deadL: number
  readonly swingL: number
  readonly roomL: number
  readonly freeboardL: number
  /** What a stuck make-up valve or one zone's flush brings before someone comes. */
  readonly surgeL: number
  readonly state: PitState
}
