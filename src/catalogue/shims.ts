import { inches } from '../units/length'

/** Shims as they are cut from composite board, thickest first, mm. Common practice, no source. */
export const shimsMm: readonly number[] = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16].map(inches)

/** The thinnest shim: no height is packed finer. */
const FINEST_MM = inches(1 / 16)

/**
 * The pieces, thickest first, of a shim stack as near to a height in mm as the thinnest shim allows;
 * none where the height is nothing or less.
 */
export const shimStack = (heightMm: number): readonly number[] => {
  const pieces: number[] = []
  let left = Math.round(heightMm / FINEST_MM)
  for (const shimMm of shimsMm) {
    const sixteenths = Math.round(shimMm / FINEST_MM)
    const count = Math.max(0, Math.floor(left / sixteenths))
    for (let piece = 0; piece < count; piece++) pieces.push(shimMm)
    left -= count * sixteenths
  }
  return pieces
}
