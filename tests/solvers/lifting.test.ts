import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inKilograms, type Lift, liftingIndex, recommendedWeight } from '../../src/solvers/lifting'
import { inches } from '../../src/units/length'
import { pounds, toPounds } from '../../src/units/mass'

/** A tower in wet hands, once a minute, all in inches. */
const tower = (reach: number, hands: number, travel: number, twistDeg: number): Lift => ({
  reachMm: inches(reach),
  handsMm: inches(hands),
  travelMm: inches(travel),
  twistDeg,
  grip: 'poor',
  liftsAMin: 1,
})

const limitLb = (lift: Lift): number => toPounds(recommendedWeight(lift).limitKg)
const indexOf = (lb: number, lift: Lift): number => liftingIndex(pounds(lb), recommendedWeight(lift))

// Hand arithmetic by the equation of NIOSH Publication 94-110 (Waters et al., 1994) in pounds and inches, poor grip 0.90, one lift a
// minute for less than an hour 0.94. The first row: 51 x 10/12 x 1 x (0.82 + 1.8/26) x 1 x 0.94 x 0.90 = 31.97 lb.
describe('hanging a wet tower', () => {
  test.each([
    ['picked from a cart', tower(12, 30, 26, 0), 31.97, [0.47, 0.63, 0.78]],
    ['hung close by', tower(12, 56, 26, 0), 25.74, [0.58, 0.78, 0.97]],
    ['hung at 18 in with a turn of 30 degrees', tower(18, 56, 26, 30), 15.51, [0.97, 1.29, 1.61]],
    [
      'hung on the far rail at 24 in with a turn of 30 degrees',
      tower(24, 60, 30, 30),
      11.08,
      [1.35, 1.8, 2.26],
    ],
    ['picked from the floor', tower(15, 6, 50, 0), 20.19, [0.74, 0.99, 1.24]],
  ])('%s', (_, lift, lb, indexes) => {
    expect(limitLb(lift)).toBeCloseTo(lb, 2)
    expect([15, 20, 25].map((load) => indexOf(load, lift))).toEqual(
      indexes.map((index): unknown => expect.closeTo(index, 2)),
    )
  })
})

describe('published examples', () => {
  // NIOSH Publication 94-110, Example 1, from memory: 44 lb of stock into a press, H 23, V 15 to 64, D 49, fair grip, less than one
  // lift in five minutes. With multipliers off the printed tables, rounded to hundredths: 16.3 lb at its start, 14.5 lb at its end.
  const stock = (hands: number): Lift => ({
    ...tower(23, hands, 49, 0),
    grip: 'fair',
    liftsAMin: 0.2,
  })

  test.each([
    [15, 16.3, { reach: 0.44, height: 0.89, travel: 0.86, twist: 1, pace: 1, grip: 0.95 }],
    [64, 14.5, { reach: 0.44, height: 0.75, travel: 0.86, twist: 1, pace: 1, grip: 1 }],
  ])('a press is loaded, hands at %d in', (hands, printedLb, printed) => {
    const { multipliers, limitKg } = recommendedWeight(stock(hands))
    // 10/23 is 0.4348, which the table prints as 0.44.
    for (const [name, value] of Object.entries(printed))
      expect(Math.abs(multipliers[name as keyof typeof printed] - value)).toBeLessThan(0.006)
    expect(Object.values(printed).reduce((product, each) => product * each, 51)).toBeCloseTo(printedLb, 0)
    expect(Math.abs(toPounds(limitKg) / printedLb - 1)).toBeLessThan(0.025)
  })

  test('the formula itself gives 16.0 and 14.2 lb', () => {
    expect(limitLb(stock(15))).toBeCloseTo(16, 1)
    expect(limitLb(stock(64))).toBeCloseTo(14.2, 1)
  })

  // Published exercise in metric: 23 x 1 x 0.94 x 0.87 x 1 x 0.88 x 0.95 = 15.7 kg.
  test('H 25 cm, V 55 cm, D 95 cm, three a minute, fair grip: 15.7 kg', () => {
    const lift: Lift = {
      reachMm: 250,
      handsMm: 550,
      travelMm: 950,
      twistDeg: 0,
      grip: 'fair',
      liftsAMin: 3,
    }
    const { multipliers, limitKg } = recommendedWeight(lift, inKilograms)
    expect(multipliers).toEqual({
      reach: 1,
      height: expect.closeTo(0.94, 2) as unknown,
      travel: expect.closeTo(0.87, 2) as unknown,
      twist: 1,
      pace: 0.88,
      grip: 0.95,
    })
    expect(limitKg).toBeCloseTo(15.7, 1)
  })

  // 51 lb is 23.13 kg, and 10 in is 25.4 cm: the two printed forms were rounded apart.
  test('the two printed forms lie within 4 % of each other', () => {
    for (const lift of [
      tower(12, 30, 26, 0),
      tower(18, 56, 26, 30),
      tower(24, 60, 30, 30),
      tower(15, 6, 50, 0),
    ])
      expect(
        Math.abs(recommendedWeight(lift, inKilograms).limitKg / recommendedWeight(lift).limitKg - 1),
      ).toBeLessThan(0.04)
  })
})

