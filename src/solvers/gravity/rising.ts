/** Steps that bring any depth here to far below a tick; most need ten. */
const MOST_STEPS = 100

/** Of the whole bracket: no depth is asked for more closely. */
const CLOSE = 1e-12

/**
 * Where a function that grows from below 0 at `low` to above 0 at `high` meets 0: false position with the Illinois halving
 * (Dowell and Jarratt, BIT 11 (1971) 168), and a plain halving wherever that gains less. Gives the nearer end where the
 * two ends do not hold a root between them.
 */
export const rootOfRising = (at: (x: number) => number, low: number, high: number): number => {
  let [x0, f0, x1, f1] = [low, at(low), high, at(high)]
  if (f0 >= 0) return low
  if (f1 <= 0) return high
  const close = CLOSE * (high - low)
  for (let step = 0; step < MOST_STEPS && x1 - x0 > close; step += 1) {
    const secant = x1 - (f1 * (x1 - x0)) / (f1 - f0)
    const x = step % 3 === 2 || !(secant > x0 && secant < x1) ? (x0 + x1) / 2 : secant
    const f = at(x)
    if (f === 0) return x
    if (f < 0) [x0, f0, f1] = [x, f, step % 3 === 2 ? f1 : f1 / 2]
    else [x1, f1, f0] = [x, f, step % 3 === 2 ? f0 : f0 / 2]
  }
  return (x0 + x1) / 2
}
