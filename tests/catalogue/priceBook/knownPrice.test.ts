import { describe, expect, test } from 'vitest'
import { fittings } from '../../../src/catalogue/fittings'
import { baseBook, baseRow } from '../../../src/catalogue/priceBook/baseBook'
import { centsOf, centsOfLength, knownPrice, pricesOf } from '../../../src/catalogue/priceBook/knownPrice'
import { stockCents } from '../../../src/catalogue/priceBook/stockPrices'
import { stockKey, stocks } from '../../../src/catalogue/stock'
import { emptyBay } from '../../../src/layout/empty'
import type { KnownPrice, PriceRow } from '../../../src/model/priceRow'
import { feet, inches } from '../../../src/units/length'

const none = { book: [], quotes: [] }

const rowOf = (key: string, changes: Partial<PriceRow> = {}): PriceRow => {
  const row = baseRow(key)
  if (!row) throw new RangeError(`No row ${key}`)
  return { ...row, ...changes }
}

const priceOf = (key: string): KnownPrice => pricesOf()(key)!

describe('the book that comes with the program', () => {
  test.each(fittings.map(({ key }) => key))('has a row for %s', (key) => {
    expect(baseRow(key)?.key).toBe(key)
  })

  test.each(stocks.map((item) => item.key))('has a row for every length of %s', (key) => {
    const { lengthsMm } = stocks.find((item) => item.key === key)!
    for (const lengthMm of lengthsMm) expect(baseRow(stockKey(key, lengthMm))?.stockMm).toBe(lengthMm)
  })

  test('has each key once, and none that the catalogue does not know', () => {
    const keys = baseBook.map(({ key }) => key)
    expect(new Set(keys).size).toBe(keys.length)
    const known = new Set([
      ...fittings.map(({ key }) => key),
      ...stocks.flatMap(({ key, lengthsMm }) => lengthsMm.map((mm) => stockKey(key, mm))),
    ])
    expect(keys.filter((key) => !known.has(key))).toEqual([])
  })

  test.each(baseBook)('$key: whole cents, nobody’s quote, and says that it is invented', (row) => {
    expect(row.date).toBe('')
    if (row.cents === undefined || row.cents === 0) expect(row.note).toMatch(/put in|Drilled|Made/)
    else {
      expect(Number.isInteger(row.cents) && row.cents > 0).toBe(true)
      expect(row.note).toBe('Placeholder, invented; put your own')
    }
    for (const each of row.breaks) expect(each.cents).toBeLessThan(row.cents ?? 0)
  })

  test('lumber costs alike by the foot in every length, so that the least length is the least money', () => {
    for (const length of [8, 10, 12, 14, 16]) expect(rowOf(`lumber-2x4@${length}ft`).cents).toBe(62 * length)
  })

  test('a bigger fitting of one family costs more', () => {
    for (const noun of ['elbow', 'tee', 'union', 'clamp']) {
      const cents = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'].map(
        (size) => rowOf(`${noun}-pe-${size}`).cents ?? NaN,
      )
      expect(cents).toEqual(cents.toSorted((a, b) => a - b))
    }
  })

  test('what nobody can put even an invented price on has none, and what is drilled on site costs nothing', () => {
    for (const key of ['tower', 'hook', 'family-adapter']) expect(rowOf(key).cents).toBeUndefined()
    expect(rowOf('drain-hole').cents).toBe(0)
    expect(knownPrice('drain-hole', none)?.isPlaceholder).toBe(false)
  })
})

describe('lengths that the catalogue does not list', () => {
  test('have a row at the price of their foot: 9 ft at 62 cents are 558; 8 ft 8-5/8 in at 62 cents are 541', () => {
    expect(baseRow('lumber-2x4@9ft')).toMatchObject({ cents: 558, stockMm: feet(9), spec: '9 ft' })
    // 104.625 / 12 = 8.71875 ft; times 62 = 540.56.
    expect(baseRow('lumber-2x4@104.625in')).toMatchObject({ cents: 541, stockMm: inches(104.625) })
  })

  test.each([
    'lumber-2x4@',
    'lumber-2x4@144in',
    'lumber-9x9@8ft',
    'lumber-2x4@08ft',
    'screw@8ft',
    'lumber-2x4@0ft',
  ])('and %s is no key of one', (key) => expect(baseRow(key)).toBeUndefined())
})

