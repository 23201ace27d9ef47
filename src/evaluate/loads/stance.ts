import type { Stance } from '../../model/strength'
import type { RowInput } from './rowInput'

/** How the row stands against a person who pushes it over its side. */
export const stanceOf = (_input: RowInput): Stance => ({
  baseHalfMm: 0,
  railMm: 0,
  riserMm: 0,
  oneSideMm: 0,
  oneSideLimitMm: 0,
  heightToBase: 0,
  tips: [],
  heldBy: undefined,
  state: 'Stands',
})
