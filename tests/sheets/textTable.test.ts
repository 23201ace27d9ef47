import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { counted, said, type Table } from '../../src/model/table'
import { heading, tableOf, words } from '../../src/sheets/piece'
import { piecesText, TEXT_WIDTH } from '../../src/sheets/sheetText'
import { onOneLine, tableLines, wrapped } from '../../src/sheets/textTable'

const boards: Table = {
  id: 'boards',
  title: 'Boards',
  columns: [
    { key: 'stock', title: 'Material', unit: 'text' },
    { key: 'count', title: 'Count', unit: 'count' },
  ],
  rows: [
    { key: 'a', cells: [said('2x4 lumber'), counted(119)] },
    { key: 'b', cells: [said('3/4 in thin-wall conduit'), counted(8)] },
    { key: 'sum', cells: [said('Together'), counted(127)], isSum: true },
  ],
}

describe('a table on a terminal', () => {
  test('has numbers to the right and words to the left', () => {
    expect(tableLines(boards, 40)).toEqual([
      'Material                  Count',
      '------------------------  -----',
      '2x4 lumber                  119',
      '3/4 in thin-wall conduit      8',
      'Together                    127',
    ])
  })

  test('breaks words into lines where it is narrow, and ticks rows but no sums', () => {
    expect(tableLines(boards, 27, true)).toEqual([
      '    Material          Count',
      '    ----------------  -----',
      '[ ] 2x4 lumber          119',
      '[ ] 3/4 in thin-wall      8',
      '    conduit',
      '    Together            127',
    ])
  })

  test('stands a row under its first cell where its columns can’t stand side by side', () => {
    expect(tableLines(boards, 12)).toEqual([
      'Material  2x4 lumber',
      'Count     119',
      '',
      'Material  3/4 in',
      '          thin-wall',
      '          conduit',
      'Count     8',
      '',
      'Material  Together',
      'Count     127',
      '',
    ])
  })
})

test('nothing that a terminal would obey comes through', () => {
  expect(onOneLine('Row \u001b[31m1\u0007\r\nnext\u202e')).toBe('Row  [31m1   next')
})

test('words are all there, in their order, and no line is too long', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 1, max: 40 }), (text, width) => {
      const lines = wrapped(text, width)
      for (const line of lines) expect(Array.from(line).length).toBeLessThanOrEqual(width)
      expect(lines.join('').replaceAll(' ', '')).toBe(onOneLine(text).replaceAll(' ', ''))
    }),
    { seed: 20270501, numRuns: 300 },
  )
})

test('pieces stand in their order with what they are', () => {
  const text = piecesText([
    heading('Saw list'),
    words('Cut the long ones first.'),
    words('Both hands clear of the blade.', 'caution'),
    tableOf(boards, true),
    { as: 'steps', steps: [{ key: 'a', text: 'Fill the pit.', caution: 'Pump off.' }] },
    { as: 'figure', caption: 'Rack', draw: () => ({ heightMm: 1, items: [], scaleWords: '1:10' }) },
    { as: 'blanks', labels: ['Tested by'] },
    { as: 'page' },
  ])
  expect(text.split('\n').slice(0, 6)).toEqual([
    'Saw list',
    '========',
    '',
    'Cut the long ones first.',
    '',
    '!  Both hands clear of the blade.',
  ])
  expect(text).toContain('[ ] 2x4 lumber                  119')
  expect(text).toContain('[ ] Fill the pit.\n    !  Pump off.')
  expect(text).toContain('(Drawing on the page: Rack)')
  expect(text).toContain('Tested by: ____')
  for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(TEXT_WIDTH)
})
