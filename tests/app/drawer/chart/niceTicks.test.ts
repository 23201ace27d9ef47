import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { niceTicks } from '../../../../src/app/drawer/chart/niceTicks'

describe('ticks of an axis', () => {
  // By eye: what a draughtsman would write along such an axis.
  test.each([
    [0, 10, 6, [0, 2, 4, 6, 8, 10]],
    [3.2, 4.8, 6, [3, 3.5, 4, 4.5, 5]],
    [0, 29.5, 8, [0, 5, 10, 15, 20, 25, 30]],
    [-3, 3, 4, [-4, -2, 0, 2, 4]],
  ])('from %d to %d, %d steps at most', (from, to, most, at) => {
    expect(niceTicks(from, to, most).at).toEqual(at.map((tick) => expect.closeTo(tick, 9)))
  })

  test('tell one from the next with as few decimals as do', () => {
    expect(niceTicks(0, 0.5, 6).decimals).toBe(1)
    expect(niceTicks(0, 0.2, 6).decimals).toBe(2)
    expect(niceTicks(0, 500, 6).decimals).toBe(0)
  })

  test('hold both ends on round numbers, in no more steps than there is room for', () => {
    const ends = fc.double({ min: -1e4, max: 1e4, noNaN: true })
    fc.assert(
      fc.property(
        ends,
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (from, span, most) => {
          const { at, from: first, to: last } = niceTicks(from, from + span, most)
          const step = at[1]! - at[0]!
          expect(first).toBeLessThanOrEqual(from + step * 1e-6)
          expect(last).toBeGreaterThanOrEqual(from + span - step * 1e-6)
          expect(at.length - 1).toBeLessThanOrEqual(most)
          // 1, 2 or 5 and nothing but noughts.
          expect(step.toPrecision(6)).toMatch(/^0*\.?0*[125]0*\.?0*(e[+-]\d+)?$/)
        },
      ),
      { seed: 1911, numRuns: 300 },
    )
  })

  test('an axis with one value, and one turned round, still have a length', () => {
    expect(niceTicks(4, 4, 5).to).toBeGreaterThan(4)
    expect(niceTicks(5, 1, 5)).toEqual(niceTicks(1, 5, 5))
  })
})
