import { expect, test } from 'vitest'
import { drainState, fallState, worstDrainState } from '../../src/model/drainState'
import { inchesPerFoot } from '../../src/units/slope'

/** Worked limits of the trade notes: Falls from 1/8 in a foot, Flat from 1/16, Backs up under that, reverse, or over half full. */
const eighth = inchesPerFoot(1 / 8)

test.each([
  [1 / 4, 'Falls'],
  [1 / 8, 'Falls'],
  [15 / 128, 'Flat'],
  [1 / 16, 'Flat'],
  [1 / 17, 'Backs up'],
  [0, 'Backs up'],
  [-1 / 8, 'Backs up'],
])('a fall of %f in a foot where 1/8 is wanted: %s', (fall, state) => {
  expect(fallState(inchesPerFoot(fall), eighth)).toBe(state)
})

test('a line that may lie flat still does not fall', () => {
  expect(fallState(0, 0)).toBe('Backs up')
})

test('over half full it backs up however it falls; half full it does not', () => {
  expect(drainState(eighth, eighth, 0.5)).toBe('Falls')
  expect(drainState(eighth, eighth, 0.501)).toBe('Backs up')
  expect(drainState(eighth / 2, eighth, 0.3)).toBe('Flat')
})

test('the worst of several is told', () => {
  expect(worstDrainState([])).toBe('Falls')
  expect(worstDrainState(['Falls', 'Flat'])).toBe('Flat')
  expect(worstDrainState(['Falls', 'Backs up', 'Flat'])).toBe('Backs up')
})
