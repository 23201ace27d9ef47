import { describe, expect, test } from 'vitest'
import { chanceFrom, evenly, normally, percentile } from '../../../src/evaluate/water/chance'
import { flowsOff, scatterOfRow, tubeResponse } from '../../../src/evaluate/water/scatter'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { gph } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { waterBay } from '../../support/waterBay'

/** Head that drives 4 gph through 1/8 in tube of so many inches: worked table of the trade notes, inches. */
const HEAD_IN: Readonly<Record<number, number>> = { 24: 5, 36: 7.1, 48: 9.1 }

/** What riser pipe and valves take from it, inches. */
const LOST_IN = 0.3

/** A row with a lateral that loses next to nothing, under a head box. */
const inputsWith = (settings: object, tubeIn = 36) =>
  waterBay()
    .settings(settings)
    .box('B', 76 + HEAD_IN[tubeIn]! + LOST_IN, { main: 'M', along: 0 })
    .main('M', [
      [0, 0],
      [130, 0],
    ])
    .row('A', { stations: 12, towers: 2, lateral: 'pe-2', tubeIn })
    .inputs()

const scatterWith = (settings: object, options = {}, tubeIn?: number) => {
  const inputs = inputsWith(settings, tubeIn)
  const water = waterOf(inputs).rows.get('A')!
  return { inputs, water, ...scatterOfRow(inputs.builtOf.get('A')!, water, inputs, options)! }
}

describe('chance', () => {
  test('is the same for the same seed, and even from 0 to 1', () => {
    const [one, two] = [chanceFrom(7), chanceFrom(7)]
    const draws = Array.from({ length: 20_000 }, () => one())
    expect(draws.slice(0, 50)).toEqual(Array.from({ length: 50 }, () => two()))
    expect(draws.every((draw) => draw >= 0 && draw < 1)).toBe(true)
    // Mean 1/2 and variance 1/12 of the even distribution; 20,000 draws scatter by 0.002.
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
    const variance = draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / draws.length
    expect(Math.abs(mean - 1 / 2)).toBeLessThan(0.01)
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.002)
  })

  // Table of the normal distribution: 90 % lies within 1.645 deviations. Of the even one from -1 to 1, within 0.9.
  test('has the percentiles of its distributions', () => {
    const chance = chanceFrom(11)
    const normal = Float64Array.from({ length: 40_000 }, () => normally(chance)).sort()
    expect(Math.abs(percentile(normal, 0.95) - 1.645)).toBeLessThan(0.03)
    expect(Math.abs(percentile(normal, 0.05) + 1.645)).toBeLessThan(0.03)
    const even = Float64Array.from({ length: 40_000 }, () => evenly(chance)).sort()
    expect(Math.abs(percentile(even, 0.95) - 0.9)).toBeLessThan(0.01)
  })

  // By hand: of 1, 2, 4 a half lies below 2, three quarters below 3, and nothing below 1.
  test('counts percentiles straight between neighbours', () => {
    const values = Float64Array.of(1, 2, 4)
    expect([0, 0.5, 0.75, 1].map((share) => percentile(values, share))).toEqual([1, 2, 3, 4])
    expect(percentile(new Float64Array(0), 0.5)).toBeNaN()
  })
})

describe('tube ends off their level', () => {
  // Worked example of the trade notes, hand arithmetic: half an inch of outlet height is 8.5 % of the flow of a 24 in tube
  // at 4 gph, 6.3 % of a 36 in one, 5.0 % of a 48 in one.
  test.each([
    [24, 8.5],
    [36, 6.3],
    [48, 5.0],
  ])('by half an inch are as much as worked for a tube of %d in', (tubeIn, percent) => {
    const { inputs, water } = scatterWith({}, {}, tubeIn)
    const response = tubeResponse(inputs.builtOf.get('A')!, water, inputs)
    const share = (response.lphPerMm[0]! * inches(1 / 2)) / gph(4)
    expect(water.tubeLph[0]! / gph(4)).toBeCloseTo(1, 1)
    expect(Math.abs(100 * share - percent)).toBeLessThan(0.45)
  })

  // All ends drawn within 1/4 in: held heads against the whole bay solved again. They differ by less than 1 % of the flow.
  test('give what the bay solved again gives, within 1 per cent', () => {
    const { inputs, water } = scatterWith({})
    const response = tubeResponse(inputs.builtOf.get('A')!, water, inputs)
    const chance = chanceFrom(3)
    for (let scenario = 0; scenario < 20; scenario += 1) {
      const highMm = Float64Array.from({ length: 24 }, () => inches(1 / 4) * evenly(chance))
      const again = waterOf(inputs, { outletShiftMm: new Map([['A', highMm]]) }).rows.get('A')!
      const linear = flowsOff(response, highMm, new Float64Array(24).fill(1))
      linear.forEach((flow, i) => expect(Math.abs(flow / again.tubeLph[i]! - 1)).toBeLessThan(0.01))
    }
  })
})

