import { describe, expect, test } from 'vitest'
import { highestEndsMm, shownMain, shownPump, shownRow, worstRow } from '../../../src/app/drawer/bayWater'
import { briefWords, rowStates } from '../../../src/app/drawer/briefWords'
import type { MainWater } from '../../../src/model/water'
import { gpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { handWater } from './handRow'

const water = handWater([
  { name: 'N1', state: 'Even', spread: 0.05, ends: 76 },
  { name: 'N2', state: 'Drifting', spread: 0.19, ends: 78 },
  { name: 'N3', state: 'Starved', spread: 0.12, ends: 75 },
])

describe('the row that a view shows', () => {
  test('is the worst by its state, then by how far its towers lie apart', () => {
    expect(worstRow(water)).toBe('N3')
    expect(
      worstRow(
        handWater([
          { name: 'N1', state: 'Drifting', spread: 0.12 },
          { name: 'N2', state: 'Drifting', spread: 0.17 },
        ]),
      ),
    ).toBe('N2')
    expect(worstRow(handWater([]))).toBeUndefined()
  })

  test('is the selected one before all, and then stays while something slides', () => {
    const fed = ['N1', 'N2', 'N3']
    expect(shownRow(fed, ['pit', 'N2'], 'N1', 'N3')).toBe('N2')
    expect(shownRow(fed, ['pit'], 'N1', 'N3')).toBe('N1')
    expect(shownRow(fed, [], undefined, 'N3')).toBe('N3')
    // None has water: the first can still be looked at, to read why.
    expect(shownRow(fed, [], 'gone', undefined)).toBe('N1')
    expect(shownRow([], ['N1'], 'N1', undefined)).toBeUndefined()
  })
})

test('heads along a main are read over the highest of the tube ends', () => {
  expect(highestEndsMm(water)).toBeCloseTo(inches(78))
  expect(highestEndsMm(handWater([]))).toBeUndefined()
})

describe('the main and the pump that a view shows', () => {
  const main = (part: string, flow: number, meets?: string): MainWater => ({
    part,
    points: [{ at: { x: 0, y: 0, z: 0 }, alongMm: 0, headMm: 0, meets }],
    legs: [{ flowLph: gpm(flow), velocityMS: 0.5 }],
    fastestMS: 0.5,
  })
  const pump = (part: string) => ({
    part,
    flowLph: 0,
    headMm: 0,
    staticMm: 0,
    bypassLph: 0,
    watts: 0,
    isLifting: true,
  })
  const mains = handWater([], {
    mains: new Map([
      ['M1', main('M1', 10, 'P1')],
      ['M2', main('M2', -30, 'P2')],
    ]),
    pumps: new Map([
      ['P1', pump('P1')],
      ['P2', pump('P2')],
    ]),
  })

  test('is the selected one, else the one that carries most, whichever way', () => {
    expect(shownMain(mains, ['M1'])?.part).toBe('M1')
    expect(shownMain(mains, [])?.part).toBe('M2')
    expect(shownMain(handWater([]), [])).toBeUndefined()
  })

  test('is the pump that feeds that main, unless a pit is selected', () => {
    expect(shownPump(mains, [], mains.mains.get('M2'))).toBe('P2')
    expect(shownPump(mains, ['P1'], mains.mains.get('M2'))).toBe('P1')
    expect(shownPump(mains, [], undefined)).toBe('P1')
    expect(shownPump(handWater([]), [], undefined)).toBeUndefined()
  })
})

describe('the bay in one line', () => {
  const say = (of: typeof water, fed = ['N1', 'N2', 'N3']) =>
    briefWords(of, fed, (part) => (part === 'row' ? 'N3' : part), writerFor('feet-inches'))

  test('says what runs, least and most, where, and how many rows are in which state', () => {
    expect(say({ ...water, totalLph: gpm(9.6) })).toBe(
      '9.6 gpm · towers 3.4 gph to 4.4 gph · least at N3, line 2, station 24',
    )
    expect(rowStates(water)).toEqual(['Starved', 'Drifting', 'Even'].map((state) => ({ state, rows: 1 })))
  })

  test('says of rows without water, of a bay without any, and of one that could not be solved', () => {
    expect(say({ ...water, dry: new Map([['N4', 'no-main']]) })).toContain('1 row without water')
    expect(say({ ...water, bay: undefined })).toBe('No tower has water yet')
    expect(say({ ...water, fault: 'A curve rises.' })).toBe('A curve rises.')
    expect(say(water, [])).toBeUndefined()
  })
})
