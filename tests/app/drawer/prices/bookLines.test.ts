import { describe, expect, test } from 'vitest'
import {
  bookLines,
  type BookLine,
  hasFlaw,
  neededKeys,
  sectionsOf,
} from '../../../../src/app/drawer/prices/bookLines'
import {
  bookSentence,
  breakWords,
  changedWords,
  layerWord,
  packWords,
  readingNotes,
  readingSentence,
} from '../../../../src/app/drawer/prices/priceWords'
import { baseRow } from '../../../../src/catalogue/priceBook/baseBook'
import { beforeChecks } from '../../../../src/evaluate/beforeChecks'
import type { BookReading } from '../../../../src/layout/quoteReading'
import type { PriceRow } from '../../../../src/model/priceRow'
import { scenarios } from '../../../support/scenarios'

const TODAY = '2026-04-05'
const rowOf = (key: string, changes: Partial<PriceRow> = {}): PriceRow => ({ ...baseRow(key)!, ...changes })

const sample = beforeChecks(scenarios['kestrel-bend-house-2']!())
const needed = neededKeys(sample.cuts, sample.counts)
const quotes = [
  rowOf('screw', { cents: 900, date: '2026-04-01' }),
  rowOf('zip-tie', { cents: undefined, date: '2026-04-01' }),
  rowOf('hook-tie', { cents: 300, date: '2026-02-03' }),
]
const lines = bookLines(
  { book: [rowOf('foot-plate', { cents: 250, date: '2026-04-01' })], quotes },
  needed,
  TODAY,
)
const lineOf = (key: string): BookLine => lines.find(({ row }) => row.key === key)!
const all = { isBayOnly: false, flaw: undefined, words: '' }
const keysOf = (sought: typeof all | Parameters<typeof sectionsOf>[1]): string[] =>
  sectionsOf(lines, sought).flatMap((section) => section.lines.map(({ row }) => row.key))

describe('what the bay needs', () => {
  test('is what it cuts, by the lengths bought, and what it counts; work is not bought', () => {
    for (const key of ['lumber-2x4@12ft', 'conduit-3/4@10ft', 'screw', 'foot-plate', 'tower']) {
      expect(needed.has(key), key).toBe(true)
      expect(lineOf(key).isNeeded).toBe(true)
    }
    for (const key of ['lumber-4x4@8ft', 'drain-hole', 'head-box']) expect(needed.has(key), key).toBe(false)
  })

  test('has a row for each thing', () => {
    const keys = new Set(lines.map(({ row }) => row.key))
    expect([...needed].filter((key) => !keys.has(key))).toEqual([])
  })
})

describe('what is sought', () => {
  test('is all of the book, each row once, or what the bay needs of it', () => {
    expect(keysOf(all)).toHaveLength(lines.length)
    expect(new Set(keysOf({ ...all, isBayOnly: true }))).toEqual(needed)
  })

  test('are rows with all the words in them, wherever', () => {
    expect(keysOf({ ...all, words: 'POLY 3/4 tee' })).toContain('tee-pe-3/4')
    expect(keysOf({ ...all, words: 'lumber yard 2x4' })).toEqual(
      [8, 10, 12, 14, 16].map((feet) => `lumber-2x4@${feet}ft`),
    )
    expect(keysOf({ ...all, words: 'no such thing' })).toEqual([])
  })

  test('are rows without a price, placeholders, or quotes of more than 60 days', () => {
    expect(keysOf({ isBayOnly: true, flaw: 'unpriced', words: '' })).toEqual(
      expect.arrayContaining(['tower', 'hook', 'zip-tie']),
    )
    // From 3 February to 5 April of 2026 are 25 + 31 + 5 = 61 days.
    expect(keysOf({ ...all, flaw: 'stale' })).toEqual(['hook-tie'])
    for (const key of ['screw', 'zip-tie', 'foot-plate', 'drain-hole', 'tower'])
      expect(hasFlaw(lineOf(key), 'placeholder'), key).toBe(false)
    expect(hasFlaw(lineOf('lumber-2x4@12ft'), 'placeholder')).toBe(true)
  })
})

describe('in words', () => {
  test('the layer that holds', () => {
    expect(['lumber-2x4@12ft', 'tower', 'foot-plate', 'screw'].map((key) => layerWord(lineOf(key)))).toEqual([
      'Placeholder',
      'Program',
      'Book',
      'Quote',
    ])
  })

  test('how it is sold', () => {
    expect(packWords(rowOf('screw'))).toBe('box of 100')
    expect(packWords(rowOf('foot-plate'))).toBe('piece')
    expect(breakWords(rowOf('screw'))).toBe('from 20: 9.60')
  })

  test('what the prices are worth', () => {
    expect(bookSentence(64, { unpriced: 1, placeholder: 2, stale: 1 })).toBe(
      '1 of the 64 things in this bay has no price: no sum has it in it. 2 prices are invented placeholders: put in your own. 1 price is more than 60 days old: ask again.',
    )
    expect(bookSentence(64, { unpriced: 7, placeholder: 0, stale: 0 })).toBe(
      '7 of the 64 things in this bay have no price: no sum has them in it.',
    )
    expect(bookSentence(64, { unpriced: 0, placeholder: 0, stale: 0 })).toMatch(/^Everything in this bay/)
  })

  test('what a file would do', () => {
    const change = { before: rowOf('screw'), after: rowOf('screw', { cents: 900, aisle: '7', date: TODAY }) }
    expect(changedWords(change.before, change.after)).toBe('aisle, date')
    const reading: BookReading = {
      layer: 'book',
      added: [change],
      changed: [],
      same: 4,
      refused: [{ line: 3, why: 'It has no key.' }],
      unknownColumns: ['Colour'],
      dated: 1,
      covered: 2,
    }
    expect(readingSentence(reading)).toBe(
      '1 row new in the supplier’s book, 0 changed, 4 as they stand, 1 line left out. Nothing is taken yet.',
    )
    expect(readingNotes(reading)).toEqual([
      '1 price has no date in the file and gets today’s.',
      '2 rows are covered by a quote of this job, which holds before the book.',
      'The price book has no column “Colour”: not read.',
    ])
  })
})
