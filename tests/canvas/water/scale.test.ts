import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DRY, flowScale, shadesOf, shareOn, velocityScale } from '../../../src/canvas/water/scale'
import { SHADES } from '../../../src/drawing/cividis'
import { gph, toGph } from '../../../src/units/flow'
import { feetPerSecond, toFeetPerSecond } from '../../../src/units/velocity'

const ends = (least: number, most: number) => {
  const { low, high } = flowScale(gph(least), gph(most), 'feet-inches')
  return [toGph(low), toGph(high)].map((value) => Math.round(value * 1000) / 1000)
}

describe('a scale of flows', () => {
  // By hand: 3.6 gph over five steps asks for 0.72, so whole gallons; 0.9 over five for 0.18, so fifths.
  test('ends on whole steps of the reader that hold the least and the most', () => {
    expect(ends(3.7, 7.3)).toEqual([3, 8])
    expect(ends(3.7, 4.6)).toEqual([3.6, 4.6])
    const { low, high } = flowScale(14, 27.6, 'metric')
    expect([low, high]).toEqual([10, 30])
  })

  // By hand: 4.02 gph with a tenth of it for width runs from 3.81 to 4.21; steps of 0.1.
  test('is never narrower than what counts as Even', () => {
    expect(ends(4, 4.02)).toEqual([3.8, 4.3])
  })

  test('has ends that differ, and never lie below nothing, whatever flows', () => {
    const flow = fc.double({ min: 0, max: 400, noNaN: true })
    fc.assert(
      fc.property(flow, flow, fc.constantFrom('feet-inches', 'metric'), (a, b, units) => {
        const [least, most] = [Math.min(a, b), Math.max(a, b)]
        const { low, high } = flowScale(least, most, units as 'feet-inches' | 'metric')
        expect(low).toBeGreaterThanOrEqual(0)
        expect(high).toBeGreaterThan(low)
        expect(low).toBeLessThanOrEqual(least + 1e-3)
        expect(high).toBeGreaterThanOrEqual(most - 1e-3)
      }),
      { seed: 23, numRuns: 400 },
    )
  })
})

test('a scale of velocities begins at standing water and always holds 5 ft/s', () => {
  const high = (fastest: number) => toFeetPerSecond(velocityScale(feetPerSecond(fastest), 'feet-inches').high)
  expect(velocityScale(0, 'feet-inches').low).toBe(0)
  expect(high(1)).toBeCloseTo(5, 9)
  expect(high(6.1)).toBeCloseTo(8, 9)
})

describe('shades', () => {
  const scale = { low: 10, high: 20 }

  test('rise with the flow; a tower that nothing comes to has none', () => {
    expect([...shadesOf(Float64Array.of(10, 12.6, 20, 0), scale)]).toEqual([0, 6, SHADES - 1, DRY])
  })

  test('lie at the middle of the scale for the middle flow', () => {
    expect(shareOn(scale, 15)).toBe(0.5)
  })
})
