/** Steps that bring any depth here to far below a tick; most need ten. */
const MOST_STEPS = 100

/** Of the whole bracket: no depth is asked for more closely. */
const CLOSE = 1e-11

/**
 * How far along from x1 to x2 to look next: where a curve through the last three points meets 0, if they lie so that it
 * can be trusted, and half-way if not. T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145, from memory.
 */
const nextShare = (x1: number, f1: number, x2: number, f2: number, x3: number, f3: number): number => {
  const xi = (x1 - x2) / (x3 - x2)
  const phi = (f1 - f2) / (f3 - f2)
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return 1 / 2
  return (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
}

/**
 * Where a function that grows from below 0 at `low` to above 0 at `high` meets 0, to 1e-11 of the way between; the nearer
 * end where the two ends do not hold a root between them.
 */
export const rootOfRising = (at: (x: number) => number, low: number, high: number): number => {
  let [x1, f1, x2, f2] = [low, at(low), high, at(high)]
  if (f1 >= 0) return low
  if (f2 <= 0) return high
  const close = CLOSE * (high - low)
  let share = f1 / (f1 - f2)
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const x = x1 + share * (x2 - x1)
    const f = at(x)
    const isSameSide = f > 0 === f1 > 0
    const [x3, f3] = isSameSide ? [x1, f1] : [x2, f2]
    if (!isSameSide) [x2, f2] = [x1, f1]
    ;[x1, f1] = [x, f]
    const least = close / Math.abs(x2 - x1)
    if (f === 0 || least > 1 / 2) break
    share = Math.min(Math.max(nextShare(x1, f1, x2, f2, x3, f3), least), 1 - least)
  }
  return Math.abs(f2) < Math.abs(f1) ? x2 : x1
}
