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
 * The least total length of whole boards that is not under `leastTicks`: no purchase lies between the two. Every sum
 * is a multiple of the lengths' greatest common divisor; in steps of it, all numbers from (shortest - 1)(longest - 1)
 * on are sums (Schur's bound on the Frobenius number, from memory), and below that a table tells.
 */
export const attainableFrom = (leastTicks: number, stockTicks: readonly number[]): number => {
  const step = stockTicks.reduce(greatestCommon, 0)
  if (step === 0 || leastTicks <= 0) return 0
  const parts = stockTicks.map((length) => length / step)
  const shortest = Math.min(...parts)
  const least = Math.ceil(leastTicks / step)
  if (least >= (shortest - 1) * (Math.max(...parts) - 1) || least > MOST_STEPS) return least * step
  return sumsUpTo(least + shortest, parts).indexOf(1, least) * step
}
