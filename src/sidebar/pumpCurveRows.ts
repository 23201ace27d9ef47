import { type CurveFault, curveFault } from '../parts/sump/curveFault'
import type { PumpPoint } from '../model/supplyFacts'
import { gpm, litresPerMinute } from '../units/flow'
import { headM } from '../units/head'
import { feet, type Units } from '../units/length'
import { parseFlow } from '../units/parseWater'
import type { Writer } from '../units/writer'
import { readLength, type Typed } from './fieldText'

const BARE_NUMBER = /^\d{1,6}([.,]\d{1,6})?$/

/** A number without a sign, as pump labels print it; undefined for anything else. */
const bareNumber = (text: string): number | undefined =>
  BARE_NUMBER.test(text.trim()) ? Number(text.trim().replace(',', '.')) : undefined

const notBelowNothing = (noun: string, typed: Typed): Typed =>
  typed.ok && Number(typed.value) < 0 ? { ok: false, sentence: `A pump’s ${noun} is never below 0.` } : typed

/** A flow off a pump's label: a bare number is gallons or litres a minute by `units`. */
export const readPumpFlow = (text: string, units: Units): Typed => {
  const bare = bareNumber(text)
  if (bare === undefined) return notBelowNothing('flow', parseFlow(text, units))
  return { ok: true, value: units === 'metric' ? litresPerMinute(bare) : gpm(bare) }
}

/** A head off a pump's label: a bare number is feet or metres by `units`. */
export const readPumpHead = (text: string, units: Units): Typed => {
  const bare = bareNumber(text)
  if (bare === undefined) return notBelowNothing('head', readLength(text, units))
  return { ok: true, value: units === 'metric' ? headM(bare) : feet(bare) }
}

/** A further point midway to the next; after the last one, one step on at half its head. */
export const curvePointAfter = (points: readonly PumpPoint[], point: number): PumpPoint => {
  const from = points[point] ?? { flowLph: 0, headMm: 0 }
  const next = points[point + 1]
  if (next) return { flowLph: (from.flowLph + next.flowLph) / 2, headMm: (from.headMm + next.headMm) / 2 }
  const before = points[point - 1] ?? from
  return { flowLph: 2 * from.flowLph - before.flowLph, headMm: from.headMm / 2 }
}

const sentenceOf = (
  { why, point }: CurveFault,
  points: readonly PumpPoint[],
  { flowTotal, pumpHead }: Writer,
): string => {
  const [here, before] = [points[point - 1], points[point - 2]]
  if (why === 'starts-with-flow')
    return `Point 1 gives ${flowTotal(here?.flowLph ?? 0)}; a curve begins with the head at no flow.`
  const pair = `Point ${point} after point ${point - 1}`
  if (why === 'flow-not-rising')
    return `${pair}: ${flowTotal(here?.flowLph ?? 0)} after ${flowTotal(before?.flowLph ?? 0)}. Flow must rise from point to point.`
  return (
    `${pair}: ${pumpHead(here?.headMm ?? 0)} after ${pumpHead(before?.headMm ?? 0)}. ` +
    'Head must fall as flow rises; on a curve that rises a pump hunts between two flows.'
  )
}

/** What keeps points from being a pump's curve, in words; undefined for a curve. */
export const curveSentence = (points: readonly PumpPoint[], writer: Writer): string | undefined => {
  const fault = curveFault(points)
  return fault && sentenceOf(fault, points, writer)
}
