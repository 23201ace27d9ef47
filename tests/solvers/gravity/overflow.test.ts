import { describe, expect, test } from 'vitest'
import { overflowHeadMm, overflowLph } from '../../../src/solvers/gravity/overflow'
import { toGpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'

describe('an overflow pipe', () => {
  test('takes nothing from water that does not reach it', () => {
    expect(overflowLph(inches(2), 0)).toBe(0)
    expect(overflowLph(inches(2), -5)).toBe(0)
  })

  // Chow, Open-channel hydraulics (1959), figure 4-1 and the critical section factor Z / D^2.5 of his appendix A: at yc = 0.5 D it
  // is 0.2459, so Q = 0.2459 sqrt(g) D^2.5. For D = 2 in (0.0508 m): 0.2459 x 3.1316 x 5.8165e-4 = 4.479e-4 m3/s = 7.10 gpm. The head
  // there: hydraulic depth (pi / 8) D = 0.3927 D; 0.5 D + 0.3927 D / 2 = 0.6963 D = 35.37 mm.
  test('half full at its mouth takes what critical flow does', () => {
    expect(toGpm(overflowLph(inches(2), 35.37))).toBeCloseTo(7.1, 1)
  })

  // By hand, 4 in of water over the invert of a 2 in pipe: 3 in, 76.2 mm, over its middle; 0.62 x 0.0020268 m2 x sqrt(2 x 9.80665 x 0.0762)
  // = 0.0015362 m3/s, 24.3 gpm.
  test('drowned is a hole with a sharp edge', () => {
    expect(toGpm(overflowLph(inches(2), inches(4)))).toBeCloseTo(24.3, 0)
  })

  test('takes more the higher water stands over it, and has one head for each flow', () => {
    const heads = Array.from({ length: 60 }, (_, i) => 2 + 3 * i)
    const flows = heads.map((head) => overflowLph(inches(2), head))
    expect(flows).toEqual(flows.toSorted((a, b) => a - b))
    for (const head of [5, 20, 60, 120])
      expect(overflowHeadMm(inches(2), overflowLph(inches(2), head), 300)).toBeCloseTo(head, 3)
    expect(overflowHeadMm(inches(2), 1e6, 300)).toBe(Infinity)
  })
})
