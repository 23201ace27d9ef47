import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hatchWithin, ringsOf } from '../../src/drawing/hatchWithin'

const squared = (lines: Float64Array) =>
  Array.from({ length: lines.length / 4 }, (_, i) => [...lines.subarray(4 * i, 4 * i + 4)])

describe('hatch lines within a ring', () => {
  test('end at its edges: a square of 10 with lines 5√2 apart along x has the diagonal and nothing beyond', () => {
    // Rising lines x - y = k at k = -10, 0, 10 (spacing 5√2 square to them is 10 along x); only k = 0 runs inside the square.
    const square = Float64Array.of(0, 0, 10, 0, 10, 10, 0, 10)
    const inside = squared(hatchWithin(square, 'rising', 5 * Math.SQRT2)).filter(
      ([x0, , x1]) => Math.abs(x1! - x0!) > 1e-6,
    )
    expect(inside).toHaveLength(1)
    for (const [i, due] of [0, 0, 10, 10].entries()) expect(inside[0]![i]).toBeCloseTo(due)
  })

  test('leave the notch of an L bare', () => {
    // An L of 20 by 20 without its upper right quarter.
    const ell = Float64Array.of(0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20)
    for (const [x0, y0, x1, y1] of squared(hatchWithin(ell, 'crossed', 1.3))) {
      const [x, y] = [(x0! + x1!) / 2, (y0! + y1!) / 2]
      expect(x > 10 + 1e-6 && y > 10 + 1e-6, `${x}, ${y}`).toBe(false)
    }
  })

  test('are as long together as the area over the spacing, whatever the triangle (seed 5)', () => {
    const corner = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }))
    fc.assert(
      fc.property(corner, corner, corner, ([ax, ay], [bx, by], [cx, cy]) => {
        const ring = Float64Array.of(ax, ay, bx, by, cx, cy)
        const area = Math.abs((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2
        const spacing = 1
        const total = squared(hatchWithin(ring, 'falling', spacing)).reduce(
          (sum, [x0, y0, x1, y1]) => sum + Math.hypot(x1! - x0!, y1! - y0!),
          0,
        )
        // A sum of strips is off by no more than its longest line.
        expect(Math.abs(total * spacing - area)).toBeLessThanOrEqual(400 * Math.SQRT2 * spacing)
      }),
      { seed: 5 },
    )
  })
})

test('each of many boxes and discs is a ring of its own', () => {
  const inked = { pen: 'outline', wash: 'post' } as const
  expect(ringsOf({ as: 'boxes', ...inked, boxes: new Float64Array(12) })).toHaveLength(3)
  const [ring] = ringsOf({ as: 'discs', ...inked, discs: Float64Array.of(5, 5, 2) })
  for (let i = 0; i < ring!.length; i += 2)
    expect(Math.hypot(ring![i]! - 5, ring![i + 1]! - 5)).toBeCloseTo(2)
})
