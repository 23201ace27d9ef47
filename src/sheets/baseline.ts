import type { House } from '../layout/house'
import { boxOf } from '../geometry/box'
import type { Point } from '../geometry/point'

/** A place as two tapes read it, mm. */
export interface FromWalls {
  readonly westMm: number
  readonly southMm: number
}

/** Which walls all tapes of the papers are held at. */
export const BASELINE = 'the inside of the west and south walls'

/** Running dimensions of a place from the baseline: the inside of the walls furthest west and south. */
export const fromWalls = ({ outline }: Pick<House, 'outline'>, { x, y }: Point): FromWalls => {
  const { x0, y0 } = boxOf(outline)
  return { westMm: x - x0, southMm: y - y0 }
}
