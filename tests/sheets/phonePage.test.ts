import { XMLParser } from 'fast-xml-parser'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { counted, said, type Table } from '../../src/model/table'
import { sheets } from '../../src/sheets'
import { phonePage, type PhoneSheet } from '../../src/sheets/phonePage'
import { heading, type Piece, tableOf, words } from '../../src/sheets/piece'
import { scenarios } from '../support/scenarios'

const stops: Table = {
  id: 'stops',
  title: 'Stops <all>',
  columns: [
    { key: 'count', title: 'Pieces', unit: 'count' },
    { key: 'stopMm', title: 'Stop', unit: 'mm', isMain: true },
  ],
  rows: [
    { key: '1', cells: [counted(4), counted(1105, '43-1/2"')] },
    { key: '2', cells: [counted(2), counted(406, '16"')] },
    { key: 'sum', cells: [counted(6), said('')], isSum: true },
  ],
}

const pieces: readonly Piece[] = [
  heading('Cut these'),
  words('Hands off the blade.', 'caution'),
  tableOf(stops, true),
  { as: 'steps', steps: [{ key: 'guard', text: 'Guard down.' }] },
  { as: 'blanks', labels: ['Cut by'] },
]

const made = (sheet: Partial<PhoneSheet> = {}, title = 'Our bay'): string =>
  phonePage({
    title,
    place: 'Back field',
    issue: '3',
    dateText: '1 May 2027',
    sheets: [
      {
        sheet: { id: 'saw-list', code: 'SL', title: 'Saw list', reader: 'Saw hand' },
        pieces,
        drawn: [],
        units: 'feet-inches',
        ...sheet,
      },
    ],
  })

const boxes = (html: string): string[] =>
  [...html.matchAll(/<input type="checkbox" data-key="([^"]*)"/g)].map(([, key]) => key!)

test('every row to be done and every step has a box of its own, and sums have none', () => {
  expect(boxes(made())).toEqual(['saw-list/stops/1', 'saw-list/stops/2', 'saw-list/steps/guard'])
})

test('a table that nobody ticks has no box', () => {
  expect(boxes(made({ pieces: [tableOf(stops)] }))).toEqual([])
})

test('what is read first stands first in its card, the rest by name', () => {
  const [, card] = /<label class="row">(.*?)<\/label>/.exec(made())!
  expect(
    card!
      .replace(/<[^>]*>/g, ' ')
      .replace(/\s+/g, ' ')
      .trim(),
  ).toBe('Stop 43-1/2&quot; Pieces 4')
})

test('says whose, which issue, which day, and what it is not', () => {
  for (const text of ['Our bay', 'Back field', 'Issue 3', '1 May 2027', 'builder&#39;s aid'])
    expect(made()).toContain(text)
})

test('a title that is a script stays words', () => {
  const html = made({}, `"><script>alert(1)</script>'&`)
  expect(html.match(/<script>/g)).toHaveLength(1)
  expect(html).toContain('&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;&#39;&amp;')
})

test('asks nothing of any network, and forbids it', () => {
  const html = made().replaceAll('http://www.w3.org/2000/svg', '')
  expect(html).not.toMatch(/https?:|<link|<img|@import|url\((?!#)/)
  expect(html).toContain(`default-src 'none'`)
})

/** What must be closed; the head's own void elements are not. */
const bodyOf = (html: string): string =>
  /<body>([\s\S]*)<script>/
    .exec(html)![1]!
    .replace(/<(input|br)([^>]*)>/g, '<$1$2/>')
    .replace(/ hidden>/g, '>')

const tickedIn = (list: readonly Piece[]): number =>
  list.reduce((sum, piece) => {
    if (piece.as === 'steps') return sum + piece.steps.length
    if (piece.as !== 'table' || !piece.hasTicks) return sum
    return sum + piece.table.rows.filter(({ isSum }) => !isSum).length
  }, 0)

describe.each(['kestrel-bend-house-2', 'lintel-lane-lean-to', 'old-dairy-corner'])(
  'the papers of %s',
  (name) => {
    const now = evaluate(scenarios[name]!())
    const options = {
      paper: 'letter',
      orientation: 'auto',
      scale: 'fit',
      units: 'feet-inches',
      dateText: '1 May 2027',
      issue: '3',
    } as const
    const all = sheets.map((sheet): PhoneSheet => ({
      sheet,
      pieces: sheet.pieces({ now, issued: undefined }, options),
      drawn: sheet.pages?.({ now, issued: undefined }, options) ?? [],
      units: 'feet-inches',
    }))
    const html = phonePage({ title: name, place: '', issue: '3', dateText: '1 May 2027', sheets: all })

    test('are one well-formed page', () => {
      const body = `<body>${bodyOf(html)}</body>`
      expect(() =>
        new XMLParser({ ignoreAttributes: false, processEntities: false }).parse(body, true),
      ).not.toThrow()
    })

    test('have a box for each row and step of the sheets, no two under one name', () => {
      const keys = boxes(html)
      expect(keys).toHaveLength(all.reduce((sum, { pieces: list }) => sum + tickedIn(list), 0))
      expect(new Set(keys).size).toBe(keys.length)
    })

    test('have ids that no two drawings share', () => {
      const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)
      expect(new Set(ids).size).toBe(ids.length)
    })

    test('are light enough to send', () => {
      expect(html.length).toBeLessThan(3_000_000)
    })
  },
)
