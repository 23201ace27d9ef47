import { describe, expect, test } from 'vitest'
import type { MainWater, PumpWater } from '../../src/model/water'
import { partRows } from '../../src/sidebar/partRows'
import { waterReadouts } from '../../src/sidebar/waterReadouts'
import { gpm } from '../../src/units/flow'
import { feet, inches } from '../../src/units/length'
import { feetPerSecond } from '../../src/units/velocity'
import { writerFor } from '../../src/units/writer'
import { twoRows, withWater } from '../support/wetBay'

const A = 'rack-row-1'
const B = 'rack-row-2'
const writer = writerFor('feet-inches')

const main: MainWater = {
  part: 'main-1',
  points: [
    { at: { x: 0, y: 0, z: 0 }, alongMm: 0, headMm: 2000, meets: undefined },
    { at: { x: 3000, y: 0, z: 0 }, alongMm: 3000, headMm: 2000 - inches(3), meets: A },
  ],
  legs: [{ flowLph: gpm(32), velocityMS: feetPerSecond(3.1) }],
  fastestMS: feetPerSecond(3.1),
}

const pump = (isLifting: boolean): PumpWater => ({
  part: 'sump-1',
  flowLph: isLifting ? gpm(32) : 0,
  headMm: feet(11),
  staticMm: feet(7.5),
  bypassLph: 0,
  watts: 66,
  isLifting,
})

/** Row A from 4.0 gph at its start down by 0.1 a station to 3.3; B joined to nothing. */
const wet = withWater(
  twoRows(),
  [{ part: A, state: 'Drifting', flow: (station) => 4.1 - station / 10 }],
  { [B]: 'no-main' },
  {
    mains: new Map([['main-1', main]]),
    pumps: new Map([
      ['sump-1', pump(true)],
      ['sump-2', pump(false)],
    ]),
    boxes: new Map([['head-box-1', { part: 'head-box-1', inLph: gpm(20), outLph: gpm(16) }]]),
  },
)

const linesOf = (part: string) =>
  waterReadouts(wet.bay.water, part, writer).lines.map(({ name, value }) => `${name}: ${value}`)

describe('what the inspector says of water', () => {
  // By hand: mean of 3.3 to 4.0 in tenths is 3.65; (4.0 - 3.3) / 4.0 = 17.5 %; 32 towers of 3.65 gph are 1.947 gpm; 190.5 mm are 7.5 in.
  test('of a row is its state, its evenness, and its least tower by name', () => {
    const { state } = waterReadouts(wet.bay.water, A, writer)
    expect(state).toEqual({ word: 'Drifting', rank: 1 })
    expect(linesOf(A)).toEqual(
      expect.arrayContaining([
        'Spread, (most − least) / most: 17.5 %',
        'Least tower: 3.3 gph, line 1, station 8',
        'Most tower: 4.0 gph, line 4, station 1',
        'Low quarter over mean: 96.2 %',
        'Head at the entry: 7-1/2" of water',
        'The whole row takes: 1.9 gpm',
      ]),
    )
  })

  test('of a row without water is why', () => {
    expect(waterReadouts(wet.bay.water, B, writer)).toEqual({
      why: 'No water: no main is in reach.',
      lines: [],
    })
  })

  test('of a main is its flow, its fastest stretch and the head that it costs', () => {
    expect(linesOf('main-1')).toEqual([
      'Flow at its start: 32.0 gpm',
      'Fastest stretch: 3.1 ft/s',
      'Head lost along it: 3"',
    ])
  })

  test('of a pit is what its pump gives, and that it can’t lift where it can’t', () => {
    expect(linesOf('sump-1')).toEqual([
      'Pump gives: 32.0 gpm',
      'against: 11.0 ft',
      'of it to lift the water: 7.5 ft',
      'Power in the water: 66 W',
    ])
    expect(waterReadouts(wet.bay.water, 'sump-1', writer).why).toBeUndefined()
    expect(waterReadouts(wet.bay.water, 'sump-2', writer).why).toMatch(/can’t lift/)
  })

  test('of a head box is what comes in and what goes out', () => {
    expect(linesOf('head-box-1')).toEqual(['Water in: 20.0 gpm', 'Water out to the rows: 16.0 gpm'])
  })

  test('of anything else is nothing', () => {
    expect(waterReadouts(wet.bay.water, 'obstacle-1', writer)).toEqual({ lines: [] })
  })
})

test('the parts list has the flow of every row beside its place', () => {
  const rows = partRows(wet, writer).flatMap((group) => group.rows)
  expect(rows.find(({ id }) => id === A)?.water).toEqual({ word: 'Drifting', rank: 1, words: '17.5 %' })
  expect(rows.find(({ id }) => id === B)?.water).toEqual({ word: 'Starved', rank: 2, words: 'no water' })
})
