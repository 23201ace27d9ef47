import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  classOn,
  designUniformity,
  evennessOf,
  FIELD_SCALE,
  type Scale,
  SPREAD_SCALE,
  STATISTICAL_SCALE,
  TUBE_SCALE,
} from '../../../src/solvers/water/uniformity'

describe('sixteen measured towers (gph), worked by hand arithmetic', () => {
  // Sum 39.4, mean 2.4625. Lowest four 2.1 2.2 2.3 2.3: mean 2.225. Deviations sum to 2.275: 2.275/16/2.4625 = 5.774 %.
  // Squares sum to 0.4975: sqrt(0.4975/15) = 0.18212.
  const flows = [2.4, 2.5, 2.6, 2.3, 2.5, 2.7, 2.4, 2.2, 2.6, 2.5, 2.4, 2.3, 2.8, 2.5, 2.1, 2.6]
  const evenness = evennessOf(flows)!

  test.each([
    ['mean', evenness.mean, 2.4625],
    ['Christiansen’s CU', 100 * evenness.christiansen, 94.226],
    ['DU of the low quarter', 100 * evenness.lowQuarter, 90.355],
    ['coefficient of variation', evenness.variation, 0.07396],
    ['statistical uniformity', 100 * evenness.statistical, 92.604],
    ['spread', 100 * evenness.spread, 25.0],
    ['least over mean', 100 * evenness.leastShare, 85.279],
    ['most over mean', 100 * evenness.mostShare, 113.706],
  ])('%s', (_, found, worked) => {
    expect(Math.abs(found / worked - 1)).toBeLessThan(1e-4)
  })

  test('in any order are as even', () => {
    expect(evennessOf([...flows].reverse())).toEqual(evenness)
  })
})

describe('low-quarter uniformity as published', () => {
  // "Distribution uniformity", a web encyclopedia: low quarter 0.44 gph of a mean of 0.48 is 92 %; catch cans 0.75 in of
  // 1.0 in is 75 %. Flows made so that quarter and mean are those.
  test.each([
    [0.44, 0.48, 0.92],
    [0.75, 1.0, 0.75],
  ])('%d of %d', (quarter, mean, share) => {
    const rest = (4 * mean - quarter) / 3
    expect(evennessOf([rest, quarter, rest, rest])!.lowQuarter).toBeCloseTo(share, 2)
  })

  // A problem after A. M. Michael, Irrigation: 25 emitters, low quarter 3.6 of 4.0 L/h: field emission uniformity 90 %.
  test('3.6 of 4.0 L/h over 25 emitters is 90', () => {
    const low = Array<number>(6).fill(3.6)
    const [seventh, rest] = [3.6, (25 * 4 - 7 * 3.6) / 18]
    expect(evennessOf([...low, seventh, ...Array<number>(18).fill(rest)])!.lowQuarter).toBeCloseTo(0.9, 9)
  })

  // 6 flows: the quarter is 1.5 flows, 1 + half of 3: 2.5 / 1.5; mean 4.
  test('of a number that four does not divide counts part of a flow', () => {
    expect(evennessOf([1, 3, 4, 5, 5, 6])!.lowQuarter).toBeCloseTo(2.5 / 1.5 / 4, 12)
  })
})

describe('design emission uniformity (Keller and Karmeli, Trans. ASAE 17, 1974)', () => {
  // Worked: 0.93 (1 - 1.27 x 0.07 / 1) = 0.8473 and so on.
  test.each([
    [0.07, 1, 0.93, 84.73],
    [0.07, 4, 0.93, 88.87],
    [0.05, 1, 0.93, 87.09],
    [0.1, 1, 0.93, 81.19],
    [0.05, 2, 0.9, 85.96],
  ])('scatter %d, %d tubes, least/mean %d: %d', (variation, tubes, leastShare, percent) => {
    expect(100 * designUniformity(leastShare, variation, tubes)).toBeCloseTo(percent, 1.7)
  })

  test('of tubes that scatter beyond all use is none', () => {
    expect(designUniformity(0.9, 1)).toBe(0)
  })
})

