import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { balance } from '../../../src/evaluate/water/balance'
import { emptyBay } from '../../../src/layout/empty'
import { tablesIn } from '../../../src/sheets/piece'
import { gridMm } from '../../../src/sheets/startUp/flowGrid'
import { gridOf, setWater } from '../../../src/sheets/startUp/flowTest'
import { LEAST_SAMPLE, sampledOf } from '../../../src/sheets/startUp/sampled'
import { startUpSheet } from '../../../src/sheets/startUp/startUpSheet'
import { sheetWords } from '../../../src/sheets/sheetWords'
import { caughtMl, gph } from '../../../src/units/flow'
import { feet } from '../../../src/units/length'
import { atSaw } from '../../../src/units/precision'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const now = evaluate(scenarios['kestrel-bend-house-2']!())
const n1 = now.bay.builtOf.get(now.layout.parts.find(({ name }) => name === 'N1')!.id)!
const water = setWater(now, balance(now.bay, 'target'))
const grid = gridOf(n1, water, sheetWords(now, 'feet-inches', atSaw))

test('a cup catches 250 mL of 4 gph in 59 s', () => {
  // Worked example of the trade notes, hand arithmetic: 4 gal x 3785.4 mL over 3600 s = 4.206 mL/s; 250 over 4.206 = 59.4 s.
  expect(caughtMl(gph(4), 59.44)).toBeCloseTo(250, 0)
})

describe('the sample', () => {
  const tubes = n1.feed!.tubes

  test('is eighteen towers of a row at least (University of Florida IFAS Extension, AE193), first and last station among them', () => {
    const sampled = [...sampledOf(tubes)].map((i) => tubes[i]!)
    expect(sampled).toHaveLength(LEAST_SAMPLE)
    expect(Math.min(...sampled.map(({ station }) => station))).toBe(1)
    expect(Math.max(...sampled.map(({ station }) => station))).toBe(24)
    // Line after line in turn: 18 over 4 lines leave none with fewer than 4.
    for (const line of [1, 2, 3, 4])
      expect(sampled.filter((tube) => tube.line === line).length).toBeGreaterThanOrEqual(4)
  })

  test('is all towers where a row has fewer', () => {
    expect(sampledOf(tubes.slice(0, 7)).size).toBe(7)
    expect(sampledOf([]).size).toBe(0)
  })
})

describe('the grid of a row', () => {
  test('has a box for every tower, where it hangs', () => {
    expect(grid.lines).toBe(4)
    expect(grid.stations).toEqual(Array.from({ length: 24 }, (_, i) => i + 1))
    expect(new Set(grid.towers.map(({ station, line }) => `${station} ${line}`)).size).toBe(96)
  })

  test('with the trim valves set by their cards, a row catches what is wanted on the whole', () => {
    const mean = grid.towers.reduce((sum, { expectedMl }) => sum + expectedMl!, 0) / grid.towers.length
    expect(mean / caughtMl(now.layout.settings.targetLph, 30)).toBeCloseTo(1, 2)
  })

  test('takes more bands, and so more height, on narrower paper', () => {
    expect(gridMm(grid, 100)).toBeGreaterThan(gridMm(grid, 180))
  })
})

test('a pit is filled mark by mark upwards, and holds more at each', () => {
  const fill = tablesIn(startUpSheet.pieces({ now, issued: undefined }, options)).find(({ id }) =>
    id.startsWith('fill-'),
  )!
  const heights = fill.rows.map(({ cells }) => Number(cells[1]!.value))
  const litres = fill.rows.map(({ cells }) => Number(cells[2]!.value))
  expect(heights).toEqual(heights.toSorted((a, b) => a - b))
  expect(litres).toEqual(litres.toSorted((a, b) => a - b))
})

test('an acre has boxes for its sample alone, and says so', () => {
  const acre = evaluate(scenarios['sallow-flats-one-acre']!())
  const pieces = startUpSheet.pieces({ now: acre, issued: undefined }, options)
  const figures = pieces.filter(({ as }) => as === 'figure')
  const rows = acre.bay.built.filter(({ feed }) => feed !== undefined)
  expect(figures.length).toBeGreaterThanOrEqual(rows.length)
  const all = rows.reduce(
    (sum, built) =>
      sum + gridMm(gridOf(built, acre.bay.water, sheetWords(acre, 'feet-inches', atSaw)), 160) + 12,
    0,
  )
  const said = pieces.some((piece) => piece.as === 'words' && piece.text.startsWith('Only the 18 towers'))
  expect(said).toBe(all / 215 > 40)
})

test('an empty bay has nothing to start up', () => {
  const empty = evaluate(emptyBay(feet(30), feet(96), 'Trial bay'))
  expect(startUpSheet.pieces({ now: empty, issued: undefined }, options)).toEqual([])
})
