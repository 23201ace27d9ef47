import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distance } from '../../src/geometry/point'
import { crossings, nearestOn, pointAlong, polylineLength, strip } from '../../src/geometry/polyline'
import { signedArea } from '../../src/geometry/polygon'
import { segmentsCross } from '../../src/geometry/segment'

const at = (x: number, y: number) => ({ x, y })
const elbow = [at(0, 0), at(30, 0), at(30, 40)]

const whole = fc.integer({ min: -50, max: 50 })
const place = fc.record({ x: whole, y: whole })
const line = fc.array(place, { minLength: 2, maxLength: 6 })

describe('length and places along', () => {
  test('an elbow of 30 and 40 is 70 long', () => {
    expect(polylineLength(elbow)).toBe(70)
    expect(polylineLength([at(5, 5)])).toBe(0)
    expect(polylineLength([])).toBe(0)
  })

  test.each([
    [-5, at(0, 0)],
    [0, at(0, 0)],
    [12, at(12, 0)],
    [30, at(30, 0)],
    [45, at(30, 15)],
    [70, at(30, 40)],
    [99, at(30, 40)],
  ])('%d along the elbow', (alongMm, expected) => {
    expect(pointAlong(elbow, alongMm)).toEqual(expected)
  })

  test('a polyline without points is refused with the count', () => {
    expect(() => pointAlong([], 3)).toThrow('has 0')
  })
})

describe('nearest place', () => {
  test('beside the second part, past the end, and at the bend', () => {
    expect(nearestOn(elbow, at(36, 10))).toEqual({ at: at(30, 10), alongMm: 40, gapMm: 6 })
    expect(nearestOn(elbow, at(30, 45))).toEqual({ at: at(30, 40), alongMm: 70, gapMm: 5 })
    expect(nearestOn(elbow, at(33, -4))).toEqual({ at: at(30, 0), alongMm: 30, gapMm: 5 })
  })

  test('is never farther than any place walked past, and lies where it says', () => {
    fc.assert(
      fc.property(line, place, (points, p) => {
        const { at: nearest, alongMm, gapMm } = nearestOn(points, p)
        expect(distance(nearest, p)).toBeCloseTo(gapMm, 9)
        expect(distance(pointAlong(points, alongMm), nearest)).toBeLessThan(1e-6)
        const total = polylineLength(points)
        for (let share = 0; share <= 1; share += 1 / 64) {
          expect(distance(pointAlong(points, share * total), p)).toBeGreaterThanOrEqual(gapMm - 1e-9)
        }
      }),
      { seed: 41, numRuns: 200 },
    )
  })
})

describe('crossings', () => {
  test.each([
    ['a plain cross', [at(0, 0), at(4, 4), at(0, 4), at(4, 0)], at(2, 2)],
    ['an end on the other', [at(0, 0), at(4, 0), at(2, 0), at(2, 9)], at(2, 0)],
    ['two ends in one place', [at(0, 0), at(4, 0), at(4, 0), at(9, 9)], at(4, 0)],
    ['apart', [at(0, 0), at(4, 0), at(5, -1), at(5, 1)], undefined],
    ['side by side', [at(0, 0), at(4, 0), at(0, 1), at(4, 1)], undefined],
    ['on one line, apart', [at(0, 0), at(4, 0), at(5, 0), at(9, 0)], undefined],
    ['one lying on the other', [at(0, 0), at(9, 0), at(7, 0), at(3, 0)], at(3, 0)],
    ['a dot on a line', [at(3, 0), at(3, 0), at(0, 0), at(9, 0)], at(3, 0)],
  ])('segments: %s', (_, [a, b, c, d], expected) => {
    expect(segmentsCross(a!, b!, c!, d!)).toEqual(expected)
  })

  test('a drain with a bend over a buried wire: both meetings, in order, with the way to each', () => {
    const drain = [at(0, 0), at(100, 0), at(100, 50), at(0, 50)]
    expect(crossings(drain, [at(20, 90), at(20, -10)])).toEqual([
      { at: at(20, 0), alongA: 20, alongB: 90 },
      { at: at(20, 50), alongA: 230, alongB: 40 },
    ])
  })

  test('a meeting at a bend counts once', () => {
    expect(crossings(elbow, [at(20, -10), at(30, 0), at(40, 10)])).toHaveLength(1)
  })

  test('are the same places from the other line', () => {
    fc.assert(
      fc.property(line, line, (a, b) => {
        for (const { at: p, alongA, alongB } of crossings(a, b)) {
          expect(distance(pointAlong(a, alongA), p)).toBeLessThan(1e-6)
          expect(distance(pointAlong(b, alongB), p)).toBeLessThan(1e-6)
        }
        expect(crossings(a, b).length > 0).toBe(crossings(b, a).length > 0)
      }),
      { seed: 42, numRuns: 300 },
    )
  })
})

describe('strip', () => {
  test('one anticlockwise rectangle a part, the line in its middle', () => {
    const [first, second] = strip(elbow, 6)
    expect(first).toEqual([at(0, -3), at(30, -3), at(30, 3), at(0, 3)])
    expect(second).toEqual([at(33, 0), at(33, 40), at(27, 40), at(27, 0)])
  })

  test('a part without length gives no rectangle', () => {
    expect(strip([at(1, 1), at(1, 1), at(1, 5)], 2)).toHaveLength(1)
  })

  test('covers width times length on any bearing', () => {
    fc.assert(
      fc.property(line, fc.integer({ min: 1, max: 20 }), (points, widthMm) => {
        const area = strip(points, widthMm).reduce((sum, rectangle) => sum + signedArea(rectangle), 0)
        expect(area).toBeCloseTo(polylineLength(points) * widthMm, 6)
      }),
      { seed: 43, numRuns: 200 },
    )
  })
})
