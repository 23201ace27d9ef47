import { describe, expect, test } from 'vitest'
import { shopText } from '../../../src/sheets/shop/shopText'
import {
  amountWords,
  bannerWords,
  buyWords,
  leadWords,
  lineNotes,
  priceWords,
  supplierSum,
  totalRows,
} from '../../../src/sheets/shop/shopWords'
import { shopLine } from '../../../src/evaluate/shop/shopLine'
import type { PriceRow } from '../../../src/model/priceRow'
import type { ShopLine, ShopList } from '../../../src/model/shop'

const row: PriceRow = {
  key: 'screw',
  name: 'Screw',
  spec: '2-1/2 in coated',
  group: 'fasteners',
  unit: 'box',
  pack: 100,
  cents: 1080,
  breaks: [{ from: 20, cents: 900 }],
  supplier: 'Hardware store',
  aisle: 'Screws and nails',
  leadDays: 1,
  waste: { kind: 'none' },
  isWholePack: true,
  isTaxed: true,
  isReturnable: true,
  date: '2026-05-01',
  note: '',
}

const lineOf = (needed: number, changes: Partial<PriceRow> = {}, isPlaceholder = false): ShopLine =>
  shopLine(
    { key: row.key, title: 'Screw', unit: 'piece', needed, inOne: 1, planned: 0 },
    { row: { ...row, ...changes }, layer: 'quote', isPlaceholder },
  )

const blank = lineOf(480, { cents: undefined, breaks: [], pack: 1, unit: 'piece', supplier: 'Tower maker' })

describe('what to ask for', () => {
  test.each([
    [lineOf(1926, { breaks: [] }), '20 boxes of 100'],
    [lineOf(36), '1 box of 100'],
    [lineOf(132, { pack: 1, unit: 'piece' }), '132'],
    [lineOf(123, { pack: 1, unit: 'board' }), '123 boards'],
    [lineOf(2, { pack: 1, unit: 'bunch' }), '2 bunches'],
    [lineOf(2, { pack: 1, unit: 'square foot' }), '2 square feet'],
  ])('%#', (line, words) => {
    expect(buyWords(line, 'feet-inches')).toBe(words)
  })

  test('what is cut off a sheet or a coil is in its own measure, and in metric in metres', () => {
    expect(amountWords(37.3, 'ft2', 'feet-inches')).toBe('37 sq ft')
    // 1 ft2 is 0.0929 m2, 1 ft 0.3048 m: NIST Special Publication 811 (2008), appendix B.8.
    expect(amountWords(37.3, 'ft2', 'metric')).toBe('3.5 m²')
    expect(amountWords(115.8, 'ft', 'metric')).toBe('35 m')
    expect(amountWords(1926, 'piece', 'metric')).toBe('1,926')
    expect(amountWords(1.8, 'piece', 'metric')).toBe('1.8')
    expect(amountWords(0.04, 'ft', 'feet-inches')).toBe('0.04 ft')
  })
})

describe('money', () => {
  test('no price is a dash, nothing is a price', () => {
    expect(priceWords(undefined, '$')).toBe('—')
    expect(priceWords(0, '$')).toBe('$0.00')
  })

  test('a supplier of whom nothing has a price has no sum', () => {
    const totals = { neededCents: 0, boughtCents: 0, taxCents: 0, unpriced: 1, placeholders: 0 }
    const list = { supplier: 'Tower maker', leadDays: 21, lines: [blank], totals }
    expect(supplierSum(list, '$')).toBe('1 unpriced')
    const both = { ...list, lines: [blank, lineOf(36)], totals: { ...totals, boughtCents: 1080 } }
    expect(supplierSum(both, '$')).toBe('$10.80 and 1 unpriced')
  })

  test('without tax there is none to pay', () => {
    const totals = { neededCents: 900, boughtCents: 1000, taxCents: 83, unpriced: 0, placeholders: 0 }
    expect(totalRows(totals, 0, '$').map(([, sum]) => sum)).toEqual(['$9.00', '$10.00'])
    expect(totalRows(totals, 0.0825, '$')).toEqual([
      ['Needed', '$9.00'],
      ['Bought, with spares, in whole packs', '$10.00'],
      ['Tax of 8.25 % on what is taxed', '$0.83'],
      ['To pay', '$10.83'],
    ])
  })
})

describe('what there is to know', () => {
  test('buy 20, it costs less: 18 boxes are 194.40, 20 are 180.00', () => {
    expect(lineNotes(lineOf(1750), '$', 'feet-inches', '2026-05-20')).toEqual([
      'Quote',
      'Buy 20 boxes, it costs $14.40 less, and 250 are over for spares or the next row',
    ])
    // 19 at 10.80 are 205.20, 20 at 9.00 are 180.00.
    const tees = lineOf(19, { pack: 1, unit: 'piece' })
    expect(lineNotes(tees, '$', 'feet-inches', '2026-05-20')).toContain(
      'Buy 20, it costs $25.20 less, and 1 is over for spares or the next row',
    )
  })

  test('a placeholder says so, a blank says so, a quote of 61 days too', () => {
    expect(lineNotes(lineOf(36, {}, true), '$', 'metric', '2026-05-20')).toEqual(['Placeholder'])
    expect(lineNotes(blank, '$', 'metric', '2026-05-20')[0]).toBe('No price')
    // 1 May to 1 July are 30 + 31 = 61 days.
    expect(lineNotes(lineOf(36), '$', 'metric', '2026-07-01')).toContain(
      'Asked on 2026-05-01, more than 60 days ago',
    )
  })

  test('how long ahead', () => {
    expect([21, 1, 0].map(leadWords)).toEqual(['order 21 days ahead', 'order 1 day ahead', ''])
  })

  test('the banner counts what is missing and what is invented, and is silent where nothing is', () => {
    const totals = { neededCents: 0, boughtCents: 0, taxCents: 0, unpriced: 7, placeholders: 1 }
    expect(bannerWords(totals, 2)).toEqual([
      '7 items are unpriced, and in no sum.',
      '1 price is an invented placeholder: put your own in the price book.',
      '2 prices are more than 60 days old.',
    ])
    expect(bannerWords({ ...totals, unpriced: 0, placeholders: 0 }, 0)).toEqual([])
  })
})

test('as text: by supplier and aisle, a box before each line, a dash for what has no price', () => {
  const totals = { neededCents: 389, boughtCents: 1080, taxCents: 0, unpriced: 1, placeholders: 0 }
  const list: ShopList = {
    suppliers: [
      { supplier: 'Tower maker', leadDays: 21, lines: [blank], totals: { ...totals, boughtCents: 0 } },
      { supplier: 'Hardware store', leadDays: 1, lines: [lineOf(36)], totals: { ...totals, unpriced: 0 } },
    ],
    totals,
  }
  const text = shopText(list, {
    title: 'House 2',
    day: '2026-05-20',
    banner: ['1 item is unpriced, and in no sum.'],
    counter: { currency: '$', tax: 0 },
    units: 'feet-inches',
  })
  expect(text).toBe(
    [
      'Shop list, House 2, 2026-05-20',
      '1 item is unpriced, and in no sum.',
      '',
      'Tower maker, order 21 days ahead',
      '- Screws and nails',
      '[ ] 480  Screw, 2-1/2 in coated  —',
      '',
      'Hardware store, order 1 day ahead',
      '- Screws and nails',
      '[ ] 1 box of 100  Screw, 2-1/2 in coated  $10.80',
      '',
      'Needed: $3.89',
      'Bought, with spares, in whole packs: $10.80',
      '',
    ].join('\n'),
  )
})
