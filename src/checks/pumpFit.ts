import { type PumpCurveRow, pumpCurves } from '../catalogue/pumpCurves'
import type { PumpWater } from '../model/water'
import { headAt, type PumpCurve, pumpCurveOf } from '../solvers/water/pumpCurve'
import { toM3PerS } from '../units/flow'
import { headM, toHeadM } from '../units/head'

/** Losses grow with the flow to this power: between 1, smooth, and 2, in valves and fittings. */
const LOSS_POWER = 1.8

const smoothCurve = ({ curve }: PumpCurveRow): PumpCurve | undefined => {
  const made = pumpCurveOf({
    flowM3S: Float64Array.from(curve, ({ flowLph }) => toM3PerS(flowLph)),
    headM: Float64Array.from(curve, ({ headMm }) => toHeadM(headMm)),
  })
  return made.ok ? made : undefined
}

const CURVES = pumpCurves.flatMap((row) => {
  const curve = smoothCurve(row)
  return curve ? [{ key: row.key, curve }] : []
})

/** What one of the catalogue's pumps lifts, mm, with several alike sharing a flow. */
const liftMm = (curve: PumpCurve, flowLph: number, pumps: number): number =>
  headM(headAt(curve, toM3PerS(flowLph / pumps), 1))

/** Head that the bay asks of its pumps at a flow, mm: what it lifts by now, its losses grown with the flow. */
const askedMm = ({ flowLph, headMm, staticMm }: PumpWater, wantedLph: number): number =>
  staticMm + (headMm - staticMm) * (wantedLph / flowLph) ** LOSS_POWER

const HALVINGS = 40

/** Flow at which a pump's curve meets what the bay asks, litres an hour; 0 for one that does not lift to the towers. */
const meetsAt = (curve: PumpCurve, pumps: number, now: PumpWater, mostLph: number): number => {
  let [low, high] = [0, mostLph]
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2
    if (liftMm(curve, middle, pumps) > askedMm(now, middle)) low = middle
    else high = middle
  }
  return low
}

/** Far more than any pump of the catalogue gives, as a multiple of the flow of now. */
const MOST_TIMES = 20

/** The smallest pump of the catalogue with which the flow of now would become between two multiples of itself. */
export const pumpBetween = (
  now: PumpWater,
  pumps: number,
  leastTimes: number,
  mostTimes: number,
): PumpCurveRow['key'] | undefined =>
  CURVES.find(({ curve }) => {
    const times = meetsAt(curve, pumps, now, MOST_TIMES * now.flowLph) / now.flowLph
    return times >= leastTimes && times <= mostTimes
  })?.key

/** The smallest pump of the catalogue that lifts a flow by a head. */
export const pumpLifting = (flowLph: number, pumps: number, byMm: number): PumpCurveRow['key'] | undefined =>
  CURVES.find(({ curve }) => liftMm(curve, flowLph, pumps) >= byMm)?.key
