import type { Point } from '../geometry/point'
import type { Settings } from '../layout/settings'
import type { StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import { inches } from '../units/length'
import { CLOSE_MM, stateFor } from './found'

/** Widths that the trade gives names to, narrowest first. Common practice, no source. */
export type AisleClass = 'squeeze' | 'scouting' | 'cart' | 'work' | 'main' | 'door/head'

/** A clear way between two things, measured leaf to leaf: between the widest parts of each, runner ends and bars included. */
export interface Aisle {
  readonly row: PartId
  /** What stands across the way; undefined is the wall. */
  readonly other: PartId | undefined
  readonly otherIs: 'row' | 'obstacle' | 'wall'
  /** Along a face of the row, where towers are worked, or past its end. */
  readonly along: 'face' | 'end'
  /** Out of the row, one unit long; from `from` to `to` unless the two run into each other. */
  readonly out: Point
  readonly from: Point
  readonly to: Point
  /** Negative where the two run into each other. */
  readonly widthMm: number
  /** How long the two stand side by side, mm. */
  readonly lengthMm: number
  readonly needMm: number
  /** Narrower than this nobody passes. */
  readonly clashBelowMm: number
}

/** Room on each side of a cart: hands, leaves and a crooked wheel. Common practice, no source. */
export const BESIDE_CART_MM = inches(6)

const MAIN_MM = inches(48)
const DOOR_HEAD_MM = inches(72)

/** The name the trade has for an aisle of this width. */
export const aisleClass = (widthMm: number, settings: Settings): AisleClass => {
  const isAtLeast = (leastMm: number): boolean => widthMm >= leastMm - CLOSE_MM
  if (isAtLeast(DOOR_HEAD_MM)) return 'door/head'
  if (isAtLeast(MAIN_MM)) return 'main'
  if (isAtLeast(settings.workAisleMm)) return 'work'
  if (isAtLeast(settings.cartMm + BESIDE_CART_MM)) return 'cart'
  return isAtLeast(settings.squeezeMm) ? 'scouting' : 'squeeze'
}

/** The state word of an aisle. */
export const aisleState = ({ widthMm, needMm, clashBelowMm }: Aisle): StateWord =>
  stateFor('fit', widthMm, needMm, clashBelowMm)

/** The aisles at each row, seen from either side. */
export const aislesByRow = (aisles: readonly Aisle[]): ReadonlyMap<PartId, readonly Aisle[]> => {
  const at = new Map<PartId, Aisle[]>()
  const add = (part: PartId, aisle: Aisle) => {
    const known = at.get(part)
    if (known) known.push(aisle)
    else at.set(part, [aisle])
  }
  for (const aisle of aisles) {
    add(aisle.row, aisle)
    if (aisle.otherIs === 'row' && aisle.other !== undefined) add(aisle.other, aisle)
  }
  return at
}
