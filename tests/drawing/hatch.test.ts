import { expect, test } from 'vitest'
import fc from 'fast-check'
import { hatchLines } from '../../src/drawing/hatch'

const side = { min: -5000, max: 5000 }
const anyBox = fc
  .tuple(
    fc.integer(side),
    fc.integer(side),
    fc.integer({ min: 1, max: 800 }),
    fc.integer({ min: 1, max: 800 }),
  )
  .map(([x0, y0, width, height]) => ({ x0, y0, x1: x0 + width, y1: y0 + height }))

test('hatch lines lean at 45 degrees, stand the spacing apart and cross the box from foot to top (seed 3)', () => {
  fc.assert(
    fc.property(anyBox, fc.integer({ min: 4, max: 60 }), fc.boolean(), (box, spacing, isRising) => {
      const lines = hatchLines(box, isRising ? 'rising' : 'falling', spacing)
      for (let i = 0; i < lines.length; i += 4) {
        const [x0, y0, x1, y1] = lines.subarray(i, i + 4)
        expect([y0, y1]).toEqual([box.y0, box.y1])
        expect(x1! - x0!).toBeCloseTo((isRising ? 1 : -1) * (y1! - y0!))
        if (i > 0) expect((x0! - lines[i - 4]!) / Math.SQRT2).toBeCloseTo(spacing)
      }
      const diagonal = (box.x1 - box.x0 + box.y1 - box.y0) / (spacing * Math.SQRT2)
      expect(Math.abs(lines.length / 4 - diagonal)).toBeLessThanOrEqual(1)
    }),
    { seed: 3 },
  )
})

test('neighbouring shapes share their lines', () => {
  const left = hatchLines({ x0: 0, y0: 0, x1: 50, y1: 50 }, 'rising', 10)
  const right = hatchLines({ x0: 50, y0: 0, x1: 100, y1: 50 }, 'rising', 10)
  const offsets = (lines: Float64Array) =>
    Array.from({ length: lines.length / 4 }, (_, i) => (lines[4 * i]! / (10 * Math.SQRT2)) % 1)
  for (const offset of [...offsets(left), ...offsets(right)])
    expect(Math.abs(offset - Math.round(offset))).toBeLessThan(1e-9)
})

test('what would be a grey smear is no hatch at all', () => {
  expect(hatchLines({ x0: 0, y0: 0, x1: 1e6, y1: 1e6 }, 'crossed', 1)).toHaveLength(0)
})
