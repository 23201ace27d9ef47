import { parse } from 'csv-parse/sync'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { unguardCell } from '../../src/model/csv'
import { blank, counted, said, type Table } from '../../src/model/table'
import { reportOf, tablesOf } from '../../src/report/report'
import { sheets } from '../../src/sheets'
import { chosenOptions } from '../../src/sheets/chosenOptions'
import { tablesIn } from '../../src/sheets/piece'
import { tableCsv } from '../../src/sheets/sheetCsv'
import { tableFiles } from '../../src/sheets/sheetFiles'
import { scenarios } from '../support/scenarios'

/** The independent reader: lines of cells, the byte order mark taken off. */
const read = (text: string): string[][] => parse(text, { bom: true })

const pegs: Table = {
  id: 'pegs',
  title: 'Pegs',
  columns: [
    { key: 'peg', title: 'Peg', unit: 'text' },
    { key: 'cutMm', title: 'Cut from peg top', unit: 'mm', isMain: true },
    { key: 'priceCents', title: 'Price', unit: 'cents' },
  ],
  rows: [
    { key: '1', cells: [said('1, "low" end'), counted(463.55, '18-1/4"'), blank('—')] },
    { key: '2', cells: [said('=cmd'), counted(-12.7, '-1/2"'), counted(1250, '$12.50')] },
    { key: 'sum', cells: [said('All'), blank(), counted(1250, '$12.50')], isSum: true },
  ],
}

test('a column of numbers stands as the crew reads it and as the bare number with its unit in the head', () => {
  expect(read(tableCsv(pegs))).toEqual([
    ['Peg', 'Cut from peg top', 'Cut from peg top (mm)', 'Price', 'Price (cents)'],
    ['1, "low" end', '18-1/4"', '463.55', '—', ''],
    ["'=cmd", `'-1/2"`, '-12.7', '$12.50', '1250'],
    ['All', '', '', '$12.50', '1250'],
  ])
})

test('two tables of one name have a file each', () => {
  expect(tableFiles('PT-pegs-issue-3', [pegs, pegs]).map(({ name }) => name)).toEqual([
    'PT-pegs-issue-3-pegs.csv',
    'PT-pegs-issue-3-pegs-2.csv',
  ])
})

/** What an independent reader makes of a table is what is in it, row for row and number for number. */
const expectSame = (table: Table): void => {
  const [heads = [], ...lines] = read(tableCsv(table))
  expect(lines.length).toBe(table.rows.length)
  table.rows.forEach(({ cells }, row) => {
    let at = 0
    table.columns.forEach(({ unit, title }, column) => {
      expect(heads[at]).toBe(title)
      const { text, value } = cells[column]!
      expect(unguardCell(lines[row]![at]!)).toBe(text)
      at += 1
      if (unit === 'text') return
      const bare = lines[row]![at]!
      // Numbers are written to a millionth, so one read back is within half of it.
      if (typeof value === 'number') expect(Math.abs(Number(bare) - value)).toBeLessThanOrEqual(5.1e-7)
      else expect(bare).toBe(value ?? '')
      at += 1
    })
    expect(lines[row]!.length).toBe(at)
  })
}

describe.each(Object.keys(scenarios))('of %s an independent reader has', (name) => {
  const layout = scenarios[name]!()
  const now = evaluate(layout)

  test('every table of every sheet', () => {
    for (const sheet of sheets) {
      const options = chosenOptions(sheet, layout, { dateText: '2027-05-01', issue: '1' })
      for (const table of tablesIn(sheet.pieces({ now, issued: undefined }, options))) expectSame(table)
    }
  })

  test('every table of the report', () => {
    for (const table of tablesOf(reportOf(now, 'metric')))
      // Each tower of an acre is written like those of a smaller bay.
      expectSame(table.rows.length > 2000 ? { ...table, rows: table.rows.slice(0, 2000) } : table)
  })
})
