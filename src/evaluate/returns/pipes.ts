import { polyOf } from '../../catalogue/pipe'
import { length3 } from '../../geometry/point'
import type { Tube } from '../../model/built'
import { MM_PER_M } from '../../units/length'
import { cubicMetres } from '../../units/volume'

const L_PER_MM3 = cubicMetres(1) / MM_PER_M ** 3

/** Litres in a length, mm, of water so big across, mm2. */
export const litresIn = (acrossMm2: number, lengthMm: number): number => acrossMm2 * lengthMm * L_PER_MM3

/** Across the bore of a pipe, mm2. */
export const boreMm2 = (boreMm: number): number => (Math.PI * boreMm ** 2) / 4

/** Litres in so much poly pipe, drip tubing or microtube of a catalogue key, full. */
export const polyL = (stock: string, lengthMm: number): number =>
  litresIn(boreMm2(polyOf(stock).idMm), lengthMm)

/** Litres in some lengths of poly pipe, full. */
export const tubesL = (tubes: readonly Tube[]): number =>
  tubes.reduce((sum, { stock, lengthMm }) => sum + polyL(stock, lengthMm), 0)

/** Share of a pipe from one height to another that lies over a level, mm. */
export const shareOver = (levelMm: number, a: number, b: number): number => {
  const [low, high] = a < b ? [a, b] : [b, a]
  if (low >= levelMm) return 1
  return high <= levelMm ? 0 : (high - levelMm) / (high - low)
}

/** Litres in what of a pipe lies over a level, mm, as its path is measured; its slack left out. */
export const tubeOverL = ({ stock, path }: Tube, levelMm: number): number =>
  path.slice(1).reduce((sum, to, index) => {
    const from = path[index] ?? to
    return sum + polyL(stock, length3(from, to) * shareOver(levelMm, from.z, to.z))
  }, 0)
