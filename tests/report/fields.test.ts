import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { clean } from '../../src/model/table'
import { reportOf, tableNames, tablesOf } from '../../src/report/report'
import { scenarios } from '../support/scenarios'

const tables = tablesOf(reportOf(evaluate(scenarios['lintel-lane-lean-to']!()), 'metric'))
const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')

test('DEVELOPERS.md lists every table with every field, in their order', () => {
  const listed = [...guide.matchAll(/^- `(\w+)`: [^\n]*\n {2}((?:`\w+`(?:, )?)+)/gm)].map(
    ([, id, fields]) => [id, fields!.replaceAll('`', '').split(', ')],
  )
  expect(listed).toEqual(tables.map(({ id, columns }) => [id, columns.map(({ key }) => key)]))
})

test('a field in a unit ends in it, and no two of a table share a name', () => {
  const endings: Readonly<Record<string, RegExp>> = {
    mm: /Mm$/,
    'mm/m': /MmPerM$/,
    L: /L$/,
    'L/h': /Lph$/,
    'm/s': /MS$/,
    W: /W$/,
    cents: /^cents$|Cents$/,
    share: /Share$/,
    N: /N$/,
    'N·mm': /Nmm$/,
    MPa: /Mpa$/,
    min: /^minutes/,
    h: /^hours$/,
  }
  for (const { columns } of tables) {
    expect(new Set(columns.map(({ key }) => key)).size).toBe(columns.length)
    for (const { key, unit } of columns) expect(key).toMatch(endings[unit] ?? /^[a-z]/)
  }
})

test('tables go by the names that the help lists', () => {
  expect(tables.map(({ id }) => id)).toEqual(tableNames)
})

test('rows of a table have keys of their own', () => {
  for (const { rows } of tables) expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length)
})

test('noise of sums is no number: a millionth is the last digit', () => {
  expect([clean(0.1 + 0.2), clean(-1e-9), clean(3352.7999999999997)]).toEqual([0.3, 0, 3352.8])
})
