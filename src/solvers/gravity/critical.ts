import { toM3PerS } from '../../units/flow'
import { MM_PER_M } from '../../units/length'
import { GRAVITY } from '../water/properties'
import { rootOfRising } from './rising'
import { areaMm2, type Section, topWidthMm } from './section'

const MM5_PER_M5 = MM_PER_M ** 5

/** Square of a flow, L/h, over gravity, mm5: so written, all else about open channels is lengths. */
export const squareOf = (flowLph: number): number => {
  const flowM3S = toM3PerS(flowLph)
  return ((flowM3S * flowM3S) / GRAVITY) * MM5_PER_M5
}

/** Of a bore: a pipe's surface narrows to nothing at its crown, so that no flow is critical there. */
const NEARLY_FULL = 1 - 1e-9

/** Critical depth in a box of a width, mm: (Q^2 / g b^2)^(1/3). */
const inBoxMm = (squareMm5: number, boxMm: number): number => Math.cbrt(squareMm5 / (boxMm * boxMm))

/** Depths, mm, between which critical depth lies: a wider box's and a narrower one's. */
const bracket = (section: Section, squareMm5: number): readonly [number, number] => {
  if (section.shape === 'trapezoid')
    return [inBoxMm(squareMm5, section.topMm), inBoxMm(squareMm5, section.bottomMm)]
  const { diameterMm } = section
  const leastMm = inBoxMm(squareMm5, diameterMm)
  return section.shape === 'circle'
    ? [Math.min(leastMm, diameterMm * NEARLY_FULL), diameterMm * NEARLY_FULL]
    : // Over the lip half a circle is a box, and under it what it lacks of one is less than its own height.
      [leastMm, leastMm + diameterMm / 2]
}

/** As `criticalDepthMm`, of a flow given as its square over gravity. */
export const criticalOfSquare = (section: Section, squareMm5: number): number => {
  if (squareMm5 <= 0) return 0
  const [leastMm, mostMm] = bracket(section, squareMm5)
  const wanted = Math.cbrt(squareMm5)
  // As a cube root, so that the curve is nearly straight and few steps find it.
  return rootOfRising(
    (depthMm) => areaMm2(section, depthMm) / Math.cbrt(topWidthMm(section, depthMm)) - wanted,
    leastMm,
    mostMm,
  )
}

/**
 * Depth, mm, at which a flow, L/h, runs as fast as its own waves, so that what is below no longer holds it back: at a free
 * outfall. Q^2 T = g A^3 (Chow, Open-channel hydraulics (1959), equation 4-5). 0 for no flow; just under the bore for more
 * than a pipe can carry so.
 */
export const criticalDepthMm = (section: Section, flowLph: number): number =>
  criticalOfSquare(section, flowLph <= 0 ? 0 : squareOf(flowLph))
