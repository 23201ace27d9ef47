import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { surfaceOf } from '../../src/geometry/surface'

const spot = (x: number, y: number, z: number) => ({ x, y, z })
const whole = (most: number) => fc.integer({ min: -most, max: most })
const spots = fc.array(fc.record({ x: whole(50), y: whole(50), z: whole(9) }), {
  minLength: 1,
  maxLength: 12,
})

/** The inclined floor of a house 29 ft 4 in by 71 ft 4 in: 0, -1, -2 and -3 in at its corners (worked example of the trade notes). */
const corners = [spot(0, 856, 0), spot(352, 856, -1), spot(0, 0, -2), spot(352, 0, -3)]

describe('a floor of few spots', () => {
  test('none is level at zero, one is level at its reading', () => {
    expect(surfaceOf([])(7, 8)).toBe(0)
    expect(surfaceOf([spot(3, 4, -12)])(700, 800)).toBe(-12)
  })

  test('two set the fall along their line and none across it', () => {
    const floor = surfaceOf([spot(0, 0, 0), spot(10, 0, -5)])
    expect(floor(4, 0)).toBeCloseTo(-2, 12)
    expect(floor(4, 90)).toBeCloseTo(-2, 12)
    expect(floor(20, -3)).toBeCloseTo(-10, 12)
  })

  test('more on one slanting line make a profile, constant across it', () => {
    const floor = surfaceOf([spot(0, 0, 0), spot(3, 4, -1), spot(9, 12, -2)])
    expect(floor(3, 4)).toBeCloseTo(-1, 9)
    expect(floor(3 - 40, 4 + 30)).toBeCloseTo(-1, 9)
    expect(floor(6 - 4, 8 + 3)).toBeCloseTo(floor(6, 8), 9)
  })
})

describe('a floor of many spots', () => {
  test('four corners at 0, -1, -2 and -3 give -1.5 in the middle', () => {
    expect(surfaceOf(corners)(176, 428)).toBeCloseTo(-1.5, 12)
  })

  test('passes through every spot', () => {
    fc.assert(
      fc.property(spots, (readings) => {
        const places = new Map(readings.map((s) => [`${s.x} ${s.y}`, s]))
        const separate = [...places.values()]
        // On one line within a thousandth the floor is a profile along it, which the cases above cover.
        fc.pre(new Set(separate.map((s) => s.x)).size > 2 && new Set(separate.map((s) => s.y)).size > 2)
        const floor = surfaceOf(separate)
        for (const { x, y, z } of separate) expect(floor(x, y)).toBeCloseTo(z, 6)
      }),
      { seed: 44, numRuns: 300 },
    )
  })

  test('a plane comes out as that plane, wherever it was read', () => {
    const coefficient = fc.integer({ min: -40, max: 40 })
    fc.assert(
      fc.property(
        spots,
        coefficient,
        coefficient,
        coefficient,
        whole(200),
        whole(200),
        (read, a, b, c, x, y) => {
          const plane = (px: number, py: number) => a + (b / 1000) * px + (c / 1000) * py
          const triangle = [spot(0, 0, 0), spot(40, 0, 0), spot(0, 40, 0)]
          const floor = surfaceOf([...read, ...triangle].map((s) => spot(s.x, s.y, plane(s.x, s.y))))
          expect(Math.abs(floor(x, y) - plane(x, y))).toBeLessThan(1e-9)
        },
      ),
      { seed: 45, numRuns: 300 },
    )
  })

  test('readings of one place that disagree count as their mean', () => {
    const floor = surfaceOf([...corners, spot(176, 428, 1), spot(176, 428, 3)])
    expect(floor(176, 428)).toBeCloseTo(2, 9)
  })

  test('readings a hand apart that disagree tilt nothing beyond the range of the readings', () => {
    const floor = surfaceOf([...corners, spot(176, 428, -1.5), spot(176.5, 428, 4.5)])
    for (let x = 0; x <= 352; x += 11) {
      for (let y = 0; y <= 856; y += 11) {
        expect(floor(x, y)).toBeGreaterThan(-4)
        expect(floor(x, y)).toBeLessThan(5)
      }
    }
  })

  test('falls all the way where every reading falls, on a floor that gets steeper', () => {
    const rows = [0, 100, 200, 300].flatMap((x, i) => [0, 100].map((y) => spot(x, y, -(i * i))))
    const floor = surfaceOf(rows)
    let above = floor(0, 50)
    for (let x = 5; x <= 300; x += 5) {
      const level = floor(x, 50)
      expect(level).toBeLessThan(above)
      above = level
    }
  })

  test('moves, turns and mirrors with its spots', () => {
    fc.assert(
      fc.property(spots, whole(60), whole(60), (read, x, y) => {
        const spread = [...read, spot(-51, -52, 1), spot(53, 7, 2), spot(5, 54, -3)]
        const z = surfaceOf(spread)(x, y)
        expect(surfaceOf(spread.map((s) => spot(s.x + 900, s.y - 70, s.z)))(x + 900, y - 70)).toBeCloseTo(
          z,
          8,
        )
        expect(surfaceOf(spread.map((s) => spot(-s.y, s.x, s.z)))(-y, x)).toBeCloseTo(z, 8)
        expect(surfaceOf(spread.map((s) => spot(-s.x, s.y, s.z)))(-x, y)).toBeCloseTo(z, 8)
      }),
      { seed: 46, numRuns: 200 },
    )
  })
})
