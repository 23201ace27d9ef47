import { inches } from '../units/length'
import { lossKOf } from './losses'

/**
 * Bore of a barbed insert over the bore of its pipe: 0.86 in a 1 in insert tee for 1.049 in pipe. Common practice, no
 * source: measure one.
 */
const INSERT_BORE_RATIO = 0.82

/**
 * Loss of pinching the water into an insert and letting it go again, on the pipe's own velocity head, by the ratio b
 * of the bores: a contraction of 0.5 (1 - b^2) and a sudden widening of (1 - b^2)^2, both at the insert's velocity. Source
 * of the form: tables of minor loss coefficients; Borda and Carnot for the widening.
 */
export const insertLossK = (boreRatio: number): number => {
  const areas = boreRatio ** 2
  return (0.5 * (1 - areas) + (1 - areas) ** 2) / areas ** 2
}

const PINCH_K = insertLossK(INSERT_BORE_RATIO)

/**
 * A barbed insert fitting by its key, such as `elbow`: what its shape loses and the pinch of its barbs. An elbow comes to
 * 2.1 and a tee's run to 1.5: insert fittings lose 1.5 to 2.5 (common practice, no source).
 */
export const barbedLossK = (key: string): number => lossKOf(key) + PINCH_K

/** A loss told on the velocity head in another bore, where `flowRatio` times the flow passes what loses it. */
export const onBore = (lossK: number, fromBoreMm: number, toBoreMm: number, flowRatio = 1): number =>
  lossK * flowRatio ** 2 * (toBoreMm / fromBoreMm) ** 4

/** A barb that reaches into a lateral costs as much as 2 in of it. Common practice, no source. */
const BARB_AS_PIPE_MM = inches(2)

/** Friction factor of smooth pipe at Reynolds number 6,000, halfway along a lateral: 0.316 / Re^0.25 (Blasius 1913). */
const LATERAL_FRICTION = 0.036

/** One barb in a lateral, on the lateral's velocity head. */
export const barbLossK = (boreMm: number): number => (LATERAL_FRICTION * BARB_AS_PIPE_MM) / boreMm
