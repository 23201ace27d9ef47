import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { spread, spreadSizes } from '../../src/canvas/spread'

describe('labels along the pole', () => {
  test('stay where they want to be while there is room', () => {
    expect(spread([10, 50, 90], 20, 0, 100)).toEqual([10, 50, 90])
  })

  test('share the shift where they would touch', () => {
    expect(spread([50, 50], 20, 0, 100)).toEqual([40, 60])
    expect(spread([40, 50, 54], 20, 0, 100)).toEqual([28, 48, 68])
  })

  test('start at the top where there is too little room for all', () => {
    expect(spread([5, 5, 5], 20, 0, 30)).toEqual([0, 20, 40])
  })

  test('are as far apart as half of both is high', () => {
    // 20, 40 and 20 high about 50, 50, 50: middles 30 apart, so 20, 50, 80.
    expect(spreadSizes([50, 50, 50], [20, 40, 20], 0, 100)).toEqual([20, 50, 80])
    // Pushed to the top: the first has its middle at 10, then 10 + 20 = 30 more each.
    expect(spreadSizes([0, 0, 0], [20, 40, 20], 0, 100)).toEqual([10, 40, 70])
  })

  const wishes = fc
    .array(fc.double({ min: -50, max: 650, noNaN: true }), { minLength: 1, maxLength: 20 })
    .map((all) => all.toSorted((a, b) => a - b))

  test('never touch, never leave the pole, and keep their order', () => {
    fc.assert(
      fc.property(wishes, (wanted) => {
        const places = spread(wanted, 28, 0, 600)
        expect(places).toHaveLength(wanted.length)
        places.forEach((place, index) => {
          expect(place).toBeGreaterThanOrEqual(-1e-6)
          expect(place).toBeLessThanOrEqual(600 + 1e-6)
          if (index > 0) expect(place - (places[index - 1] ?? 0)).toBeGreaterThanOrEqual(28 - 1e-6)
        })
      }),
      { seed: 20261125, numRuns: 300 },
    )
  })

  test('that could move by themselves stand as near to their wish as that lets them', () => {
    fc.assert(
      fc.property(wishes, (wanted) => {
        const places = spread(wanted, 28, 0, 600)
        places.forEach((place, index) => {
          const low = index === 0 ? 0 : (places[index - 1] ?? 0) + 28
          const high = index === places.length - 1 ? 600 : (places[index + 1] ?? 0) - 28
          if (high - low > 1e-6) {
            const alone = Math.min(Math.max(wanted[index] ?? 0, low), high)
            // One that touches a neighbour may be held there by the neighbour's own wish.
            const isFree = place - low > 1e-6 && high - place > 1e-6
            if (isFree) expect(place).toBeCloseTo(alone, 6)
          }
        })
      }),
      { seed: 7, numRuns: 300 },
    )
  })
})
