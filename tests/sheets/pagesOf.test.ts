import { describe, expect, test } from 'vitest'
import type { Page } from '../../src/drawing/page'
import { onPaper } from '../../src/drawing/page'
import type { PaperName } from '../../src/drawing/paper'
import { emptyBay } from '../../src/layout/empty'
import { evaluate } from '../../src/evaluate/evaluate'
import { counted, said, type Column, type Table } from '../../src/model/table'
import { ruled } from '../../src/sheets/ink'
import { pagesOf, paperFor } from '../../src/sheets/pagesOf'
import { heading, lead, type Piece, tableOf, words } from '../../src/sheets/piece'
import type { Sheet, SheetOptions } from '../../src/sheets/sheet'
import { feet } from '../../src/units/length'
import { brokenLaws } from '../support/pageLaws'
import { pageText, pageWords } from '../support/pageText'

const now = evaluate(emptyBay(feet(30), feet(96), 'Trial bay'))
const plan = { now, issued: undefined }

const sheetOf = (pieces: readonly Piece[], size: Sheet['size'] = 'small'): Sheet => ({
  id: 'trial',
  code: 'TR',
  title: 'Trial sheet',
  reader: 'Saw hand',
  size,
  pieces: () => pieces,
})

const options = (
  paper: PaperName = 'A4',
  orientation: SheetOptions['orientation'] = 'auto',
): SheetOptions => ({
  paper,
  orientation,
  scale: 'fit',
  units: 'metric',
  dateText: '1 May 2027',
  issue: 'draft of 4',
})

/** Pages that keep the laws of pages. */
const lawful = (pieces: readonly Piece[], asked: SheetOptions = options()): readonly Page[] => {
  const sheet = sheetOf(pieces)
  const pages = pagesOf(sheet, plan, asked)
  expect(brokenLaws(pages, sheet, 'Trial bay', asked)).toEqual([])
  return pages
}

const columns: readonly Column[] = [
  { key: 'mark', title: 'Mark', unit: 'text', isMain: true },
  { key: 'cutMm', title: 'Cut', unit: 'mm', isMain: true },
  { key: 'place', title: 'Where it goes', unit: 'text' },
]

const rowsOf = (count: number, place = 'Rack row N1') =>
  Array.from({ length: count }, (_, i) => ({
    key: `${i}`,
    cells: [said(`RS-${i}`), counted(1700 + i, `${1700 + i} mm`), said(place)],
  }))

const table = (count: number, place?: string): Table => ({
  id: 'cuts',
  title: 'Cuts',
  columns,
  rows: rowsOf(count, place),
})

const wide = (count: number, columnCount: number): Table => ({
  id: 'wide',
  title: 'Wide',
  columns: Array.from({ length: columnCount }, (_, i) => ({
    key: `c${i}`,
    title: `Column ${i}`,
    unit: 'text',
  })),
  rows: Array.from({ length: count }, (_, i) => ({
    key: `${i}`,
    cells: Array.from({ length: columnCount }, (_c, c) => said(`word${c} and more of row ${i}`)),
  })),
})

const figure = (heightMm: number): Piece => ({
  as: 'figure',
  caption: 'A line',
  draw: (room) => ({
    heightMm: Math.min(heightMm, room.heightMm),
    items: [{ marks: [ruled({ x: 0, y: 0 }, { x: room.widthMm, y: 0 }, 'outline')], placement: onPaper }],
    scaleWords: '1:10',
  }),
})

const times = (text: string, page: Page): number => pageText(page).split(text).length - 1

const every: readonly Piece[] = [
  heading('First'),
  words('Words in a plain tone. '.repeat(12)),
  words('Seen from afar', 'big'),
  words('A small note.', 'note'),
  words('A trench deeper than 4 ft has a box or a slope before anyone goes in. '.repeat(3), 'caution'),
  tableOf(table(30), true),
  heading('Second', 2),
  {
    as: 'steps',
    steps: [
      { key: 'a', text: 'Set the stop.' },
      { key: 'b', text: 'Cut. '.repeat(60), caution: 'Hands off the blade until it stands still.' },
    ],
  },
  figure(60),
  { as: 'blanks', labels: ['Tested by', 'Date', 'What was found'] },
  { as: 'page' },
  words('On a page of its own.'),
]

