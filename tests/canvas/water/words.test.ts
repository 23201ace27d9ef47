import { describe, expect, test } from 'vitest'
import { flowChange } from '../../../src/canvas/water/flowChange'
import { velocityIn } from '../../../src/canvas/water/legs'
import { extremeWords, towerNotes } from '../../../src/canvas/water/under'
import { gpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { toFeetPerSecond } from '../../../src/units/velocity'
import { writerFor } from '../../../src/units/writer'
import { twoRows, withWater, type Wet } from '../../support/wetBay'

const A = 'rack-row-1'
const B = 'rack-row-2'
const writer = writerFor('feet-inches')
const bay = twoRows()

const row = (part: string, state: Wet['state'], atStart: number, aStation = 0.01): Wet => ({
  part,
  state,
  flow: (station) => atStart - station * aStation,
})

describe('what a move does to the water', () => {
  const before = withWater(bay, [row(A, 'Even', 4), row(B, 'Even', 4)])

  test('is said where a row changes its state, in one line', () => {
    const after = withWater(bay, [row(A, 'Drifting', 4, 0.08), row(B, 'Even', 4)])
    // By hand: 3.92 at station 1 and 3.36 at station 8, so (3.92 - 3.36) / 3.92 = 14.3 %.
    expect(flowChange(before, after, [A], writer)).toEqual(['A from Even to Drifting, spread 14.3 %'])
  })

  test('names the row that is moved before others, and how many more', () => {
    const after = withWater(bay, [row(A, 'Drifting', 4, 0.08)], { [B]: 'no-main' })
    expect(flowChange(before, after, [B], writer)).toEqual([
      'B from Even to no water: no main is in reach; 1 more row changes',
    ])
  })

  test('is not said where all states stay', () => {
    expect(
      flowChange(before, withWater(bay, [row(A, 'Even', 3.9), row(B, 'Even', 4.1)]), [A], writer),
    ).toEqual([])
  })
})

describe('the tower under the pointer', () => {
  const wet = withWater(bay, [row(A, 'Even', 4.7)], { [B]: 'shut' })
  const placeOf = (part: string, station: number, line: number) =>
    wet.bay.builtOf
      .get(part)!
      .mouths.find(
        (mouth) => mouth.role === 'tower-head' && mouth.station === station && mouth.line === line,
      )!.at

  test('is named by row, line and station with its flow', () => {
    const notes = towerNotes(wet, A, placeOf(A, 5, 2), writer)
    expect(notes.slice(0, 2)).toEqual([
      'A, line 2, station 5',
      writer.flow(wet.bay.water.rows.get(A)!.tubeLph[17]!),
    ])
  })

  // The fastest tube, at station 1, is said to run at Reynolds 1900; station 8 takes 4.62 of its 4.69 gph: 1872.
  test('says where its water is neither smooth nor churned', () => {
    expect(towerNotes(wet, A, placeOf(A, 8, 1), writer)).toContain(
      'Reynolds 1872: between smooth and churned',
    )
  })

  test('says why it has no water', () => {
    expect(towerNotes(wet, B, placeOf(B, 1, 1), writer)).toEqual([
      'B, line 1, station 1',
      'no water: it is behind a shut valve',
    ])
  })

  test('is none between the rows', () => {
    expect(towerNotes(wet, A, { x: 0, y: 0 }, writer)).toEqual([])
    expect(towerNotes(wet, undefined, placeOf(A, 1, 1), writer)).toEqual([])
  })

  test('the least fed is named whole', () => {
    expect(extremeWords('least', wet, wet.bay.water.bay!, writer)).toBe(
      'least: A, line 1, station 8: 4.6 gph',
    )
  })
})

// Worked table of the trade notes, hand arithmetic: in a 1.049 in bore 5 ft/s is 13.5 gpm, in 2.067 in 52.3 gpm.
test.each([
  [1.049, 13.5],
  [2.067, 52.3],
])('%f in bore carries its design flow at 5 ft/s', (bore, flow) => {
  expect(toFeetPerSecond(velocityIn(gpm(flow), inches(bore)))).toBeCloseTo(5, 1)
})
