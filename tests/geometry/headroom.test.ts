import { describe, expect, test } from 'vitest'
import { headroomOf } from '../../src/geometry/headroom'

/** Gothic house 352 in wide, west wall as surveyed (worked example of the trade notes); lengths in inches. */
const outline = [
  { x: 0, y: 0 },
  { x: 352, y: 0 },
  { x: 352, y: 856 },
  { x: 0, y: 856 },
]
const profile = [
  { distanceMm: 0, heightMm: 66 },
  { distanceMm: 6, heightMm: 74 },
  { distanceMm: 12, heightMm: 80 },
  { distanceMm: 18, heightMm: 86 },
  { distanceMm: 24, heightMm: 92 },
]
const east = { edge: 1, profile }
const west = { edge: 3, profile }

describe('headroom', () => {
  const clear = headroomOf(outline, 168, [east, west])

  test.each([
    [0, 66],
    [3, 70],
    [6, 74],
    [21, 89],
    [24, 92],
    [24.5, 168],
    [176, 168],
    [349, 70],
    [352, 66],
  ])('%d in from the west wall it is %d in', (x, expected) => {
    expect(clear(x, 400)).toBeCloseTo(expected, 12)
  })

  test('is never above the general headroom', () => {
    expect(headroomOf(outline, 72, [west])(18, 400)).toBe(72)
  })

  test('takes the lower of two walls in a corner', () => {
    const south = { edge: 0, profile: [{ distanceMm: 10, heightMm: 50 }] }
    const corner = headroomOf(outline, 168, [west, south])
    expect(corner(3, 5)).toBe(50)
    expect(corner(3, 11)).toBe(70)
  })

  test('a wall of the short leg of an L does not lower the long leg', () => {
    const ell = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 40 },
      { x: 90, y: 40 },
      { x: 90, y: 90 },
      { x: 0, y: 90 },
    ]
    const clearOf = headroomOf(ell, 120, [{ edge: 1, profile: [{ distanceMm: 10, heightMm: 70 }] }])
    expect(clearOf(35, 20)).toBe(70)
    expect(clearOf(39, 60)).toBe(120)
  })

  test('profile points in any order, first height up to the first point, unknown edges ignored', () => {
    const reversed = headroomOf(outline, 168, [{ edge: 3, profile: profile.toReversed() }])
    expect(reversed(9, 400)).toBe(77)
    const late = headroomOf(outline, 168, [{ edge: 3, profile: [{ distanceMm: 9, heightMm: 60 }] }])
    expect(late(1, 400)).toBe(60)
    expect(headroomOf(outline, 168, [{ edge: 9, profile }])(1, 400)).toBe(168)
  })
})
