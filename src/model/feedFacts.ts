import type { Place } from '../geometry/point'

/** How water enters the laterals of a row. */
export type FeedKind = 'straight' | 'centre-split' | 'double-split' | 'ring'

/**
 * A row's own pipes, from where water enters it to the open ends of its microtubes, as joints and what runs between
 * them. Places are floor coordinates with heights above the rack datum, mm. Indexes are into the lists of this record.
 */
export interface FeedFacts {
  readonly kind: FeedKind
  /**
   * Joint 0 is where water comes in: the foot of the riser pipe, or, for a row behind another row's valve, the start of
   * its header.
   */
  readonly joints: readonly Place[]
  readonly pipes: readonly FeedPipe[]
  /** Undefined for a row behind another row's valve. */
  readonly valves: ZoneValves | undefined
  /** The joint from which another row may take its water: behind the valves, at the head of the riser pipe. */
  readonly shareJoint: number
  /** In the order of the row's `tower-head` mouths. */
  readonly tubes: readonly FeedTube[]
  readonly laterals: readonly FeedLateral[]
  /** Catalogue key of the pipe that the row's inlet and riser pipe are made of. */
  readonly inletStock: string
  /** Id of the main, or of the row with the valve, that the builder chose; undefined for the nearest in reach. */
  readonly waterFrom: string | undefined
}

export interface FeedPipe {
  readonly role: 'riser-pipe' | 'header' | 'sub-header' | 'lateral'
  readonly from: number
  readonly to: number
  /** Catalogue key of a poly pipe or drip tubing. */
  readonly stock: string
  readonly lengthMm: number
  /** Fittings and barbs in it, as multiples of its own velocity head. */
  readonly lossK: number
}

/** Union, ball valve and trim valve of a zone, between two joints. */
export interface ZoneValves {
  readonly from: number
  readonly to: number
  readonly boreMm: number
  /** All but the trim valve, as multiples of the velocity head in the bore. */
  readonly lossK: number
  readonly isOpen: boolean
  /** Turns that the trim valve stands open, and how many it has. */
  readonly trimTurns: number
  readonly trimTurnsAll: number
}

export interface FeedTube {
  readonly joint: number
  /** 1-based, as the row's mouths count. */
  readonly station: number
  readonly line: number
  /** Catalogue key of a microtube. */
  readonly stock: string
  /** What the water runs through: the metering length. */
  readonly lengthMm: number
  /** Its open end at the tower's top, in free air. */
  readonly outlet: Place
  /** Which colour group of a graded row, from 0 at the inlet; 0 where all tubes are cut alike. */
  readonly group: number
}

export interface FeedLateral {
  /** From the end at the row's start to the other; a ring ends where it began. */
  readonly joints: readonly number[]
  /** Distance of each of these joints from the row's start, mm. */
  readonly alongMm: readonly number[]
  /** Joints where water enters it. */
  readonly fedAt: readonly number[]
  readonly ends: readonly FeedEnd[]
  /** How far the pipe hangs through between its ties, and how much higher its last joint lies than its first; mm. */
  readonly sagMm: number
  readonly riseMm: number
}

/** An end of a lateral where it can be flushed. */
export interface FeedEnd {
  readonly joint: number
  readonly flush: 'cap' | 'valve' | 'none'
  readonly hasSightTube: boolean
}
