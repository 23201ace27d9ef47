import { expect, test } from 'vitest'
import { DRAWER_SHARE, heldShare, shareAt, shareByKey } from '../../../src/app/drawer/drawerShare'

test('the drawer never takes all of the window, nor so little that nothing shows', () => {
  expect(heldShare(0.5)).toBe(0.5)
  expect(heldShare(0.01)).toBe(DRAWER_SHARE.least)
  expect(heldShare(2)).toBe(DRAWER_SHARE.most)
})

test('its edge follows the pointer: 300 px above the foot of an 800 px window is 3/8 of it', () => {
  expect(shareAt(500, 800)).toBeCloseTo(0.375)
  expect(shareAt(-40, 800)).toBe(DRAWER_SHARE.most)
})

test('keys make it taller, shorter, as tall and as short as it goes', () => {
  expect(shareByKey('ArrowUp', 0.4)).toBeGreaterThan(0.4)
  expect(shareByKey('ArrowDown', 0.4)).toBeLessThan(0.4)
  expect(shareByKey('End', 0.4)).toBe(DRAWER_SHARE.most)
  expect(shareByKey('Home', 0.4)).toBe(DRAWER_SHARE.least)
  expect(shareByKey('ArrowUp', DRAWER_SHARE.most)).toBe(DRAWER_SHARE.most)
  expect(shareByKey('Enter', 0.4)).toBeUndefined()
})
