import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boxOf, corners } from '../../src/geometry/box'
import { distance, type Point } from '../../src/geometry/point'
import {
  contains,
  gapBetween,
  isInside,
  isUprightBox,
  outlineDistance,
  polygonsOverlap,
  regular,
  signedArea,
} from '../../src/geometry/polygon'

const at = (x: number, y: number): Point => ({ x, y })
const box = (x0: number, y0: number, x1: number, y1: number) => corners({ x0, y0, x1, y1 })

/** The L of a house of 480 in with its south-east corner of 192 in by 288 in left out (worked example of the trade notes). */
const ell = [at(0, 0), at(288, 0), at(288, 288), at(480, 288), at(480, 480), at(0, 480)]
const diamond = (x: number, y: number, r: number) => [at(x, y - r), at(x + r, y), at(x, y + r), at(x - r, y)]

const shifted = (polygon: readonly Point[], dx: number, dy: number) =>
  polygon.map(({ x, y }) => at(x + dx, y + dy))

const whole = (least: number, most: number) => fc.integer({ min: least, max: most })
const upright = fc
  .tuple(whole(-20, 20), whole(-20, 20), whole(1, 15), whole(1, 15))
  .map(([x, y, width, depth]) => box(x, y, x + width, y + depth))

/** Convex: corners of a regular polygon, squeezed and placed. */
const convex = fc
  .tuple(whole(-20, 20), whole(-20, 20), whole(2, 12), whole(3, 8), whole(1, 4))
  .map(([x, y, radius, sides, squeeze]) =>
    regular(at(0, 0), radius, sides).map((p) => at(x + p.x, y + p.y / squeeze)),
  )

describe('area', () => {
  test('of the L: 480 x 480 less 192 x 288, negative the other way round', () => {
    expect(signedArea(ell)).toBe(480 * 480 - 192 * 288)
    expect(signedArea(ell.toReversed())).toBe(-(480 * 480 - 192 * 288))
    expect(signedArea([])).toBe(0)
  })

  test('far from zero keeps its digits', () => {
    expect(signedArea(box(1e9, 1e9, 1e9 + 3, 1e9 + 2))).toBe(6)
  })
})

describe('inside', () => {
  test.each([
    [at(100, 100), true],
    [at(400, 400), true],
    [at(400, 100), false],
    [at(288, 100), true],
    [at(288, 288), true],
    [at(480, 480), true],
    [at(480.001, 480), false],
    [at(-1, 480), false],
  ])('%o in the L: %s', (p, expected) => {
    expect(isInside(ell, p)).toBe(expected)
    expect(isInside(ell.toReversed(), p)).toBe(expected)
  })

  test('the nearest edge, by number, from inside and outside', () => {
    expect(outlineDistance(ell, at(280, 100))).toEqual({ gapMm: 8, edge: 1, at: at(288, 100) })
    expect(outlineDistance(ell, at(240, 490))).toEqual({ gapMm: 10, edge: 4, at: at(240, 480) })
    expect(outlineDistance(ell, at(-3, 484))).toEqual({ gapMm: 5, edge: 4, at: at(0, 480) })
  })
})

describe('containing', () => {
  test.each([
    ['in the long leg', box(10, 10, 100, 400), true],
    ['flush in the inner corner', box(188, 188, 288, 288), true],
    ['all corners inside, but over the notch', [at(200, 20), at(470, 300), at(200, 470)], false],
    ['across the notch', box(200, 100, 400, 400), false],
    ['the L itself', ell, true],
    ['all round the L', box(0, 0, 480, 480), false],
    ['outside, touching', box(288, 100, 400, 288), false],
  ])('%s', (_, inner, expected) => {
    expect(contains(ell, inner)).toBe(expected)
  })
})

describe('overlap', () => {
  test.each([
    ['crossing bars without a corner in each other', box(0, 4, 10, 6), box(4, 0, 6, 10), true],
    ['one in the other', box(0, 0, 10, 10), diamond(5, 5, 2), true],
    ['the same diamond twice', diamond(0, 0, 5), diamond(0, 0, 5), true],
    ['sides in common only', box(0, 0, 5, 5), box(5, 0, 9, 5), false],
    ['a corner on a side', diamond(5, 0, 5), box(10, -5, 20, 5), false],
    ['filling the notch', ell, box(288, 0, 480, 288), false],
    ['a finger into the L', ell, box(200, 100, 400, 200), true],
    ['boxes about each other meet, diamonds do not', diamond(0, 0, 5), diamond(8, 8, 5), false],
  ])('%s', (_, a, b, expected) => {
    expect(polygonsOverlap(a, b)).toBe(expected)
    expect(polygonsOverlap(b, a)).toBe(expected)
  })
})

