import { expect, test } from 'vitest'
import { emptyPlaces } from '../../src/layout/takenOut'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { putBackNow, takeOutNow, towerPlaceWords } from '../../src/sidebar/towerActions'
import { createPlanner, type Planner } from '../../src/store/planner'
import { bay } from '../support/bay'

const oneRow = () => createPlanner(bay('40 x 96 ft').row('N1', [100, 300], { racks: 2 }).layout())

const rowOf = ({ store }: Planner): RackRow => {
  const [part] = store.getState().layout.parts
  if (part?.kind !== 'rack-row') throw new RangeError('the bay has no row')
  return part
}

const labels = ({ store }: Planner) => store.getState().history.done.map(({ label }) => label)

const towersOf = ({ store }: Planner) =>
  store.getState().evaluation.bay.builtOf.get('rack-row-1')!.rack!.towers

test('a tower goes out and comes back, each an entry of its own, and the count follows', () => {
  const planner = oneRow()
  expect(takeOutNow(planner, rowOf(planner), '5', ' 2 ')).toBeUndefined()
  expect(emptyPlaces(rowOf(planner)).map(towerPlaceWords)).toEqual(['station 5, line 2'])
  expect(towersOf(planner)).toBe(63)
  putBackNow(planner, rowOf(planner), { station: 5, line: 2 })
  expect(towersOf(planner)).toBe(64)
  expect(labels(planner)).toEqual(['Take out a tower of N1', 'Put back a tower of N1'])
})

test('one step back hangs a tower again', () => {
  const planner = oneRow()
  takeOutNow(planner, rowOf(planner), '16', '4')
  planner.undo()
  expect(towersOf(planner)).toBe(64)
})

test.each([
  ['17', '1', 'There is no station 17: the last station of this row is 16.'],
  ['1', '5', 'There is no line 5: the last line of this row is 4.'],
  ['two', '1', '“two” is not a whole number.'],
  ['1', '1.5', '“1.5” is not a whole number.'],
  ['3', '3', 'The tower at station 3, line 3 is out already.'],
])('station %s, line %s is refused with a sentence and leaves no entry', (station, line, sentence) => {
  const planner = oneRow()
  takeOutNow(planner, rowOf(planner), '3', '3')
  const before = planner.store.getState().layout
  expect(takeOutNow(planner, rowOf(planner), station, line)).toBe(sentence)
  expect(planner.store.getState().layout).toBe(before)
  expect(labels(planner)).toHaveLength(1)
})
