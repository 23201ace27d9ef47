import { describe, expect, test } from 'vitest'
import { clampsOf, reducerKey, sizedFittings } from '../../src/catalogue/barbed'
import { fittingOf } from '../../src/catalogue/fittings'

/*
 * Barbed ends: coupling 2, elbow 2, tee 3, adapter 1, plug 1: worked example of the trade notes. Two clamps on an end of
 * 1-1/4 in and over, and on any that is buried: a pipe maker's guide to joining polyethylene pipe; one on small pipe above
 * ground: common practice, no source.
 */
test.each([
  ['coupling', 'pe-3/4', 2],
  ['elbow', 'pe-1', 2],
  ['tee', 'drip-1', 3],
  ['adapter', 'pe-1/2', 1],
  ['lateral-flush-cap', 'pe-3/4', 1],
  ['lateral-plug', 'drip-1/2', 1],
  ['ball-valve', 'pe-1', 0],
  ['elbow', 'pe-1-1/4', 4],
  ['tee', 'pe-2', 6],
])('a %s of %s takes %i clamps', (noun, pipe, clamps) => {
  expect(clampsOf(noun, pipe)).toBe(clamps)
})

test('what is buried takes two an end whatever its size', () => {
  expect(clampsOf('tee', 'pe-3/4', true)).toBe(6)
})

describe('between two pipes', () => {
  test('of one family a reducing coupling steps down, whichever is named first', () => {
    expect(reducerKey('pe-1', 'pe-3/4')).toBe('reducing-coupling-pe-1-to-3/4')
    expect(reducerKey('pe-3/4', 'pe-1')).toBe('reducing-coupling-pe-1-to-3/4')
    expect(fittingOf('reducing-coupling-pe-1-1/4-to-3/4').title).toBe(
      'Reducing coupling, 1-1/4 in poly pipe to 3/4 in',
    )
  })

  test('of two families there is none', () => {
    expect(reducerKey('pe-1', 'drip-1')).toBe('family-adapter')
  })

  test('of one stock nothing is needed', () => {
    expect(reducerKey('pe-1', 'pe-1')).toBeUndefined()
  })
})

test('every size of every family has each fitting, and the families share none', () => {
  const keys = sizedFittings.map(({ key }) => key)
  // 15 nouns for 6 sizes of poly pipe and 3 of drip tubing, 15 and 3 pairs of sizes, what joins the families, and saddles:
  // on a 1 in main for 2 sizes of poly pipe and 2 of drip tubing under it, on 1-1/4 in for 3 and 3, on 1-1/2 in for 4 and
  // 3, on 2 in for 5 and 3. A saddle alone has a barb of the other family.
  expect(keys).toHaveLength(15 * 9 + 15 + 3 + 1 + (4 + 6 + 7 + 8))
  const shared = keys.filter((key) => /pe-[0-9]/.test(key) && key.includes('drip'))
  expect(shared.filter((key) => !key.startsWith('saddle-'))).toEqual([])
})
