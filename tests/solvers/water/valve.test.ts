import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fittingLoss } from '../../../src/solvers/water/friction'
import { BALL, GATE, insertLossK, lossAtOpening, openingForLoss } from '../../../src/solvers/water/valve'

const kinds = [
  ['gate', GATE],
  ['ball', BALL],
] as const

describe('a valve loses what is published', () => {
  // Perry's Chemical Engineers' Handbook, friction loss of fittings and valves, as quoted.
  test.each([
    [1, 0.17],
    [0.75, 0.9],
    [0.5, 4.5],
    [0.25, 24],
  ])('gate %d open: %d', (opening, lossK) => {
    expect(lossAtOpening(opening)).toBeCloseTo(lossK, 9)
    expect(openingForLoss(lossK)).toBeCloseTo(opening, 9)
  })

  // Tables of minor losses after White, Fluid Mechanics: open, 1/4, 1/2, 3/4 shut. The two sets are a factor of 3.5
  // apart: whoever sets a valve by turns has to expect that much.
  test.each([
    [1, 0.15],
    [0.75, 0.26],
    [0.5, 2.1],
    [0.25, 17],
  ])('gate %d open, by the other set: %d, within a factor of 3.5', (opening, lossK) => {
    const ratio = lossAtOpening(opening) / lossK
    expect(ratio).toBeGreaterThan(1)
    expect(ratio).toBeLessThan(3.5)
  })

  // The same tables: ball valve open, 1/3 shut, 2/3 shut.
  test.each([
    [1, 0.05],
    [2 / 3, 5.5],
    [1 / 3, 200],
  ])('ball %d open: %d', (opening, lossK) => {
    expect(lossAtOpening(opening, BALL)).toBeCloseTo(lossK, 9)
    expect(openingForLoss(lossK, BALL)).toBeCloseTo(opening, 9)
  })

  // The worked example of the same tables: a ball valve 1/3 shut at 2 m/s takes 1.1 m. 5.5 x 4 / 19.6133 = 1.1217.
  test('ball a third shut at 2 m/s: 1.1 m', () => {
    const boreM = 0.04
    expect(fittingLoss(Math.PI * 2 * 0.02 ** 2, boreM, lossAtOpening(2 / 3, BALL))).toBeCloseTo(1.1217, 3)
  })
})

describe.each(kinds)('a %s valve', (_, valve) => {
  test('loses more the further it is shut, without end', () => {
    for (let percent = 1; percent < 100; percent += 1)
      expect(lossAtOpening(percent / 100, valve)).toBeGreaterThan(lossAtOpening((percent + 1) / 100, valve))
    expect(lossAtOpening(0, valve)).toBe(Infinity)
    expect(lossAtOpening(-0.1, valve)).toBe(Infinity)
    expect(lossAtOpening(1.1, valve)).toBe(lossAtOpening(1, valve))
  })

  test('has one opening for a loss, and none wider than open', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1, noNaN: true }), (opening) => {
        expect(openingForLoss(lossAtOpening(opening, valve), valve)).toBeCloseTo(opening, 9)
      }),
      { seed: 21 },
    )
    expect(openingForLoss(0.01, valve)).toBe(1)
    expect(openingForLoss(0, valve)).toBe(1)
    expect(openingForLoss(Infinity, valve)).toBe(0)
  })
})

describe('an insert fitting', () => {
  // Hand arithmetic: bore 0.50 in in 0.600 in pipe, b = 0.8333, b^2 = 0.6944, 1 - b^2 = 0.3056; narrowing 0.5 x 0.3056 =
  // 0.153, widening 0.3056^2 = 0.093; together 0.246 over b^4 = 0.482 is 0.51.
  test('of 0.50 in in a pipe of 0.600 in takes 0.51 velocity heads', () => {
    expect(insertLossK(0.5 / 0.6)).toBeCloseTo(0.51, 2)
  })

  test('as wide as the pipe takes nothing', () => {
    expect(insertLossK(1)).toBe(0)
  })

  // A narrowing to next to nothing: 0.5 + 1 velocity heads of the throat (sharp entrance 0.5, exit to a tank 1.0).
  test('that is very narrow is an entrance and an exit', () => {
    expect(insertLossK(0.01) * 0.01 ** 4).toBeCloseTo(1.5, 3)
  })
})
