import { describe, expect, test } from 'vitest'
import { nearestFromAbove, nearestInSpace, pathLength, placeAlong, turnAt } from '../../src/geometry/path'

const place = (x: number, y: number, z: number) => ({ x, y, z })

/** 10 along, 5 straight up, 10 on. */
const path = [place(0, 0, 0), place(10, 0, 0), place(10, 0, 5), place(20, 0, 5)]

describe('a path with a rise', () => {
  test('is as long as its way', () => {
    expect(pathLength(path)).toBe(25)
    expect(pathLength([])).toBe(0)
  })

  test('is met from above on the first of the places that lie over each other', () => {
    expect(nearestFromAbove(path, place(10, 3, 99))).toEqual({ at: place(10, 0, 0), alongMm: 10, gapMm: 3 })
    expect(nearestFromAbove(path, place(12, 3, 0))).toEqual({ at: place(12, 0, 5), alongMm: 17, gapMm: 3 })
  })

  test('is met in space on its rise', () => {
    expect(nearestInSpace(path, place(13, 0, 2))).toEqual({ at: place(10, 0, 2), alongMm: 12, gapMm: 3 })
  })

  test('has a place for each length of pipe', () => {
    expect([-1, 0, 12, 25, 99].map((along) => placeAlong(path, along))).toEqual([
      place(0, 0, 0),
      place(0, 0, 0),
      place(10, 0, 2),
      place(20, 0, 5),
      place(20, 0, 5),
    ])
  })

  test('turns a right angle at its foot and at its head', () => {
    expect(turnAt(path[0]!, path[1]!, path[2]!)).toBeCloseTo(Math.PI / 2, 12)
    expect(turnAt(place(0, 0, 0), place(1, 0, 0), place(3, 0, 0))).toBe(0)
    expect(turnAt(place(0, 0, 0), place(1, 0, 0), place(0, 0, 0))).toBeCloseTo(Math.PI, 12)
  })
})

test('no path at all is a mistake of whoever asks', () => {
  expect(() => placeAlong([], 1)).toThrow('A path needs at least 1 place')
})
