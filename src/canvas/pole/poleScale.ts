import type { Level } from '../../evaluate/levelStack'

/** From levels to px down the pole, to scale. */
export interface PoleScale {
  readonly pxOf: (levelMm: number) => number
  readonly pxPerMm: number
  readonly lowMm: number
  readonly highMm: number
}

/** Even a stack of one level shows a stretch of rule round it, mm. */
const LEAST_MM = 600

/** The scale that shows all levels between `top` and `bottom` px. */
export const poleScale = (levels: readonly Level[], top: number, bottom: number): PoleScale => {
  const all = levels.map(({ levelMm }) => levelMm)
  const middle = all.length > 0 ? (Math.max(...all) + Math.min(...all)) / 2 : 0
  const half = Math.max(LEAST_MM, all.length > 0 ? Math.max(...all) - Math.min(...all) : 0) / 2
  const pxPerMm = (bottom - top) / (2 * half)
  return {
    pxOf: (levelMm) => top + (middle + half - levelMm) * pxPerMm,
    pxPerMm,
    lowMm: middle - half,
    highMm: middle + half,
  }
}
