import { expect, test } from 'vitest'
import { markReach } from '../../src/drawing/markReach'

test('the reach of a mark covers all of it', () => {
  const ink = { pen: 'none', wash: 'pit' } as const
  expect(markReach({ as: 'discs', ...ink, discs: Float64Array.of(10, 20, 5, 100, 0, 1) })).toEqual({
    x0: 5,
    y0: -1,
    x1: 101,
    y1: 25,
  })
  expect(markReach({ as: 'boxes', ...ink, boxes: Float64Array.of(0, 1, 2, 3) })).toEqual({
    x0: 0,
    y0: 1,
    x1: 2,
    y1: 3,
  })
})
