import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bySize } from '../../src/units/bySize'

test('like things stand together, the smaller before the bigger', () => {
  const names = [
    'Shim, 1 in',
    'Shim, 1/16 in',
    'Elbow, 2 in poly pipe',
    'Shim, 1/2 in',
    'Elbow, 1-1/2 in poly pipe',
    '1 in poly pipe',
    '1/8 in microtube',
    '3/4 in poly pipe',
    '2x6 lumber, 8 ft',
    '2x4 lumber, 12 ft',
    '2x4 lumber, 8.5 ft',
    'Tee, 1 in poly pipe to 3/4 in',
    'Tee, 1 in poly pipe to 1/2 in',
  ]
  expect(names.toSorted(bySize)).toEqual([
    '1/8 in microtube',
    '3/4 in poly pipe',
    '1 in poly pipe',
    'Elbow, 1-1/2 in poly pipe',
    'Elbow, 2 in poly pipe',
    'Shim, 1/16 in',
    'Shim, 1/2 in',
    'Shim, 1 in',
    'Tee, 1 in poly pipe to 1/2 in',
    'Tee, 1 in poly pipe to 3/4 in',
    '2x4 lumber, 8.5 ft',
    '2x4 lumber, 12 ft',
    '2x6 lumber, 8 ft',
  ])
})

test('is an order: the same both ways round', () => {
  const name = fc.stringMatching(/^(?:[A-B]{0,2}[0-3]?(?:\/[1-4])?[ -]?){1,3}$/)
  fc.assert(
    fc.property(name, name, (a, b) => {
      expect(Math.sign(bySize(a, b)) + Math.sign(bySize(b, a))).toBe(0)
    }),
    { seed: 4322 },
  )
})
