import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boxIndexOf } from '../../src/geometry/boxIndex'

const whole = fc.integer({ min: 0, max: 60 })
const box = fc
  .tuple(whole, whole, whole, whole)
  .map(([x, y, width, height]) => ({ x0: x, y0: y, x1: x + width, y1: y + height }))

test('without boxes nothing is found', () => {
  expect(boxIndexOf([]).search({ x0: -9, y0: -9, x1: 9, y1: 9 })).toEqual([])
})

test('finds what looking at every box finds, touching ones included', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 80 }), box, (boxes, window) => {
      const meets = boxes.flatMap((b, i) =>
        b.x0 <= window.x1 && window.x0 <= b.x1 && b.y0 <= window.y1 && window.y0 <= b.y1 ? [i] : [],
      )
      expect(boxIndexOf(boxes).search(window)).toEqual(meets)
    }),
    { seed: 47, numRuns: 200 },
  )
})