describe('bands', () => {
  test('are no wider than a point where nothing is off', () => {
    const { flowLph, lowLph, highLph, water, spread, lowQuarter } = scatterWith({
      outletErrorMm: 0,
      tubeScatter: 0,
    })
    expect(spread.low).toBeCloseTo(water.figures.spread, 12)
    expect(spread.high).toBe(spread.low)
    expect(lowQuarter.low).toBeCloseTo(water.figures.lowQuarter, 12)
    lowLph.forEach((low, i) => {
      expect(low).toBeCloseTo(water.tubeLph[i]!, 9)
      expect(highLph[i]!).toBeCloseTo(low, 9)
    })
    expect(flowLph.high - flowLph.low).toBeLessThan(0.01 * gph(4))
  })

  // By hand: tubes of 3 % alone put 90 % of the towers within 1.645 times 3 % of their flow. Least and most of 24 normal draws
  // lie 3.9 deviations apart on the average (table of the range of samples): a spread of 3.9 x 3 % / (1 + 1.95 x 3 %) = 11 %.
  test('are those of the normal distribution where tubes alone scatter', () => {
    const { lowLph, highLph, water, spread } = scatterWith({ outletErrorMm: 0, tubeScatter: 0.03 })
    const over = lowLph.map((low, i) => (highLph[i]! - low) / (2 * water.tubeLph[i]!))
    const mean = over.reduce((sum, each) => sum + each, 0) / over.length
    expect(Math.abs(mean - 1.645 * 0.03)).toBeLessThan(0.002)
    expect(spread.low).toBeLessThan(0.11)
    expect(spread.high).toBeGreaterThan(0.11)
  })

  // By hand: an even draw within 1/2 in has its 5th and 95th percentile at 0.9 of it: 6.3 % x 0.9 for 36 in of tube.
  test('are those of the even distribution where levels alone are off', () => {
    const { lowLph, highLph, water } = scatterWith({ outletErrorMm: inches(1 / 2), tubeScatter: 0 })
    const over = lowLph.map((low, i) => (highLph[i]! - low) / (2 * water.tubeLph[i]!))
    const mean = over.reduce((sum, each) => sum + each, 0) / over.length
    expect(Math.abs(mean - 0.9 * 0.063)).toBeLessThan(0.004)
  })

  test('are the same every time, others for another seed, and wider the more is off', () => {
    const { inputs, water } = scatterWith({})
    const scatter = (options = {}) => scatterOfRow(inputs.builtOf.get('A')!, water, inputs, options)!
    const once = scatter()
    expect(scatter()).toEqual(once)
    expect(scatter({ seed: 2 }).flowLph).not.toEqual(once.flowLph)
    const wide = scatterWith({ outletErrorMm: inches(1) })
    expect(wide.flowLph.low).toBeLessThan(once.flowLph.low)
    expect(wide.lowQuarter.low).toBeLessThan(once.lowQuarter.low)
    expect(wide.spread.high).toBeGreaterThan(once.spread.high)
  })

  test('never fall below no flow, and a dry tube may run where its end hangs lower', () => {
    const { inputs, water } = scatterWith({})
    const built = inputs.builtOf.get('A')!
    const dry = {
      ...water,
      tubeLph: new Float64Array(24),
      jointHeadMm: water.jointHeadMm.map(() => inches(76) - 5),
    }
    const response = tubeResponse(built, dry, inputs)
    const flows = flowsOff(response, [-10, -5, 0, 10], [1, 1, 1, 1])
    expect(flows[0]!).toBeGreaterThan(0)
    expect(flows[0]!).toBeCloseTo(5 * response.lphPerMm[0]!, 9)
    expect([...flows.subarray(1, 4)]).toEqual([0, 0, 0])
  })
})
