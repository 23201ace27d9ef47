import { toM3PerS } from '../../units/flow'
import { MM_PER_M } from '../../units/length'
import { GRAVITY } from '../water/properties'
import { rootOfRising } from './rising'
import { areaMm2, heightMm, type Section, topWidthMm } from './section'

/** Of a bore: a pipe's surface narrows to nothing at its crown, so that no flow is critical there. */
const NEARLY_FULL = 1 - 1e-9

const widthMm = (section: Section): number =>
  section.shape === 'trapezoid' ? section.topMm : section.diameterMm

/** Q^2 / g, m5, in mm5. */
const flowSquareMm5 = (flowLph: number): number => (toM3PerS(flowLph) ** 2 / GRAVITY) * MM_PER_M ** 5

/**
 * Deeper than critical for a flow in a box as narrow as the section's narrower end, mm: (Q^2 / g b^2)^(1/3), and the
 * section's own height more.
 */
const deepMm = (section: Section, squareMm5: number): number =>
  heightMm(section) + Math.cbrt(squareMm5 / widthMm(section) ** 2) * 2

/**
 * Depth, mm, at which a flow, L/h, runs as fast as its own waves, so that what is below no longer holds it back: at a free
 * outfall. Q^2 T = g A^3 (Chow, Open-channel hydraulics (1959), equation 4-5). 0 for no flow; just under the bore for more
 * than a pipe can carry so.
 */
export const criticalDepthMm = (section: Section, flowLph: number): number => {
  if (flowLph <= 0) return 0
  const squareMm5 = flowSquareMm5(flowLph)
  const mostMm = section.shape === 'circle' ? section.diameterMm * NEARLY_FULL : deepMm(section, squareMm5)
  // As a cube root, so that the curve is nearly straight and few steps find it.
  return rootOfRising(
    (depthMm) =>
      areaMm2(section, depthMm) / Math.cbrt(topWidthMm(section, depthMm) || 1) - Math.cbrt(squareMm5),
    0,
    mostMm,
  )
}
