const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b))

/** Beyond this many steps the exact search is not worth its time; the multiple of the common divisor stands. */
const MOST_STEPS = 100_000

/** Which whole numbers up to `most` are sums of `parts`, each used any number of times. */
const sumsUpTo = (most: number, parts: readonly number[]): Uint8Array => {
  const isSum = new Uint8Array(most + 1)
  isSum[0] = 1
  for (const part of parts)
    for (let sum = part; sum <= most; sum += 1) if (isSum[sum - part] === 1) isSum[sum] = 1
  return isSum
}

/**
 * The least sum of prices of boards that is not under `least`: no purchase costs anything between the two. Every sum is a multiple
 * of the prices' greatest common divisor; in steps of it, all numbers from (lowest - 1)(highest - 1) on are sums (Schur's bound on
 * the Frobenius number, from memory), and below that a table tells. Boards that cost nothing add nothing.
 */
export const attainableFrom = (least: number, costs: readonly number[]): number => {
  const prices = costs.filter((cost) => cost > 0)
  const step = prices.reduce(greatestCommon, 0)
  if (step === 0 || least <= 0) return 0
  const parts = prices.map((price) => price / step)
  const lowest = Math.min(...parts)
  const leastSteps = Math.ceil(least / step)
  if (leastSteps >= (lowest - 1) * (Math.max(...parts) - 1) || leastSteps > MOST_STEPS)
    return leastSteps * step
  return sumsUpTo(leastSteps + lowest, parts).indexOf(1, leastSteps) * step
}