describe('the layers', () => {
  const book = [rowOf('screw', { cents: 800, date: '2026-03-01' })]
  const quotes = [rowOf('screw', { cents: 700, date: '2026-04-01' })]

  test('a quote holds before the supplier’s book, and that before what came with the program', () => {
    expect(knownPrice('screw', { book, quotes })).toMatchObject({ layer: 'quote', row: { cents: 700 } })
    expect(knownPrice('screw', { book, quotes: [] })).toMatchObject({ layer: 'book', row: { cents: 800 } })
    expect(knownPrice('screw', none)).toMatchObject({ layer: 'base', isPlaceholder: true })
    expect(knownPrice('screw', { book, quotes })?.isPlaceholder).toBe(false)
  })

  test('a quote without a price is an answer: no invented price comes to light under it', () => {
    const asked = [rowOf('screw', { cents: undefined, date: '2026-04-01' })]
    const known = knownPrice('screw', { book, quotes: asked })
    expect(known).toMatchObject({ layer: 'quote', isPlaceholder: false })
    expect(known?.row.cents).toBeUndefined()
  })

  test('a row that nobody dated is still a placeholder, wherever it lies', () => {
    expect(knownPrice('screw', { book: [rowOf('screw')], quotes: [] })).toMatchObject({
      layer: 'book',
      isPlaceholder: true,
    })
  })

  test('a key of nothing has no price, even where a quote names it', () => {
    expect(knownPrice('gloves', { book: [], quotes: [{ ...rowOf('screw'), key: 'gloves' }] })).toBeUndefined()
  })

  test('a counter as the layout keeps it is such layers', () => {
    expect(knownPrice('screw', emptyBay(feet(20), feet(40), 'Bay').counter)?.layer).toBe('base')
  })
})

describe('what a length of stock costs the saw', () => {
  const key = 'lumber-2x4@12ft'

  test('is what the book says of it', () => {
    const book = [rowOf(key, { cents: 900 })]
    expect(stockCents('lumber-2x4', feet(12), none)).toBe(744)
    expect(stockCents('lumber-2x4', feet(12), { book, quotes: [] })).toBe(900)
    expect(stockCents('lumber-2x4', feet(10), { book, quotes: [] })).toBe(620)
    expect(stockCents('lumber-9x9', feet(10), none)).toBeUndefined()
  })

  test('is unknown where a quote has none', () => {
    const quotes = [rowOf(key, { cents: undefined })]
    expect(stockCents('lumber-2x4', feet(12), { book: [rowOf(key)], quotes })).toBeUndefined()
  })

  test('agrees with the book in every length of every stock', () => {
    for (const { key: stock, lengthsMm } of stocks)
      for (const mm of lengthsMm)
        expect(stockCents(stock, mm, none)).toBe(knownPrice(stockKey(stock, mm), none)?.row.cents)
  })
})

test('a part of a coil costs its share of it, and a part of a box its share of the box', () => {
  const coil = { ...priceOf('pe-3/4@100ft'), row: rowOf('pe-3/4@100ft', { cents: 4000 }) }
  expect(centsOfLength(coil, feet(10))).toBe(400)
  expect(centsOfLength(coil, -feet(2.5))).toBe(-100)
  expect(centsOfLength(priceOf('screw'), feet(1))).toBeUndefined()
  // 100 screws for $10.80: 25 are a quarter.
  expect(centsOf(priceOf('screw'), 25)).toBe(270)
  expect(centsOf(priceOf('tower'), 25)).toBeUndefined()
})
