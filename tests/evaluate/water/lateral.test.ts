import { describe, expect, test } from 'vitest'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import type { RowWater } from '../../../src/model/water'
import { toGph } from '../../../src/units/flow'
import { toInches } from '../../../src/units/length'
import { type RowSketch, waterBay } from '../../support/waterBay'

/**
 * Worked example of the trade notes, hand arithmetic: 24 stations of 2 towers on one lateral, 15 in apart, 4 gph on the
 * average, 36 in of 1/8 in tube, each barb as good as 2 in more of lateral. Those figures took Churchill's friction
 * factor, which between smooth and churned flow (Reynolds number 2,000 to 4,000, half of this lateral) runs up to a
 * fifth over the curve used here: so a straight lateral may differ by 2.5 points of spread and by half an inch of head.
 */
const BARBS: RowSketch = { lossK: (2 * 2 * 0.036) / 0.824 }
const BARBS_1IN: RowSketch = { lateral: 'pe-1', lossK: (2 * 2 * 0.034) / 1.049 }

const underBox = (sketch: RowSketch, waterIn: number): RowWater => {
  const bay = waterBay()
    .box('B', waterIn, { main: 'M', along: 0 })
    .main('M', [
      [0, 0],
      [12, 0],
    ])
    .row('A', { along: 12, ...sketch })
  const row = waterOf(bay.inputs()).rows.get('A')
  if (!row) throw new RangeError('The row got no water.')
  return row
}

/** The row under the box whose water stands so high that its towers get 4 gph on the average. */
const atFour = (sketch: RowSketch): RowWater => {
  let [low, high] = [76, 140]
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2
    if (toGph(underBox(sketch, middle).figures.meanLph) < 4) low = middle
    else high = middle
  }
  return underBox(sketch, high)
}

describe('the worked lateral', () => {
  test.each<[string, RowSketch, number, number, number]>([
    ['3/4 in straight', BARBS, 31.6, 2.5, 10.1],
    ['3/4 in centre-split', { ...BARBS, kind: 'centre-split' }, 6.4, 1, 7.5],
    ['1 in straight', BARBS_1IN, 13.5, 2, 8.1],
    ['1 in centre-split', { ...BARBS_1IN, kind: 'centre-split' }, 2.1, 0.5, 7.2],
    ['3/4 in with a lateral for each line', { lossK: BARBS.lossK! / 2, towers: 1 }, 11.5, 1.5, 7.9],
  ])('%s', (_, sketch, spread, within, headIn) => {
    const row = atFour(sketch)
    expect(Math.abs(100 * row.figures.spread - spread)).toBeLessThan(within)
    expect(Math.abs(toInches(row.entryHeadMm) - headIn)).toBeLessThan(0.5)
  })

  test('is Starved straight, Even when split, Drifting at 1 in', () => {
    expect(atFour(BARBS).state).toBe('Starved')
    expect(atFour({ ...BARBS, kind: 'centre-split' }).state).toBe('Even')
    expect(atFour(BARBS_1IN).state).toBe('Drifting')
  })

  test('runs least at the end farthest from the inlet and most at the nearest', () => {
    const { least, most } = atFour(BARBS).figures
    expect([least.station, most.station]).toEqual([24, 1])
  })

  // Worked example of the trade notes: 1/4 in tube "does not meter": 61.2 % straight, 18.9 % split.
  test('with 1/4 in tube is left to the lateral', () => {
    expect(atFour({ ...BARBS, tube: 'tube-1/4' }).figures.spread).toBeGreaterThan(0.55)
    expect(atFour({ ...BARBS, tube: 'tube-1/4', kind: 'centre-split' }).figures.spread).toBeGreaterThan(0.15)
  })
})

describe('what one tube feels', () => {
  const one: RowSketch = { stations: 3, towers: 1, lateral: 'pe-1' }

  // Trade notes 3.4, hand arithmetic: half an inch of height is 6.3 % of the flow of a 36 in tube at 4 gph.
  test('hung 1/2 in higher it gives 6.3 % less', () => {
    const bay = waterBay()
      .box('B', 83.3, { main: 'M', along: 0 })
      .main('M', [
        [0, 0],
        [12, 0],
      ])
      .row('A', { along: 12, ...one })
      .inputs()
    const level = waterOf(bay).rows.get('A')!.tubeLph
    const raised = waterOf(bay, { outletShiftMm: new Map([['A', Float64Array.of(0, 12.7, 0)]]) })
    expect(toGph(level[1]!)).toBeCloseTo(4, 0)
    expect(raised.rows.get('A')!.tubeLph[1]! / level[1]!).toBeCloseTo(1 - 0.063, 2)
    expect(raised.rows.get('A')!.tubeLph[2]! / level[2]!).toBeCloseTo(1, 2)
  })

  // Trade notes 3.4, hand arithmetic: 3.39 gph at 12 °C and 4.30 at 24 °C, 27 % more.
  test('it gives 27 % more at 24 than at 12 °C', () => {
    const bay = waterBay()
      .box('B', 83.3, { main: 'M', along: 0 })
      .main('M', [
        [0, 0],
        [12, 0],
      ])
      .row('A', { along: 12, ...one })
      .inputs()
    const [cold, warm] = [waterOf(bay, { waterC: 12 }), waterOf(bay, { waterC: 24 })]
    expect(warm.totalLph / cold.totalLph).toBeCloseTo(1.27, 1)
    expect(toGph(cold.rows.get('A')!.figures.meanLph)).toBeCloseTo(3.39, 0)
  })
})