// The limits of the manual's tables 1 to 5, in its two sets of units.
describe('limits', () => {
  const held = {
    reachMm: 250,
    handsMm: 750,
    travelMm: 250,
    twistDeg: 0,
    grip: 'good',
    liftsAMin: 0.2,
  } as const
  const metricKg = (change: Partial<Lift>): number =>
    recommendedWeight({ ...held, ...change }, inKilograms).limitKg

  test('the best lift there is: 23 kg, or 51 lb', () => {
    expect(metricKg({})).toBe(23)
    expect(limitLb({ ...held, reachMm: inches(10), handsMm: inches(30), travelMm: inches(10) })).toBeCloseTo(
      51,
      9,
    )
  })

  test('nearer than 25 cm counts as 25, and moved less than 25 cm counts as moved 25', () => {
    expect(metricKg({ reachMm: 100 })).toBe(23)
    expect(metricKg({ travelMm: 0 })).toBe(23)
    expect(metricKg({ liftsAMin: 0 })).toBe(23)
  })

  test.each<[string, Partial<Lift>, Partial<Lift>]>([
    ['further than 63 cm', { reachMm: 630 }, { reachMm: 630.1 }],
    ['higher than 175 cm', { handsMm: 1750 }, { handsMm: 1750.1 }],
    ['moved more than 175 cm', { travelMm: 1750 }, { travelMm: 1750.1 }],
    ['turned more than 135 degrees', { twistDeg: 135 }, { twistDeg: 135.1 }],
    ['oftener than 15 times a minute', { liftsAMin: 15 }, { liftsAMin: 15.1 }],
    [
      'oftener than 12 times a minute from under 75 cm',
      { liftsAMin: 12, handsMm: 749 },
      { liftsAMin: 13, handsMm: 749 },
    ],
  ])('%s is outside', (_, inside, outside) => {
    expect(metricKg(inside)).toBeGreaterThan(0)
    expect(metricKg(outside)).toBe(0)
    expect(liftingIndex(10, recommendedWeight({ ...held, ...outside }, inKilograms))).toBe(Infinity)
  })

  // Table 7 of the manual.
  test.each([
    ['good', 600, 1],
    ['fair', 600, 0.95],
    ['poor', 600, 0.9],
    ['good', 750, 1],
    ['fair', 750, 1],
    ['poor', 750, 0.9],
  ] as const)('a %s grip at %d mm: %d', (grip, handsMm, multiplier) => {
    expect(recommendedWeight({ ...held, grip, handsMm }, inKilograms).multipliers.grip).toBe(multiplier)
  })

  // Table 5 of the manual, an hour or less, from memory.
  test.each([
    [0.2, 1],
    [1, 0.94],
    [3, 0.88],
    [5, 0.8],
    [10, 0.45],
    [13, 0.34],
  ])('%d a minute: %d', (liftsAMin, multiplier) => {
    expect(recommendedWeight({ ...held, liftsAMin }, inKilograms).multipliers.pace).toBeCloseTo(multiplier, 9)
  })
})

describe('any lift', () => {
  const lifts = fc.record({
    reachMm: fc.double({ min: 0, max: 900, noNaN: true }),
    handsMm: fc.double({ min: 0, max: 2000, noNaN: true }),
    travelMm: fc.double({ min: 0, max: 2000, noNaN: true }),
    twistDeg: fc.double({ min: 0, max: 180, noNaN: true }),
    grip: fc.constantFrom('good', 'fair', 'poor'),
    liftsAMin: fc.double({ min: 0, max: 16, noNaN: true }),
  })
  const limitKg = (lift: Lift): number => recommendedWeight(lift).limitKg

  test('is never recommended more than 51 lb, and reaching, turning or hurrying more never recommends more', () => {
    fc.assert(
      fc.property(lifts, fc.double({ min: 0, max: 200, noNaN: true }), (lift, more) => {
        const kg = limitKg(lift)
        expect(kg).toBeLessThanOrEqual(pounds(51) + 1e-9)
        expect(limitKg({ ...lift, reachMm: lift.reachMm + more })).toBeLessThanOrEqual(kg + 1e-9)
        expect(limitKg({ ...lift, travelMm: lift.travelMm + more })).toBeLessThanOrEqual(kg + 1e-9)
        expect(limitKg({ ...lift, twistDeg: lift.twistDeg + more })).toBeLessThanOrEqual(kg + 1e-9)
        expect(limitKg({ ...lift, liftsAMin: lift.liftsAMin + more / 100 })).toBeLessThanOrEqual(kg + 1e-9)
        expect(limitKg({ ...lift, grip: 'poor' })).toBeLessThanOrEqual(kg + 1e-9)
      }),
      { seed: 20_260_111, numRuns: 500 },
    )
  })
})
