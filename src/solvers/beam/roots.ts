const quadraticRoots = (a: number, b: number, c: number): number[] => {
  if (a === 0) return b === 0 ? [] : [-c / b]
  const under = b * b - 4 * a * c
  if (under < 0) return []
  const far = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2
  return far === 0 ? [0] : [far / a, c / far]
}

const valueAt = (c: readonly number[], s: number): number => c.reduceRight((sum, k) => sum * s + k, 0)

const slopeAt = (c: readonly number[], s: number): number =>
  (c[1] ?? 0) + s * (2 * (c[2] ?? 0) + s * 3 * (c[3] ?? 0))

const MOST_STEPS = 80

/** Newton's step where it stays between the bounds, else half of what is left, until nothing moves. */
const rootBetween = (c: readonly number[], low: number, high: number): number => {
  const isRising = valueAt(c, high) > 0
  let [from, to, s] = [low, high, (low + high) / 2]
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const value = valueAt(c, s)
    if (value > 0 === isRising) to = s
    else from = s
    const newton = s - value / slopeAt(c, s)
    const next = newton > from && newton < to ? newton : (from + to) / 2
    if (next === s) return s
    s = next
  }
  return s
}

/**
 * Where c0 + c1 s + c2 s² + c3 s³ is nothing strictly between 0 and `length`, to the last bit that counts, ascending: between two
 * turns of a cubic there is at most one such place.
 */
export const cubicRoots = (c: readonly [number, number, number, number], length: number): number[] => {
  const turns = quadraticRoots(3 * c[3], 2 * c[2], c[1]).filter((s) => s > 0 && s < length)
  const bounds = [0, ...turns.toSorted((a, b) => a - b), length]
  return bounds.slice(1).flatMap((high, i) => {
    const low = bounds[i] ?? 0
    const [atLow, atHigh] = [valueAt(c, low), valueAt(c, high)]
    if (atHigh === 0 && high < length) return [high]
    return atLow * atHigh < 0 ? [rootBetween(c, low, high)] : []
  })
}
