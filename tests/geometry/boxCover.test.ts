import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Box, holds } from '../../src/geometry/box'
import { boxesAround, boxesOver, STAIR_MM } from '../../src/geometry/boxCover'
import type { Point } from '../../src/geometry/point'
import { isInside, outlineDistance, regular, signedArea } from '../../src/geometry/polygon'

const at = (x: number, y: number): Point => ({ x, y })
const ell = [at(0, 0), at(288, 0), at(288, 288), at(480, 288), at(480, 480), at(0, 480)]
const comb = [at(0, 0), at(50, 0), at(50, 40), at(40, 40), at(40, 10), at(10, 10), at(10, 30), at(0, 30)]

const areaOf = (boxes: readonly Box[]): number =>
  boxes.reduce((sum, { x0, y0, x1, y1 }) => sum + (x1 - x0) * (y1 - y0), 0)

const isCovered = (boxes: readonly Box[], p: Point): boolean => boxes.some((b) => holds(b, p))

describe('upright and level outlines are covered exactly', () => {
  test.each([
    ['L', ell, 480 * 480],
    ['comb', comb, 50 * 40],
    ['comb, clockwise', comb.toReversed(), 50 * 40],
  ])('%s', (_, outline, wholeMm2) => {
    const area = Math.abs(signedArea(outline))
    expect(areaOf(boxesOver(outline))).toBe(area)
    expect(areaOf(boxesAround(outline))).toBe(wholeMm2 - area)
  })

  test('a box has nothing around it', () => {
    expect(boxesAround([at(0, 0), at(9, 0), at(9, 5), at(0, 5)])).toEqual([])
  })
})

/** Simple by construction: corners at growing angles about a middle. */
const star = fc.array(fc.integer({ min: 100, max: 1000 }), { minLength: 3, maxLength: 12 }).map((reaches) =>
  reaches.map((reach, i) => {
    const angle = (2 * Math.PI * (i + 0.3)) / reaches.length
    return at(reach * Math.cos(angle), reach * Math.sin(angle))
  }),
)
const place = fc.record({
  x: fc.integer({ min: -1000, max: 1000 }),
  y: fc.integer({ min: -1000, max: 1000 }),
})

/** Strictly between the ends, where rounding would decide. */
const permille = fc.integer({ min: 1, max: 999 })

describe('slanted outlines are covered to the safe side, within a stair', () => {
  test('what is inside is covered, and what is covered is at most a stair outside', () => {
    fc.assert(
      fc.property(star, place, (outline, p) => {
        const isCover = isCovered(boxesOver(outline), p)
        if (isInside(outline, p)) expect(isCover).toBe(true)
        else if (isCover) expect(outlineDistance(outline, p).gapMm).toBeLessThanOrEqual(STAIR_MM)
      }),
      { seed: 55, numRuns: 1000 },
    )
  })

  test('what is outside but in the bounding box is covered by the boxes around, with at most a stair of the inside', () => {
    fc.assert(
      fc.property(star, permille, permille, (outline, u, v) => {
        const xs = outline.map(({ x }) => x)
        const ys = outline.map(({ y }) => y)
        const share = (values: number[], part: number) =>
          Math.min(...values) + (part / 1000) * (Math.max(...values) - Math.min(...values))
        const p = at(share(xs, u), share(ys, v))
        const isCover = isCovered(boxesAround(outline), p)
        if (!isInside(outline, p)) expect(isCover).toBe(true)
        else if (isCover) expect(outlineDistance(outline, p).gapMm).toBeLessThanOrEqual(STAIR_MM)
      }),
      { seed: 56, numRuns: 1000 },
    )
  })

  test('a round tank of 1 m stays under 1 m and a stair each side', () => {
    const { x0, x1, y0, y1 } = boxesOver(regular(at(0, 0), 500, 24)).reduce((a, b) => ({
      x0: Math.min(a.x0, b.x0),
      y0: Math.min(a.y0, b.y0),
      x1: Math.max(a.x1, b.x1),
      y1: Math.max(a.y1, b.y1),
    }))
    for (const reach of [-x0, x1, -y0, y1]) expect(reach).toBeCloseTo(500, 9)
  })
})
