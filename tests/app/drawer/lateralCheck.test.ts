import { describe, expect, test } from 'vitest'
import { checkWords } from '../../../src/app/drawer/checkWords'
import { lateralCheck } from '../../../src/app/drawer/lateralCheck'
import { gph, toGpm } from '../../../src/units/flow'
import { feet, inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { handRow, type LateralSketch } from './handRow'

/** Ten outlets of a tenth of 10 gpm each over 100 ft: 60 gph each, the first a spacing from where water comes in. */
const outlets = (from: number, step: number, count = 10): LateralSketch['stations'] =>
  Array.from({ length: count }, (_, i) => ({ along: from + step * i, gph: [60], head: 8 - 0.1 * (i + 1) }))

const straight = handRow([{ fedAt: [0], stations: outlets(120, 120) }])

describe('a lateral by the tables of the trade', () => {
  // 1 in polyethylene pipe (1.049 in) at 10 gpm: 6.3 ft in 100 ft ("Pipe Loss Chart, 3/4 in to 1.5 in", pipe controlled by
  // its inside diameter, 20.2 C). Christiansen's factor of 10 outlets: 0.402. 6.3 x 0.402 = 2.533 ft. The chart is
  // rounded to a tenth, and C 140 gives it back within 2 %: 3.5 % in all.
  test('loses table times factor', () => {
    const check = lateralCheck(straight.feed, straight.water, 20)!
    expect(check.lengthMm).toBeCloseTo(feet(100))
    expect(toGpm(check.flowLph)).toBeCloseTo(10)
    expect(check.tableMm / feet(1)).toBeGreaterThan(2.533 * 0.965)
    expect(check.tableMm / feet(1)).toBeLessThan(2.533 * 1.035)
    // By hand: the last of ten joints has 8 - 10 x 0.1 = 7 in where 8 in come in.
    expect(check.solvedMm).toBeCloseTo(inches(1))
  })

  test('fed in the middle it is a run of half the outlets and half the length', () => {
    const split = handRow([{ fedAt: [600], stations: outlets(60, 120) }], 'centre-split')
    const check = lateralCheck(split.feed, split.water, 20)!
    expect(check.lengthMm).toBeCloseTo(inches(540))
    expect(toGpm(check.flowLph)).toBeCloseTo(5)
  })

  test('fed at two quarter points, the water of both meets half-way between them', () => {
    const split = handRow([{ fedAt: [300, 900], stations: outlets(60, 120) }], 'double-split')
    const check = lateralCheck(split.feed, split.water, 20)!
    // Outlets at 60 ... 1140; those nearer to 300 are 60, 180, 300, 420 and 540: to either side 2 or 3 of them.
    expect(check.flowLph / gph(60)).toBeLessThanOrEqual(3)
    expect(check.lengthMm).toBeCloseTo(inches(240))
  })

  test('knows of no ring', () => {
    const ring = handRow([{ fedAt: [0], stations: outlets(120, 120) }], 'ring')
    expect(lateralCheck(ring.feed, ring.water, 20)).toBeUndefined()
  })

  // Re = 4 Q / (pi D nu): 1 gpm in 1.049 in at 20 C is 6.309e-5 m3/s x 4 / (pi x 0.02664 m x 1.004e-6 m2/s) = 3,003. So the
  // last of ten outlets of 1 gpm hangs behind smooth water, the last but one (2 gpm, 6,006) does not.
  test('says how much of the run no longer churns', () => {
    expect(lateralCheck(straight.feed, straight.water, 20)?.smoothShare).toBeCloseTo(0.1)
  })
})

describe('the check in words', () => {
  const check = {
    lateral: 1,
    lengthMm: feet(29),
    flowLph: gph(192),
    solvedMm: inches(4),
    tableMm: inches(3),
    smoothShare: 0,
  }
  const writer = writerFor('feet-inches')

  test('has both losses and how far apart they are', () => {
    expect(checkWords(check, 20, writer)).toBe(
      `Lateral 1, 29' 0" with 3.2 gpm: the solved network loses 4". Hazen-Williams (C 140, polyethylene) with Christiansen’s factor gives 3", 25.0 % less. It knows of no barbs and no temperature; here neither matters much.`,
    )
  })

  test('says where the table does not hold: smooth water, and water that is not near 20 °C', () => {
    expect(checkWords({ ...check, smoothShare: 0.25 }, 20, writer)).toContain('25.0 % of this run’s tubes')
    expect(checkWords(check, 8, writerFor('metric'))).toContain('the water has 8 °C')
  })
})