// For normally scattered flows DU = 1 - 1.2711 CV and CU = 1 - 0.7979 CV (exact constants of the normal distribution: the
// mean of its lowest quarter, and sqrt(2/pi)). Flows here are as many in each narrow class as the bell curve has.
test('normally scattered flows have the DU and CU that their CV says', () => {
  const [classes, flowsInAll] = [400, 100_000]
  const flows = Array.from({ length: classes }, (_, i) => -5 + (10 * (i + 0.5)) / classes).flatMap((z) => {
    const share = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * (10 / classes)
    return Array<number>(Math.round(flowsInAll * share)).fill(1 + 0.05 * z)
  })
  const { lowQuarter, christiansen, variation } = evennessOf(flows)!
  expect(variation).toBeCloseTo(0.05, 3)
  expect((1 - lowQuarter) / variation).toBeCloseTo(1.2711, 2)
  expect((1 - christiansen) / variation).toBeCloseTo(0.7979, 2)
})

describe('evenness', () => {
  test('of no towers, or of none that runs, is nothing to speak of', () => {
    expect(evennessOf([])).toBeUndefined()
    expect(evennessOf([0, 0, 0])).toBeUndefined()
  })

  test('of one tower, or of equal ones, is whole', () => {
    for (const flows of [[4], [4, 4, 4], new Float64Array(7).fill(1e-6)])
      expect(evennessOf(flows)).toEqual({
        mean: flows[0],
        leastShare: 1,
        mostShare: 1,
        spread: 0,
        variation: 0,
        lowQuarter: 1,
        christiansen: 1,
        statistical: 1,
      })
  })

  test('with a tower that runs dry counts it', () => {
    expect(evennessOf([0, 2])).toMatchObject({ leastShare: 0, mostShare: 2, spread: 1, lowQuarter: 0 })
  })

  const arbitraryFlow = fc.oneof(fc.constant(0), fc.double({ min: 1e-12, max: 1e-4, noNaN: true }))
  const arbitraryFlows = fc.array(arbitraryFlow, { minLength: 1, maxLength: 60 })

  test('is no other in other units, and holds no number that is none', () => {
    fc.assert(
      fc.property(arbitraryFlows, (flows) => {
        const [single, scaled] = [evennessOf(flows), evennessOf(flows.map((flow) => flow * 1024))]
        if (single === undefined || scaled === undefined) return
        expect(Object.values(single).every(Number.isFinite)).toBe(true)
        expect(scaled.spread).toBeCloseTo(single.spread, 9)
        expect(scaled.lowQuarter).toBeCloseTo(single.lowQuarter, 9)
        expect(scaled.christiansen).toBeCloseTo(single.christiansen, 9)
        expect(single.leastShare).toBeLessThanOrEqual(single.lowQuarter + 1e-12)
        expect(single.lowQuarter).toBeLessThanOrEqual(1 + 1e-12)
      }),
      { seed: 31 },
    )
  })
})

describe('the published classes (from memory)', () => {
  test.each<[string, Scale, number, string]>([
    ['Merriam and Keller', FIELD_SCALE, 0.95, 'excellent'],
    ['Merriam and Keller', FIELD_SCALE, 0.9, 'excellent'],
    ['Merriam and Keller', FIELD_SCALE, 0.85, 'good'],
    ['Merriam and Keller', FIELD_SCALE, 0.75, 'fair'],
    ['Merriam and Keller', FIELD_SCALE, 0.2, 'poor'],
    ['EP458', STATISTICAL_SCALE, 0.97, 'excellent'],
    ['EP458', STATISTICAL_SCALE, 0.926, 'good to excellent'],
    ['EP458', STATISTICAL_SCALE, 0.87, 'good'],
    ['EP458', STATISTICAL_SCALE, 0.62, 'unacceptable to poor'],
    ['EP458', STATISTICAL_SCALE, 0.5, 'unacceptable'],
    ['EP458', STATISTICAL_SCALE, -0.2, 'unacceptable'],
    ['EP405.1', TUBE_SCALE, 0.03, 'excellent'],
    ['EP405.1', TUBE_SCALE, 0.06, 'average'],
    ['EP405.1', TUBE_SCALE, 0.1, 'marginal'],
    ['EP405.1', TUBE_SCALE, 0.13, 'poor'],
    ['EP405.1', TUBE_SCALE, 0.4, 'unacceptable'],
    ['Wu and Gitlin', SPREAD_SCALE, 0.1, 'good'],
    ['Wu and Gitlin', SPREAD_SCALE, 0.135, 'acceptable'],
    ['Wu and Gitlin', SPREAD_SCALE, 0.316, 'not acceptable'],
  ])('%s: %s', (source, scale, share, name) => {
    expect(scale.source).toContain(source)
    expect(scale.isFromMemory).toBe(true)
    expect(classOn(scale, share)).toBe(name)
  })
})
