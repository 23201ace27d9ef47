import { expect, test } from 'vitest'
import { shownRack, strengthRank, worstLoaded } from '../../../../src/app/drawer/rack/shownRack'
import type { RowStrength, StrengthState } from '../../../../src/model/strength'

/** A row of which only the state and its worst screen matter here. */
const row = (part: string, state: StrengthState, used: number): [string, RowStrength] => [
  part,
  // A view that chooses a row reads nothing else of it.
  { part, state, screens: [{ used }] } as unknown as RowStrength,
]

test.each([
  [
    'by state first',
    [row('a', 'Within', 0.99), row('b', 'Proof-load', 1.1), row('c', 'Too long', 1.05)],
    'c',
  ],
  ['then by what is used', [row('a', 'Within', 0.5), row('b', 'Within', 0.9)], 'b'],
  ['the first of like rows', [row('a', 'Within', 0.5), row('b', 'Within', 0.5)], 'a'],
  ['none in an empty bay', [], undefined],
])('the worst loaded row: %s', (_name, rows, worst) => {
  expect(worstLoaded(new Map(rows))).toBe(worst)
})

test('a selected row is shown, else the one that was shown, else the worst, else the first', () => {
  const rows = ['a', 'b', 'c']
  expect(shownRack(rows, ['pit', 'b'], 'c', 'a')).toBe('b')
  expect(shownRack(rows, ['pit'], 'c', 'a')).toBe('c')
  expect(shownRack(rows, [], 'gone', 'b')).toBe('b')
  expect(shownRack(rows, [], undefined, undefined)).toBe('a')
  expect(shownRack([], ['a'], 'a', 'a')).toBeUndefined()
})

test('ranks of states are those of every other state word', () => {
  expect((['Within', 'Proof-load', 'Too long'] as const).map(strengthRank)).toEqual([0, 1, 2])
})
