import { expect, test } from 'vitest'
import { arrowHeads } from '../../src/drawing/arrow'

const bend = Float64Array.of(0, 0, 100, 0, 100, 40)

test('an end arrow has its tip on the last point and its back behind it', () => {
  const [tipX, tipY, ...back] = arrowHeads(bend, 'end', 10)
  expect([tipX, tipY]).toEqual([100, 40])
  expect([back[1], back[3]]).toEqual([30, 30])
  expect((back[0]! + back[2]!) / 2).toBe(100)
})

test('middle arrows sit about the middle of every leg that is long enough', () => {
  const heads = arrowHeads(bend, 'middle', 10)
  expect(heads).toHaveLength(6)
  expect((heads[0]! + (heads[2]! + heads[4]!) / 2) / 2).toBe(50)
  expect(arrowHeads(bend, 'middle', 9)).toHaveLength(12)
})

test('a run of short legs has one arrow, on the longest', () => {
  const heads = arrowHeads(bend, 'middle', 60)
  expect(heads).toHaveLength(6)
  expect(heads[0]).toBeGreaterThan(heads[2]!)
})

test('a point, or a leg of no length, has no arrow', () => {
  expect(arrowHeads(Float64Array.of(1, 2), 'end', 5)).toHaveLength(0)
  expect(arrowHeads(Float64Array.of(1, 2, 1, 2), 'end', 5)).toHaveLength(0)
})
