/** A column over so slender is not permitted, whatever it carries. Source: NDS 3.7.1.4. */
export const SLENDEREST = 50

/** pi squared over 12, as the code rounds it. */
const EULER = 0.822

/** Sawn lumber. */
const C = 0.8

/** How its ends are held: pinned at both, or fixed at the foot and free at the top. Source: NDS Appendix G, recommended design values, from memory. */
export const END_FACTOR = { pinned: 1, cantilever: 2.1 } as const

/** A solid rectangular column that buckles one way: its length between ends, the side that lies that way, how its ends are held. */
export interface ColumnWay {
  readonly lengthMm: number
  readonly sideMm: number
  readonly endFactor: number
}

/** Effective length over the side that lies the way it buckles. */
export const slendernessOf = ({ lengthMm, sideMm, endFactor }: ColumnWay): number =>
  (endFactor * lengthMm) / sideMm

/** Stress at which it buckles, F_cE, MPa, from the modulus for buckling. Source: NDS 3.7.1. */
export const bucklingMpa = (eMinMpa: number, slenderness: number): number =>
  (EULER * eMinMpa) / (slenderness * slenderness)

/**
 * Column stability factor C_P: what buckling leaves of the value along the grain, which is given with every other factor
 * on it. Source: NDS equation 3.7-1.
 */
export const stabilityOf = (bucklesAtMpa: number, alongMpa: number): number => {
  const ratio = bucklesAtMpa / alongMpa
  const mean = (1 + ratio) / (2 * C)
  return mean - Math.sqrt(mean * mean - ratio / C)
}
