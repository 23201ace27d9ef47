import { describe, expect, test } from 'vitest'
import { emptyPlaces, takeOutFault, withTowerToggled } from '../../src/layout/takenOut'
import { row } from '../support/rackRows'

/** 16 stations of 4 lines. */
const two = row({ racks: 2 })

describe('the empty places of a row', () => {
  test('are those taken out, station by station', () => {
    const places = [
      { station: 9, line: 1 },
      { station: 5, line: 2 },
      { station: 16, line: 4 },
    ]
    const emptied = places.reduce((now, { station, line }) => withTowerToggled(now, station, line), two)
    expect(emptyPlaces(emptied)).toEqual([places[1], places[0], places[2]])
  })

  test('are none that the row does not have', () => {
    // Of 64 places, counted from 0.
    expect(emptyPlaces({ ...two, takenOut: [63, 64, 1199] })).toEqual([{ station: 16, line: 4 }])
  })
})

describe('taking a tower out', () => {
  test.each([
    [1, 1],
    [16, 4],
  ])('is allowed at station %d, line %d', (station, line) => {
    expect(takeOutFault(two, { station, line })).toBeUndefined()
  })

  test.each([
    [17, 1, 'there is no station 17: the last station of this row is 16'],
    [0, 1, 'there is no station 0: the last station of this row is 16'],
    [1, 5, 'there is no line 5: the last line of this row is 4'],
    [1.5, 1, 'there is no station 1.5: the last station of this row is 16'],
  ])('is refused at station %d, line %d', (station, line, fault) => {
    expect(takeOutFault(two, { station, line })).toBe(fault)
  })

  test('is refused where it is out already', () => {
    const emptied = withTowerToggled(two, 5, 2)
    expect(takeOutFault(emptied, { station: 5, line: 2 })).toBe(
      'the tower at station 5, line 2 is out already',
    )
    expect(takeOutFault(emptied, { station: 2, line: 5 })).toMatch(/no line 5/)
  })
})
