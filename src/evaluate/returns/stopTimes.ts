import { toSeconds } from '../../units/time'

/** As many moments as an animation can use. */
const MOMENTS = 90

/** The first moment after the start, s. */
const FIRST_S = 0.5

/** Nobody watches less than this, min. */
const LEAST_MIN = 10

/** How long the moments reach, s: half as long again as a tower drips. */
export const watchedS = (towerDripMin: number): number => toSeconds(Math.max(LEAST_MIN, 1.5 * towerDripMin))

/** Times, s, from 0 to `lastS`, each further from the last than that from the one before: most happens at once. */
export const growingTimes = (lastS: number, count = MOMENTS): readonly number[] => {
  let [low, high] = [1, 4]
  const reach = (ratio: number) => FIRST_S * ((ratio ** (count - 1) - 1) / (ratio - 1))
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2
    if (reach(middle) < lastS) low = middle
    else high = middle
  }
  const ratio = (low + high) / 2
  return Array.from({ length: count }, (_, i) =>
    i === count - 1 ? lastS : FIRST_S * ((ratio ** i - 1) / (ratio - 1)),
  )
}

/** Further times, s, by which everything is home but what no gauge would show. */
export const untilAllHome = (lastS: number): readonly number[] =>
  [2, 4, 8, 16, 32, 64, 128].map((times) => times * lastS)

/** The time at which a series that rises passes a value, straight between its points; the last time if it never does. */
export const passedAt = (times: readonly number[], values: readonly number[], wanted: number): number => {
  const i = values.findIndex((value) => value >= wanted)
  if (i < 0) return times.at(-1) ?? 0
  const [after, before] = [values[i] ?? 0, values[i - 1] ?? 0]
  const [to, from] = [times[i] ?? 0, times[i - 1] ?? 0]
  return i === 0 || after <= before ? to : from + ((wanted - before) / (after - before)) * (to - from)
}
