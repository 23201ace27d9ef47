import { expect, test } from 'vitest'
import { shelf } from '../../src/parts/index'
import { shelfItemOf, shelfKey } from '../../src/store/inHand'

test('every shelf item is found by its own name, and only by that', () => {
  const names = shelf.map(shelfKey)
  expect(new Set(names).size).toBe(shelf.length)
  expect(names.map(shelfItemOf)).toEqual(shelf)
  expect(shelfItemOf('rack-row/none')).toBeUndefined()
  expect(shelfItemOf(undefined)).toBeUndefined()
})
