import { velocityMS } from './friction'
import { GRAVITY } from './properties'

/**
 * Least depth of water over a pump's intake that keeps a whirl from drawing air in, m: S = D (1 + 2.3 F) with
 * F = v / sqrt(g D), for an intake of bore D in m and a flow in m3/s. ANSI/HI 9.8, Rotodynamic pumps for pump intake
 * design, which is written for much larger intakes: for a small one take it as the least.
 */
export const submergenceM = (flowM3S: number, boreM: number): number =>
  boreM * (1 + (2.3 * velocityMS(flowM3S, boreM)) / Math.sqrt(GRAVITY * boreM))
