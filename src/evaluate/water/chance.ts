/** Numbers from 0 up to 1, the same ones for the same seed. */
export type Chance = () => number

/** Mulberry32 (Tommy Ettinger, 2017, given to the public domain): good enough for draws by the thousand. */
export const chanceFrom = (seed: number): Chance => {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Anywhere from -1 to 1 alike. */
export const evenly = (chance: Chance): number => 2 * chance() - 1

/** From the normal distribution of mean 0 and deviation 1 (Box and Muller, Ann. Math. Stat. 29, 1958). */
export const normally = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance())

/** The value below which a share of some rising values lies, straight between two neighbours; NaN of none. */
export const percentile = (rising: Float64Array, share: number): number => {
  const at = share * (rising.length - 1)
  const below = Math.floor(at)
  const low = rising[below] ?? NaN
  return low + (at - below) * ((rising[below + 1] ?? low) - low)
}