describe('pages of pieces', () => {
  test.each<PaperName>(['letter', 'tabloid', 'A4', 'A3', 'half-letter', 'A5', '4x6', 'A6'])(
    'keep the laws on %s, either way round, with every kind of piece',
    (paper) => {
      for (const way of ['portrait', 'landscape'] as const) {
        const pages = lawful(every, options(paper, way))
        expect(pageText(pages.at(-1)!)).toContain('On a page of its own.')
        expect(pageText(pages.at(-1)!)).not.toContain('What was found')
      }
    },
  )

  test('are none where the sheet has nothing to say', () => {
    expect(pagesOf(sheetOf([]), plan, options())).toEqual([])
    expect(pagesOf(sheetOf([tableOf(table(0))]), plan, options())).toEqual([])
  })

  test('have every row of a long table once, in order, under a head on each page', () => {
    const pages = lawful([
      tableOf(table(200, 'A longer place so that no two tables stand beside each other'), true),
    ])
    expect(pages.length).toBeGreaterThan(3)
    for (const page of pages) expect(times('Where it goes', page)).toBe(1)
    const marks = pages.flatMap((page) => pageText(page).match(/^RS-\d+$/gm) ?? [])
    expect(marks).toEqual(Array.from({ length: 200 }, (_, i) => `RS-${i}`))
  })

  test('set a narrow table in columns beside each other, read down and then across', () => {
    const narrow: Table = { ...table(40), columns: columns.slice(0, 2) }
    const [page, ...more] = lawful([tableOf(narrow)])
    expect(more).toEqual([])
    expect(times('Mark', page!)).toBeGreaterThan(1)
    expect(pageText(page!).match(/^RS-\d+$/gm)).toEqual(Array.from({ length: 40 }, (_, i) => `RS-${i}`))
  })

  test('never end with a heading', () => {
    for (let count = 20; count < 34; count++) {
      const pages = lawful([
        tableOf(table(count, 'x '.repeat(60))),
        heading('What follows'),
        words('Follows.'),
      ])
      const at = pages.findIndex((page) => pageText(page).includes('What follows'))
      expect(pageText(pages[at]!)).toContain('Follows.')
    }
  })

  test('never end with words that lead to what follows, nor part them from their heading', () => {
    for (let count = 0; count < 70; count += 1) {
      const pages = lawful([
        ...Array.from({ length: count }, (_, i) => words(`Line ${i}`, i % 3 === 0 ? 'plain' : 'note')),
        heading('Boards'),
        lead('Fetch 3 x 3.0 m', 'big'),
        lead('9 cuts.', 'note'),
        tableOf({ ...table(4, 'Last rack'), id: 'more', title: '' }),
      ])
      const page = pages.map(pageText).find((text) => text.includes('Boards'))
      for (const word of ['Fetch 3 x 3.0 m', '9 cuts.', 'Last rack']) expect(page).toContain(word)
    }
  })

  test('part a row that no page holds, and lose no word of it', () => {
    const long = Array.from({ length: 900 }, (_, i) => `place${i}`)
    const pages = lawful([tableOf(table(1, long.join(' ')))], options('A6'))
    expect(pages.length).toBeGreaterThan(1)
    const all = pages.map(pageText).join('\n')
    for (const place of long) expect(all).toContain(place)
  })

  test('lie down for a table that is too wide for the paper upright', () => {
    expect(lawful([tableOf(wide(5, 4))])[0]!.paper.orientation).toBe('portrait')
    expect(lawful([tableOf(wide(5, 7))])[0]!.paper.orientation).toBe('landscape')
  })

  test('break cells between words, and at last within them, rather than clip', () => {
    for (const count of [12, 24]) lawful([tableOf(wide(3, count))])
    const word = 'supercalifragilistic'.repeat(9)
    const [page] = lawful([tableOf(table(1, word))], options('A6'))
    expect(pageText(page!).replaceAll('\n', '')).toContain(word)
  })

  test('letter main columns larger', () => {
    const all = pageWords(lawful([tableOf(table(3))])[0]!)
    const size = (text: string) => all.find((one) => one.text === text)!.letterMm
    expect(size('RS-0')).toBeGreaterThan(size('Rack row N1'))
  })

  test('say the scale of their own figures', () => {
    const pages = lawful([figure(40), { as: 'page' }, words('None here.')])
    expect(pageText(pages[0]!)).toContain('Scale\n1:10')
    expect(pageText(pages[1]!)).toContain('Scale\nnot to scale')
  })

  test('give a figure no more room than a page has, its heading included', () => {
    const pages = lawful([heading('Seen from the side'), figure(4000)])
    expect(pages).toHaveLength(1)
  })
})

test('each sheet has its paper in either family', () => {
  expect(
    ['small', 'large', 'half', 'tag'].map((size) => paperFor({ size: size as Sheet['size'] }, 'inch')),
  ).toEqual(['letter', 'tabloid', 'half-letter', '4x6'])
  expect(paperFor({ size: 'tag' }, 'metric')).toBe('A6')
})
