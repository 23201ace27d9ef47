import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addRunPoint,
  bendsOf,
  dragRun,
  labelPlace,
  MOST_POINTS,
  newRun,
  removeRunPoint,
  runHandles,
} from '../../src/parts/points'
import { at } from '../support/site'

const elbow = { points: [at(0, 0), at(100, 0), at(100, 100)] }

describe('points of a run', () => {
  test('a new run is one 10 ft stick with its middle where it was dropped', () => {
    expect(newRun(at(200, 50))).toEqual([at(140, 50), at(260, 50)])
  })

  test('a handle moves its own point and no other', () => {
    expect(dragRun(elbow, 'p1', at(90, -10)).points).toEqual([at(0, 0), at(90, -10), at(100, 100)])
    expect(dragRun(elbow, 'p9', at(1, 1))).toBe(elbow)
  })

  test('a point comes into the leg that it lies on', () => {
    expect(addRunPoint(elbow, at(100, 40)).points).toEqual([at(0, 0), at(100, 0), at(100, 40), at(100, 100)])
  })

  test('a point that is added beside the run lies on it, so that the run stays as it was', () => {
    expect(addRunPoint(elbow, at(40, 5)).points).toEqual([at(0, 0), at(40, 0), at(100, 0), at(100, 100)])
    expect(bendsOf(addRunPoint(elbow, at(93, 60)).points)).toEqual(bendsOf(elbow.points))
  })

  test('a full run takes no more points', () => {
    const full = { points: Array.from({ length: MOST_POINTS }, (_, i) => at(i, i % 2)) }
    expect(addRunPoint(full, at(3, 3))).toBe(full)
  })

  test('points go until two are left', () => {
    const two = removeRunPoint(elbow, 'p1')
    expect(two.points).toEqual([at(0, 0), at(100, 100)])
    expect(removeRunPoint(two, 'p0')).toBe(two)
  })

  test('what was added can be removed again', () => {
    const place = fc.record({ x: fc.integer({ min: 0, max: 9999 }), y: fc.integer({ min: 0, max: 9999 }) })
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 8 }), place, (points, added) => {
        const longer = addRunPoint({ points }, added)
        const shorter = runHandles(longer).map(({ id }) => removeRunPoint(longer, id).points)
        expect(shorter).toContainEqual(points)
      }),
      { seed: 20_250_302 },
    )
  })
})

describe('bends', () => {
  test('a corner is one, a point on the straight and a repeated point are none', () => {
    expect(bendsOf([at(0, 0), at(50, 0), at(100, 0), at(100, 0), at(100, 100)])).toEqual([at(100, 0)])
  })

  test('pipe takes up 4 degrees by itself, 6 degrees need a fitting', () => {
    const turning = (degrees: number) => {
      const angle = (degrees * Math.PI) / 180
      return [at(0, 0), at(100, 0), at(100 + 100 * Math.cos(angle), 100 * Math.sin(angle))]
    }
    expect(bendsOf(turning(4))).toEqual([])
    expect(bendsOf(turning(-6))).toHaveLength(1)
  })
})

test('words stand beside the longest leg and are read along it', () => {
  const run = [at(0, 0), at(40, 0), at(40, 100)]
  expect(labelPlace(run, 10)).toEqual({ at: { x: at(40, 0).x - 10, y: at(0, 50).y }, upright: true })
})
