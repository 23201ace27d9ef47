/** Where an axis begins and ends, and the round numbers written along it; all in the reader's own unit. */
export interface Ticks {
  readonly from: number
  readonly to: number
  readonly at: readonly number[]
  /** Decimals that tell one tick from the next. */
  readonly decimals: number
}

/** Steps that people count in, as multiples of a power of ten. */
const ROUND_STEPS = [1, 2, 5, 10]

/** An axis of one value still needs a length. */
const LEAST_SPAN = 1e-9

const roundStep = (rough: number): number => {
  const power = 10 ** Math.floor(Math.log10(rough))
  return power * (ROUND_STEPS.find((step) => step * power >= rough * (1 - 1e-9)) ?? 10)
}

/**
 * Ticks at steps of 1, 2 or 5 times a power of ten, no more than `most` steps of them, from the round number below `from`
 * to the one above `to`. Two equal ends are spread to one unit.
 */
export const niceTicks = (from: number, to: number, most: number): Ticks => {
  const low = Math.min(from, to)
  const high = Math.abs(to - from) > LEAST_SPAN ? Math.max(from, to) : low + 1
  // Widened at both ends, the axis may need two steps more than its span has.
  const step = roundStep((high - low) / Math.max(1, most - 1))
  const first = Math.floor(low / step + 1e-9)
  const last = Math.ceil(high / step - 1e-9)
  const at = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step)
  return {
    from: first * step,
    to: last * step,
    at,
    decimals: Math.max(0, -Math.floor(Math.log10(step) + 1e-9)),
  }
}
