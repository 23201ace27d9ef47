import { describe, expect, test } from 'vitest'
import { readArguments } from '../../src/report/arguments'
import { helpText } from '../../src/report/helpText'

const asked = (...given: string[]) => {
  const parsed = readArguments(given)
  if (!parsed.ok) throw new Error(parsed.sentence)
  return parsed.command
}

describe('what is asked for', () => {
  test('of a file alone is the report as text, in its own units', () => {
    expect(asked('bay.json')).toEqual({
      does: 'report',
      file: 'bay.json',
      sheet: undefined,
      table: undefined,
      format: 'text',
      out: undefined,
      units: undefined,
      paper: undefined,
      fail: ['Clash', 'Backs up', 'Starved', 'Too long', 'Spills', 'Tips'],
      dateText: undefined,
    })
  })

  test('may come in any order, with = or a space, in any case', () => {
    expect(
      asked('--sheet=SL', '--format', 'CSV', 'bay.json', '--paper', 'a4', '--fail', 'clash, backs up,Clash'),
    ).toMatchObject({
      file: 'bay.json',
      sheet: { id: 'saw-list' },
      format: 'csv',
      paper: 'A4',
      fail: ['Clash', 'Backs up'],
    })
  })

  test('of two plans is what differs', () => {
    expect(asked('--diff', 'a.json', 'b.json', '--format', 'json')).toEqual({
      does: 'diff',
      before: 'a.json',
      after: 'b.json',
      format: 'json',
      out: undefined,
      units: undefined,
    })
  })

  test('help wins over all else', () => {
    expect(asked('--help', '--sheet', 'saw-list')).toEqual({ does: 'help' })
    for (const line of helpText().split('\n').slice(0, -2)) expect(line.length).toBeLessThanOrEqual(100)
  })
})

test.each([
  [[], 'Name a layout file'],
  [['a.json', 'b.json'], 'One layout file at a time'],
  [['a.json', '--sheet', 'nope'], 'There is no paper “nope”'],
  [['a.json', '--format', 'pdf'], '--format can be text, json, csv, svg'],
  [['a.json', '--bogus'], 'There is no flag “--bogus”'],
  [['a.json', '--out'], '--out needs a value'],
  [['a.json', '--out', '--sheet'], '--out needs a value'],
  [['a.json', '--out='], '--out needs a value'],
  [['a.json', '--fail', 'Ugly'], '--fail can be'],
  [['a.json', '--date', 'May'], '--date is year-month-day'],
  [['a.json', '--units', 'cubits'], '--units can be'],
  [['a.json', '--sheet', 'SL', '--sheet', 'PT'], '--sheet is given twice'],
  [['a.json', '--help=yes'], '--help takes no value'],
  [['--diff', 'a.json'], '--diff needs two layout files'],
  [['--diff', 'a.json', 'b.json', '--format', 'svg'], '--format can be text, json'],
  [['--diff', 'a.json', 'b.json', '--sheet', 'SL'], '--sheet is nothing that --diff knows'],
])('%j is refused in one sentence', (given, begins) => {
  const parsed = readArguments(given)
  expect(parsed.ok).toBe(false)
  if (parsed.ok) return
  expect(parsed.sentence).toContain(begins)
  expect(parsed.sentence).toMatch(/\.$/)
  expect(parsed.sentence).not.toContain('\n')
})
