import { inches, toTicks } from '../units/length'

/** Shims as they are cut from composite board, thickest first, mm. Common practice, no source. */
export const shimsMm: readonly number[] = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16].map(inches)

/** Their sizes in words, inches, in the same order. */
export const shimSizes: readonly string[] = ['1', '1/2', '1/4', '1/8', '1/16']

/** Height in the thinnest shims, none finer. Counted in ticks, as the tape is read: a half goes up for both. */
const sixteenthsOf = (heightMm: number): number => Math.round(toTicks(heightMm) / toTicks(inches(1 / 16)))

/** Like shims in a stack. */
export interface Shims {
  readonly thickMm: number
  readonly count: number
}

/**
 * The shims, thickest first, of a stack as near to a height in mm as the thinnest shim allows; none where the height is
 * nothing or less. They are counted, not listed: an absurd floor may ask for a mile of them.
 */
export const shimStack = (heightMm: number): readonly Shims[] => {
  const stack: Shims[] = []
  let left = sixteenthsOf(heightMm)
  for (const thickMm of shimsMm) {
    const sixteenths = sixteenthsOf(thickMm)
    const count = Math.max(0, Math.floor(left / sixteenths))
    if (count > 0) stack.push({ thickMm, count })
    left -= count * sixteenths
  }
  return stack
}

/** Catalogue key of a shim of a thickness: `foot-shim-1/2`. */
export const shimKey = (noun: string, thickMm: number): string =>
  `${noun}-${shimSizes[shimsMm.indexOf(thickMm)] ?? ''}`

/** Catalogue keys of the shims in a stack for a height, one a shim: `foot-shim-1/2`, `foot-shim-1/16`. */
export const shimKeys = (noun: string, heightMm: number): readonly string[] =>
  shimStack(heightMm).flatMap(({ thickMm, count }) => Array<string>(count).fill(shimKey(noun, thickMm)))
