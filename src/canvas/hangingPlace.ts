import type { Point } from '../geometry/point'
import type { RackFacts } from '../model/rackFacts'

/** Where a tower hangs or could hang: both 1-based, station from the start, line from the left looking along the row. */
export interface HangingPlace {
  readonly station: number
  readonly line: number
}

/** The row's own axes at a place, mm: along the row from its start, and to the right of its left face. */
const inRow = (
  { leftFace: { from, to }, runMm }: RackFacts,
  p: Point,
): { alongMm: number; rightMm: number } => {
  const ux = (to.x - from.x) / runMm
  const uy = (to.y - from.y) / runMm
  const dx = p.x - from.x
  const dy = p.y - from.y
  return { alongMm: dx * ux + dy * uy, rightMm: dx * uy - dy * ux }
}

/** The place in a row whose tower would be under the pointer, taken out or not; undefined between towers. */
export const hangingPlaceAt = (rack: RackFacts, p: Point, reachMm: number): HangingPlace | undefined => {
  const { alongMm, rightMm } = inRow(rack, p)
  const station = Math.floor(alongMm / rack.pitchMm) + 1
  if (station < 1 || station > rack.stations) return undefined
  const offMm = alongMm - (station - 0.5) * rack.pitchMm
  const withinMm = rack.bodyMm / 2 + reachMm
  const line = rack.lineReachMm.findIndex((lineMm) => Math.hypot(rightMm - lineMm, offMm) <= withinMm)
  return line < 0 ? undefined : { station, line: line + 1 }
}
