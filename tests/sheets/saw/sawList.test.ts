import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Judged } from '../../../src/evaluate/evaluation'
import type { Layout } from '../../../src/layout/schema'
import type { Table } from '../../../src/model/table'
import { tablesIn } from '../../../src/sheets/piece'
import { sawList } from '../../../src/sheets/saw/sawList'
import { arbitraryBay } from '../../support/arbitraryBay'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const tablesOf = (now: Judged): readonly Table[] =>
  tablesIn(sawList.pieces({ now, issued: undefined }, options))

const valuesIn = ({ columns, rows }: Table, key: string): readonly (string | number | null)[] =>
  rows.map(({ cells }) => cells[columns.findIndex((column) => column.key === key)]!.value)

const sum = (values: readonly unknown[]): number =>
  values.reduce<number>((all, value) => all + Number(value), 0)

/** Sticks and tubes as they are drawn, by what they are made of; of runs with joints, how many pieces is not said here. */
const drawnOf = ({ bay }: Judged): ReadonlyMap<string, number> => {
  const drawn = new Map<string, number>()
  for (const { sticks } of bay.built)
    for (const { stock } of sticks) drawn.set(stock, (drawn.get(stock) ?? 0) + 1)
  return drawn
}

const holds = (layout: Layout): void => {
  const now = evaluate(layout)
  const tables = tablesOf(now)
  const stops = (stock: string) => tables.find(({ id }) => id === `stops-${stock}`)!
  const boards = (stock: string) => tables.find(({ id }) => id === `boards-${stock}`)
  for (const [stock, count] of drawnOf(now)) expect(sum(valuesIn(stops(stock), 'wanted')), stock).toBe(count)
  for (const { stock, bought, leftovers } of now.cuts) {
    const table = boards(stock)
    const fetched = [...bought, ...leftovers].reduce((all, { count }) => all + count, 0)
    expect(table ? sum(valuesIn(table, 'count')) : 0, stock).toBe(fetched)
  }
}

describe.each(Object.keys(scenarios))('the saw list of %s', (name) => {
  test('has every stick that is drawn, and as many boards as are bought or on hand', () => {
    holds(scenarios[name]!())
  })
})

test('so it is with any bay', () => {
  fc.assert(fc.property(arbitraryBay, holds), { seed: 20_271_126, numRuns: 12 })
})

describe('the saw list of the sample', () => {
  const tables = tablesOf(evaluate(scenarios['kestrel-bend-house-2']!()))
  const stops = tables.find(({ id }) => id === 'stops-lumber-2x4')!
  const row = (text: string) =>
    stops.rows.map(({ cells }) => cells.map((cell) => cell.text)).find(([stop]) => stop === text)!

  test('halves the board for a riser: 71-15/16 in, not 72', () => {
    // Worked example of the trade notes, hand arithmetic: (144 - 1/8) / 2 = 71.9375.
    expect(row('71-15/16"')).toEqual([
      '71-15/16"',
      '132',
      '132',
      expect.stringMatching(/RS-p .*RS-s /),
      expect.stringMatching(/^Halve: mark the middle of a 12 ft board, cut on the mark; each half at least/),
    ])
  })

  test('sets one stop for cross-pieces, braces and ties', () => {
    expect(row('43-1/2"').slice(0, 2)).toEqual(['43-1/2"', '177'])
    expect(row('43-1/2"')[3]).toMatch(/BX .*SB .*TT .*XB /)
  })
})

test('an empty bay has no saw list', () => {
  const bare = { ...scenarios['lintel-lane-lean-to']!(), parts: [] }
  expect(sawList.pieces({ now: evaluate(bare), issued: undefined }, options)).toEqual([])
})
