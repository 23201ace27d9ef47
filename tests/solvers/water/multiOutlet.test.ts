import { describe, expect, test } from 'vitest'
import { hazenWilliamsLoss } from '../../../src/solvers/water/hazenWilliams'
import { headLineFrom, type Lateral } from '../../../src/solvers/water/lateral'
import { evennessOf } from '../../../src/solvers/water/uniformity'
import { feetM, gpmM3S, inchesM } from '../../support/hydraulics'

/** Bores of schedule 40 pipe of 1, 1-1/4, 1-1/2 and 2 in (ASTM D1785). */
const BORES_IN = [1.049, 1.38, 1.61, 2.067]

// University of Minnesota, pressure distribution worksheet of 25 October 2004, tables E-4 and E-5: the most holes on a
// lateral whose flows differ by less than 10 %. What it rests on was found out by computing: Hazen-Williams with C 130,
// 11.79 d^2 sqrt(h) gpm a hole (a discharge coefficient of 0.60), a foot of head at the last one.
const SMOOTHNESS_C = 130
const DISTAL_HEAD_FT = 1
const MOST_SPREAD = 0.1

const tables: readonly [orificeIn: number, spacingFt: number, holes: readonly number[]][] = [
  [1 / 4, 2.5, [8, 14, 18, 28]],
  [1 / 4, 3, [8, 13, 17, 26]],
  [1 / 4, 3.3, [7, 12, 16, 25]],
  [1 / 4, 4, [7, 11, 15, 23]],
  [1 / 4, 5, [6, 10, 14, 22]],
  [3 / 16, 2.5, [12, 19, 25, 39]],
  [3 / 16, 3.3, [10, 17, 23, 36]],
  [3 / 16, 5, [9, 15, 20, 31]],
]

const perforated = (holes: number, orificeIn: number, spacingFt: number, boreIn: number): Lateral => ({
  stations: holes,
  lossM: (flow) => hazenWilliamsLoss(flow, feetM(spacingFt), inchesM(boreIn), SMOOTHNESS_C),
  drawM3S: (headM) => gpmM3S(11.79 * orificeIn ** 2 * Math.sqrt(headM / feetM(1))),
})

const mostHoles = (orificeIn: number, spacingFt: number, boreIn: number): number => {
  const spread = (holes: number) =>
    evennessOf(headLineFrom(perforated(holes, orificeIn, spacingFt, boreIn), feetM(DISTAL_HEAD_FT)).drawM3S)!
      .spread
  let holes = 1
  while (spread(holes + 1) <= MOST_SPREAD) holes += 1
  return holes
}

describe('most holes on a lateral whose flows differ by less than 10 percent', () => {
  const cells = tables.flatMap(([orifice, spacing, holes]) =>
    holes.map((printed, i) => [orifice, spacing, BORES_IN[i]!, printed] as const),
  )

  test('is printed in 32 cells', () => {
    expect(cells).toHaveLength(32)
  })

  test.each(cells)('%d in every %d ft on %d in pipe: %d', (orifice, spacing, bore, printed) => {
    expect(Math.abs(mostHoles(orifice, spacing, bore) - printed)).toBeLessThanOrEqual(1)
  })

  test('is printed to the hole in more than a third of them, and is not always on one side', () => {
    const off = cells.map(([orifice, spacing, bore, printed]) => mostHoles(orifice, spacing, bore) - printed)
    expect(off.filter((each) => each === 0).length).toBeGreaterThan(cells.length / 3)
    expect(Math.min(...off)).toBe(-1)
    expect(Math.max(...off)).toBe(1)
  })

  // The same worksheet: "value is double if a center manifold is used".
  test('is twice that where the feed comes in at the middle', () => {
    const holes = mostHoles(1 / 4, 3, 1.049)
    const half = headLineFrom(perforated(holes, 1 / 4, 3, 1.049), feetM(1))
    expect(evennessOf([...half.drawM3S].reverse().concat([...half.drawM3S]))!.spread).toBeCloseTo(
      evennessOf(half.drawM3S)!.spread,
      12,
    )
  })
})

// The same worksheet's discharges of a 3/16, 7/32 and 1/4 in hole at 1, 2 and 5 ft; two decimals.
test.each([
  [3 / 16, 1, 0.42],
  [7 / 32, 1, 0.56],
  [1 / 4, 1, 0.74],
  [3 / 16, 2, 0.59],
  [7 / 32, 2, 0.8],
  [1 / 4, 2, 1.04],
  [3 / 16, 5, 0.94],
  [7 / 32, 5, 1.26],
  [1 / 4, 5, 1.65],
])('a hole of %d in gives under %d ft the %d gpm of the worksheet', (orifice, head, printed) => {
  const flow = perforated(1, orifice, 3, 1.049).drawM3S(feetM(head), 0) / gpmM3S(1)
  expect(Math.abs(flow - printed)).toBeLessThanOrEqual(0.005 + 0.01 * printed)
})
