import type { RackFace } from '../model/rackFacts'
import type { Aisle } from './aisles'
import type { Bay } from './context'
import { CLOSE_MM } from './found'

/** Which way along x and y an aisle leaves the row. */
const leaves = (aisle: Aisle, row: string): { x: number; y: number } => {
  const sign = aisle.row === row ? 1 : -1
  return { x: sign * aisle.out.x, y: sign * aisle.out.y }
}

const facingOf = ({ facing }: RackFace) => ({
  x: facing === 0 ? 1 : facing === 180 ? -1 : 0,
  y: facing === 90 ? 1 : facing === 270 ? -1 : 0,
})

/** Whether a person can stand along a long face of a row: what stands beside the whole of it leaves room to pass. */
export const isWorked = (
  row: string,
  face: RackFace,
  { aislesAt, settings }: Pick<Bay, 'aislesAt' | 'settings'>,
): boolean => {
  const out = facingOf(face)
  return (aislesAt.get(row) ?? [])
    .filter((aisle) => aisle.along === 'face' && aisle.otherIs !== 'obstacle')
    .filter((aisle) => {
      const way = leaves(aisle, row)
      return way.x === out.x && way.y === out.y
    })
    .every((aisle) => aisle.widthMm >= settings.squeezeMm - CLOSE_MM)
}
