import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fillDepthMm } from '../../../src/solvers/gravity/fill'
import { fullLph, normalDepthMm } from '../../../src/solvers/gravity/manning'
import { gpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'

const eighth = inchesPerFoot(1 / 8)

// Worked example of the trade notes, hand arithmetic: 4 in pipe at 1/8 in a foot, n 0.010, 19.2 gpm runs 27 % full.
test('4 in pipe with 19.2 gpm is 27 % full', () => {
  expect(fillDepthMm(inches(4.06), gpm(19.2), eighth, 0.01)! / inches(4.06)).toBeCloseTo(0.273, 3)
})

// Partial flow of a circle at constant n, as in published tables of hydraulic elements: at half depth half of the full flow,
// at 0.82 of the depth all of it.
test('half of what fits runs half full, and just under all of it 0.82 full', () => {
  const full = fullLph(100, 10, 0.013)
  expect(fillDepthMm(100, full / 2, 10, 0.013)).toBeCloseTo(50, 3)
  expect(fillDepthMm(100, full * 0.9999, 10, 0.013)).toBeCloseTo(82, 0)
})

test('is what the slow search finds, to a forty-thousandth of the bore', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 300, noNaN: true }),
      fc.double({ min: 0.5, max: 100, noNaN: true }),
      fc.double({ min: 0.007, max: 0.02, noNaN: true }),
      fc.double({ min: 1e-5, max: 1.2, noNaN: true }),
      (diameterMm, slope, n, share) => {
        const flowLph = share * fullLph(diameterMm, slope, n)
        const slow = normalDepthMm({ shape: 'circle', diameterMm }, flowLph, slope, n)
        const fast = fillDepthMm(diameterMm, flowLph, slope, n)
        if (slow === undefined) expect(fast).toBeUndefined()
        else expect(Math.abs(fast! - slow)).toBeLessThan(diameterMm / 40_000)
      },
    ),
    { seed: 41, numRuns: 500 },
  )
})

test('nothing runs in a line that does not fall, and no water has no depth', () => {
  expect(fillDepthMm(100, 10, 0, 0.01)).toBeUndefined()
  expect(fillDepthMm(100, 10, -5, 0.01)).toBeUndefined()
  expect(fillDepthMm(100, 0, 10, 0.01)).toBe(0)
})
