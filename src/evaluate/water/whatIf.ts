import type { PartId } from '../../model/ids'

/**
 * What makes towers of one bay differ: the length of main and zone pipes between pump and valve; how high each open end
 * hangs; friction along the laterals; riser pipes, headers and valves; water that is not at 20 °C; microtubes of unlike
 * bore; microtubes of unlike length.
 */
export const causes = ['main', 'level', 'lateral', 'header', 'temperature', 'bore', 'length'] as const

export type Cause = (typeof causes)[number]

/** The bay as drawn, but for what is said here. Nothing in it is an edit: it is for asking what would happen. */
export interface WhatIf {
  /** Zones opened (true) or shut, by the row that has the valves. */
  readonly valves?: ReadonlyMap<PartId, boolean>
  /** Trim valves that stand open by so many turns, by the row that has the valves. */
  readonly trimTurns?: ReadonlyMap<PartId, number>
  readonly filter?: 'clean' | 'dirty'
  /** Water temperature, °C. */
  readonly waterC?: number
  /** Share of the speed that the pump curves were taken at. */
  readonly pumpSpeed?: number
  /** Causes switched off: no loss in those pipes, or open ends, bores or lengths alike at their mean over the bay. */
  readonly without?: ReadonlySet<Cause>
  /** Added to the height of each open end, mm, by row, in the order of the feed's tubes. */
  readonly outletShiftMm?: ReadonlyMap<PartId, Float64Array>
  /** Multiplies the bore of each tube, by row, in the order of the feed's tubes. */
  readonly boreFactor?: ReadonlyMap<PartId, Float64Array>
}

/** The bay as it is drawn. */
export const AS_DRAWN: WhatIf = {}
