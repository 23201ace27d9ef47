import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bellsAlong } from '../../src/geometry/bells'

const flat = (...points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y, z: 0 }))

test('sticks are laid from the low end up, each bell uphill', () => {
  // 274 from the low end: mouths at 120 and 240 up, which are 154 and 34 from the high end.
  expect(bellsAlong(flat([0, 0], [274, 0]), 120)).toEqual([34, 154])
  expect(bellsAlong(flat([0, 0], [274, 0]), 120, 60)).toEqual([94, 214])
})

test('whole sticks end in the fitting, without a bell more', () => {
  expect(bellsAlong(flat([0, 0], [240, 0]), 120)).toEqual([120])
  expect(bellsAlong(flat([0, 0], [100, 0]), 120)).toEqual([])
})

test('each leg is laid anew from its bend, the first stick in the last leg alone', () => {
  expect(bellsAlong(flat([0, 0], [150, 0], [150, 200]), 120, 50)).toEqual([30, 150 + 30, 150 + 150])
})

test('a point on the way along a leg is no bend', () => {
  expect(bellsAlong(flat([0, 0], [100, 0], [274, 0]), 120)).toEqual([34, 154])
})

test('no piece is longer than a stick, and all of them together are the line', () => {
  const leg = fc.integer({ min: 1, max: 5000 })
  fc.assert(
    fc.property(leg, leg, fc.integer({ min: 12, max: 120 }), (east, north, first) => {
      const bells = bellsAlong(flat([0, 0], [east, 0], [east, north]), 120, first)
      const stops = [0, ...bells, east, east + north].sort((a, b) => a - b)
      const pieces = stops.slice(1).map((stop, i) => stop - stops[i]!)
      expect(Math.max(...pieces)).toBeLessThanOrEqual(120 + 1e-6)
      expect(Math.min(...pieces)).toBeGreaterThan(0)
    }),
    { seed: 20_261_125, numRuns: 300 },
  )
})
