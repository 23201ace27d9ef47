import { inches, toTicks } from '../units/length'

/** Shims as they are cut from composite board, thickest first, mm. Common practice, no source. */
export const shimsMm: readonly number[] = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16].map(inches)

/** Height in the thinnest shims, none finer. Counted in ticks, as the tape is read: a half goes up for both. */
const sixteenthsOf = (heightMm: number): number => Math.round(toTicks(heightMm) / toTicks(inches(1 / 16)))

/**
 * The pieces, thickest first, of a shim stack as near to a height in mm as the thinnest shim allows;
 * none where the height is nothing or less.
 */
export const shimStack = (heightMm: number): readonly number[] => {
  const pieces: number[] = []
  let left = sixteenthsOf(heightMm)
  for (const shimMm of shimsMm) {
    const sixteenths = sixteenthsOf(shimMm)
    const count = Math.max(0, Math.floor(left / sixteenths))
    for (let piece = 0; piece < count; piece++) pieces.push(shimMm)
    left -= count * sixteenths
  }
  return pieces
}
