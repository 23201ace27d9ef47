import { toM3PerS } from '../../units/flow'
import { cubicMetres } from '../../units/volume'
import { normalDepthMm } from './manning'
import { areaMm2, type Section } from './section'
import type { LetGo } from './storage'

/** L/h to L/s. */
export const perSecond = (lph: number): number => cubicMetres(toM3PerS(lph))

/** A store that lets nothing go. */
export const holds: LetGo = () => 0

/** So many litres a second for each litre in store: a store that halves in a time that is always the same. */
export const linear =
  (perS: number): LetGo =>
  (litres) =>
    perS * Math.max(litres, 0)

/** What lets `lps` go at `fullL`, and less with the share of it to a power; nothing of a store that holds nothing. */
export const powerLaw = (fullL: number, lps: number, power: number): LetGo =>
  fullL <= 0 ? holds : (litres) => (litres <= 0 ? 0 : lps * (litres / fullL) ** power)

/** Of a film that runs down a wall flow is as thickness cubed, of a hole as the root of the head: no store is beyond these. */
const LEAST_POWER = 0.5
const MOST_POWER = 8

/**
 * Of u' = -u^m from 1, when only `left` is there. Rises with m.
 */
const untilLeft = (left: number, m: number): number =>
  Math.abs(m - 1) < 1e-9 ? -Math.log(left) : (left ** (1 - m) - 1) / (m - 1)

/**
 * The law of a store that let `lps` go while `fullL` stood in it, and has all but `left` of it out so many seconds after its
 * inflow ends: a power of what is left, the power found so that both are true. An exponential alone meets only one of
 * the two. Where no power does it, as when a tower holds far more than it passes in its time, the time is kept, not the flow.
 */
export const emptiesIn = (fullL: number, lps: number, left: number, seconds: number): LetGo => {
  if (fullL <= 0 || lps <= 0 || seconds <= 0) return holds
  const wanted = (lps / fullL) * seconds
  let [low, high] = [LEAST_POWER, MOST_POWER]
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2
    if (untilLeft(left, middle) < wanted) low = middle
    else high = middle
  }
  return powerLaw(fullL, fullL * (untilLeft(left, low) / seconds), low)
}

/** Where no normal depth is to be had: between 0.6 of wide shallow water and 0.75 of a V. */
const USUAL_POWER = 1 / 0.67

const ONE_MORE = 1.5

/**
 * With what power of the litres in it a gutter or drain lets go. Water in a long channel that empties stays near its normal
 * depth, so what stands in it is as the wetted area at that depth: the slope of flow over area by Manning, in logarithms,
 * at the flow that runs. 5/3 for wide shallow water (Chow, Open-channel hydraulics (1959), section 18-7), less in deeper
 * gutters; 1.5 where the channel does not fall.
 */
export const emptyingPower = (section: Section, flowLph: number, slopeMmPerM: number, n: number): number => {
  const [less, more] = [flowLph / ONE_MORE, flowLph].map((lph) => normalDepthMm(section, lph, slopeMmPerM, n))
  if (less === undefined || more === undefined || less <= 0) return USUAL_POWER
  return Math.log(ONE_MORE) / Math.log(areaMm2(section, more) / areaMm2(section, less))
}

/**
 * A pipe that fills: nothing leaves before `firstL` stand in it, all that comes once it is full, and in between as much of
 * it as of that last part is full.
 */
export const filling = (firstL: number, fullL: number, lps: number): LetGo => {
  const span = Math.max(fullL - firstL, 1e-9 * fullL)
  return (litres) => (litres <= firstL ? 0 : (lps * (litres - firstL)) / span)
}