describe('gap', () => {
  test('boxes side by side: straight across, in the middle of what they share', () => {
    const gap = gapBetween(box(0, 0, 10, 10), box(46, 4, 60, 30))
    expect(gap).toEqual({ gapMm: 36, from: at(10, 7), to: at(46, 7) })
  })

  test('boxes corner to corner: the slanting distance', () => {
    const gap = gapBetween(box(0, 0, 10, 10), box(13, 14, 20, 20))
    expect(gap).toEqual({ gapMm: 5, from: at(10, 10), to: at(13, 14) })
  })

  test('boxes that touch: nothing', () => {
    expect(gapBetween(box(0, 0, 10, 10), box(10, 3, 20, 5)).gapMm).toBe(0)
    expect(gapBetween(box(0, 0, 10, 10), box(10, 10, 20, 20)).gapMm).toBe(0)
  })

  test('boxes that overlap: minus the least shift of the first, and where it goes', () => {
    const gap = gapBetween(box(0, 0, 10, 10), box(8, 1, 30, 30))
    expect(gap.gapMm).toBe(-2)
    expect(gap.from.x).toBe(10)
    expect(gap.to.x).toBe(8)
  })

  test('diamonds: 45 degrees apart, and driven into each other', () => {
    expect(gapBetween(diamond(0, 0, 5), diamond(8, 8, 5)).gapMm).toBeCloseTo(6 / Math.SQRT2, 12)
    // Their widest places stand level with each other, 5 + 5 - 7 deep.
    expect(gapBetween(diamond(0, 0, 5), diamond(7, 0, 5)).gapMm).toBeCloseTo(-3, 12)
  })

  test('a post in the L, 4 in from the notch, comes out into it', () => {
    const gap = gapBetween(box(280, 100, 284, 104), ell)
    expect(gap).toMatchObject({ gapMm: -8, from: { x: 280 }, to: { x: 288 } })
  })

  test('boxes agree with the same boxes taken as any polygon', () => {
    const asAny = (polygon: readonly Point[]) => [at(polygon[0]!.x, polygon[0]!.y), ...polygon]
    fc.assert(
      fc.property(upright, upright, (a, b) => {
        expect(isUprightBox(asAny(a))).toBe(false)
        expect(gapBetween(asAny(a), asAny(b)).gapMm).toBeCloseTo(gapBetween(a, b).gapMm, 9)
        expect(polygonsOverlap(asAny(a), asAny(b))).toBe(gapBetween(a, b).gapMm < 0)
      }),
      { seed: 51, numRuns: 300 },
    )
  })

  test('is as far as its two points, and a shift along it closes or parts', () => {
    fc.assert(
      fc.property(convex, fc.oneof(convex, upright), (a, b) => {
        const { gapMm, from, to } = gapBetween(a, b)
        expect(distance(from, to)).toBeCloseTo(Math.abs(gapMm), 9)
        const met = shifted(a, to.x - from.x, to.y - from.y)
        expect(gapBetween(met, b).gapMm).toBeGreaterThan(-1e-6)
        expect(gapBetween(met, b).gapMm).toBeLessThan(1e-6)
      }),
      { seed: 52, numRuns: 400 },
    )
  })

  test('of overlapping convex shapes no smaller shift along x or y parts them', () => {
    fc.assert(
      fc.property(convex, convex, (a, b) => {
        const depthMm = -gapBetween(a, b).gapMm
        fc.pre(depthMm > 0.01)
        const less = 0.99 * depthMm
        for (const [dx, dy] of [
          [less, 0],
          [-less, 0],
          [0, less],
          [0, -less],
        ] as const)
          expect(polygonsOverlap(shifted(a, dx, dy), b)).toBe(true)
      }),
      { seed: 53, numRuns: 300 },
    )
  })

  test('is the same from the other side', () => {
    fc.assert(
      fc.property(convex, fc.oneof(convex, upright), (a, b) => {
        expect(gapBetween(b, a).gapMm).toBeCloseTo(gapBetween(a, b).gapMm, 9)
      }),
      { seed: 54, numRuns: 200 },
    )
  })
})

describe('a polygon about a circle', () => {
  test('with 4, 8, 24 sides is as wide as the circle along x and y', () => {
    for (const sides of [4, 8, 24]) {
      const { x0, y0, x1, y1 } = boxOf(regular(at(10, 20), 6, sides))
      expect([x0, y0, x1, y1].map((v) => Number(v.toFixed(9)))).toEqual([4, 14, 16, 26])
    }
  })

  test('stands against the circle with every edge', () => {
    const hexagon = regular(at(0, 0), 6, 6)
    expect(signedArea(hexagon)).toBeGreaterThan(0)
    expect(outlineDistance(hexagon, at(0, 0)).gapMm).toBeCloseTo(6, 12)
    hexagon.forEach((p, i) => {
      const next = hexagon[(i + 1) % 6]!
      expect(Math.hypot((p.x + next.x) / 2, (p.y + next.y) / 2)).toBeCloseTo(6, 12)
    })
  })

  test('with many sides has the area of the circle', () => {
    expect(signedArea(regular(at(3, 4), 10, 720))).toBeCloseTo(Math.PI * 100, 1)
  })
})

test('only four upright or level sides make an upright box', () => {
  expect(isUprightBox(box(0, 0, 4, 3))).toBe(true)
  expect(isUprightBox(box(0, 0, 4, 3).toReversed())).toBe(true)
  expect(isUprightBox(diamond(0, 0, 4))).toBe(false)
  expect(isUprightBox([at(0, 0), at(4, 0), at(4, 3), at(1, 3)])).toBe(false)
  expect(isUprightBox(ell)).toBe(false)
})
