import { fromM3PerS } from '../../units/flow'
import { toHeadM } from '../../units/head'
import { GRAVITY } from '../water/properties'
import { crestHeadMm, crestLph, orificeHeadMm, orificeLph } from './orifice'

/** A hole in the bottom of a trough: first its rim holds the water back, then its bore. */
export interface OutletDepth {
  /** Over the rim, mm. */
  readonly depthMm: number
  readonly regime: 'weir' | 'orifice'
}

/** A drilled hole with a flanged tube in it: a little less than a clean sharp one. */
const BORE_COEFFICIENT = 0.61

/** An unsealed drop swallows its own air, and neither gulps nor surges, while V / sqrt(g D) on its full bore is less. */
const VENTED_FROUDE = 0.3

const rimMm = (boreMm: number): number => Math.PI * boreMm

/**
 * Depth that an outlet of a bore, mm, needs over its rim to pass a flow, L/h: by its rim as a weir, or by its bore as an
 * orifice, whichever takes more. Drop inlets of small dams are reckoned so: USBR, Design of Small Dams, from memory.
 */
export const outletDepthMm = (boreMm: number, flowLph: number): OutletDepth => {
  const weirMm = crestHeadMm(rimMm(boreMm), flowLph)
  const holeMm = orificeHeadMm(boreMm, Math.max(0, flowLph), BORE_COEFFICIENT)
  return holeMm > weirMm ? { depthMm: holeMm, regime: 'orifice' } : { depthMm: weirMm, regime: 'weir' }
}

/** Flow, L/h, that an outlet passes at a depth, mm, over its rim: the less of the two; the inverse of `outletDepthMm`. */
export const outletLph = (boreMm: number, depthMm: number): number =>
  Math.min(crestLph(rimMm(boreMm), depthMm), orificeLph(boreMm, depthMm, BORE_COEFFICIENT))

/**
 * Most, L/h, that an outlet of a bore passes without gulping air: Froude 0.3 on its full bore. P. D. Hills, Designing piping
 * for gravity flow, Chemical Engineering (1983).
 */
export const ventedLph = (boreMm: number): number => {
  const boreM = toHeadM(boreMm)
  return fromM3PerS((VENTED_FROUDE * Math.sqrt(GRAVITY * boreM) * Math.PI * boreM ** 2) / 4)
}
