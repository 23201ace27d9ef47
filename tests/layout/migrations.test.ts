import { expect, test } from 'vitest'
import { broughtUp, isKnownVersion, versionAfter, type Migration } from '../../src/layout/migrations'
import { VERSION } from '../../src/layout/schema'

const renamed: Migration = ({ name, ...rest }) => ({ ...rest, title: name })
const measured: Migration = (document) => ({ ...document, units: 'mm' })

test('there is a step for every version before this one', () => {
  expect(versionAfter()).toBe(VERSION)
})

test.each([
  [1, { version: 3, title: 'Old', units: 'mm' }],
  [2, { version: 3, name: 'Old', units: 'mm' }],
  [3, { version: 3, name: 'Old' }],
])('from version %i each later step is taken once, in order', (version, result) => {
  expect(broughtUp({ version, name: 'Old' }, version, [renamed, measured])).toEqual(result)
})

test.each([
  [1, true],
  [VERSION, true],
  [VERSION + 1, false],
  [0, false],
  [1.5, false],
  ['1', false],
  [undefined, false],
])('version %j is known: %j', (version, isKnown) => {
  expect(isKnownVersion(version)).toBe(isKnown)
})
