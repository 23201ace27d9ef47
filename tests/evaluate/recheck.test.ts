import { expect, test } from 'vitest'
import { found, lengthOf, stressOf } from '../../src/checks/found'
import { brokenBy } from '../../src/evaluate/recheck'
import type { Finding, Quantity } from '../../src/model/finding'
import { ksi } from '../../src/units/force'
import { inches } from '../../src/units/length'

const finding = (measured: Quantity, more: Partial<Finding> = {}): Finding =>
  found({
    rule: 'foot-shim-max',
    subject: 'fit',
    state: 'Tight',
    parts: ['row'],
    at: { x: 0, y: 0 },
    measured,
    limit: lengthOf(inches(1.5)),
    ...more,
  })

const was = finding(lengthOf(inches(1 + 11 / 16)))
const breaks = (now: Finding): boolean => brokenBy([now], [was]).length > 0

test('what was not there is broken, what is gone is not', () => {
  expect(brokenBy([was], [])).toEqual([was])
  expect(brokenBy([], [was])).toEqual([])
})

// A crew's tape has sixteenths: 1-11/16 in and a 64th more are the same shims, 1-3/4 in are not.
test('a length is worse where a tape tells it', () => {
  expect(breaks(finding(lengthOf(inches(1 + 11 / 16 + 1 / 64))))).toBe(false)
  expect(breaks(finding(lengthOf(inches(1 + 3 / 4))))).toBe(true)
})

test('a state that is worse is worse whatever the numbers, and one that is better is not', () => {
  expect(breaks(finding(was.measured, { state: 'Clash' }))).toBe(true)
  const shaky = finding(was.measured, { state: 'Clash' })
  expect(brokenBy([finding(lengthOf(inches(4)))], [shaky])).toEqual([])
})

test('a stress is not held against a sag, nor less than the hundredth of it that solving leaves open', () => {
  const limit = stressOf(ksi(18))
  const stress = (value: number) => finding(stressOf(ksi(value)), { limit })
  expect(breaks(stress(40))).toBe(false)
  expect(brokenBy([stress(20.01)], [stress(20)])).toEqual([])
  expect(brokenBy([stress(20.1)], [stress(20)])).toHaveLength(1)
})
