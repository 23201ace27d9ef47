import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Judged } from '../../../src/evaluate/evaluation'
import { emptyBay } from '../../../src/layout/empty'
import type { Layout } from '../../../src/layout/schema'
import type { Row } from '../../../src/model/table'
import { tablesIn } from '../../../src/sheets/piece'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { shopSheet } from '../../../src/sheets/shop/shopSheet'
import { arbitraryBay } from '../../support/arbitraryBay'
import { arbitraryWater } from '../../support/arbitraryWater'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '2027-05-01',
  issue: '1',
}

const piecesOf = (layout: Layout, changes: Partial<SheetOptions> = {}) =>
  shopSheet.pieces({ now: evaluate(layout), issued: undefined }, { ...options, ...changes })

/** Lines of things to buy, of all suppliers, as the sheet's own tables have them. */
const linesOf = (now: Judged): readonly Row[] =>
  tablesIn(shopSheet.pieces({ now, issued: undefined }, options))
    .filter(({ id }) => id.startsWith('shop-') && id !== 'shop-totals' && id !== 'shop-on-hand')
    .flatMap(({ rows }) => rows.filter(({ isSum }) => !isSum))

const NEEDED = 2
const SPARE = 3
const PACKS = 5

const numberIn = (row: Row, column: number): number => Number(row.cells[column]?.value)

/** Feet of a stock's length as the key of its row has it: `12ft`, `104.625in`. */
const feetOfKey = (key: string): number => {
  const [, number = '', unit] = /@([0-9.]+)(ft|in)$/.exec(key) ?? []
  return unit === 'ft' ? Number(number) : Number(number) / 12
}

/** All that must hold of the list of one bay, told from the take-off and the cut lists and from nothing that the list is made by. */
const agrees = (now: Judged): void => {
  const lines = linesOf(now)
  const keys = lines.map(({ key }) => key)
  expect(new Set(keys).size).toBe(keys.length)
  const stocks = now.cuts.map(({ stock }) => stock)
  const isCut = (key: string): boolean => stocks.some((stock) => key.startsWith(`${stock}@`))

  const counted = now.counts.filter(({ isWork, count }) => !isWork && count > 0)
  const loose = lines.filter(({ key }) => !isCut(key))
  expect(loose.map(({ key }) => key).toSorted()).toEqual(counted.map(({ item }) => item).toSorted())
  for (const { item, count } of counted)
    expect(
      numberIn(
        loose.find(({ key }) => key === item)!,
        NEEDED,
      ),
    ).toBe(count)

  for (const { stock, bought, boards } of now.cuts) {
    const rows = lines.filter(({ key }) => key.startsWith(`${stock}@`))
    expect(rows.length).toBe(bought.length)
    for (const { stockMm, count } of bought) {
      const row = rows.find(({ key }) => Math.abs(feetOfKey(key) * 304.8 - stockMm) < 0.1)!
      expect(numberIn(row, PACKS)).toBeGreaterThanOrEqual(count)
      // Coils are counted in feet of pieces, sticks and boards by the stick.
      const mm = boards
        .filter((board) => !board.isLeftover && board.stockMm === stockMm)
        .flatMap((board) => board.pieces.map((piece) => board.count * piece.count * piece.lengthMm))
        .reduce((sum, each) => sum + each, 0)
      const needed = numberIn(row, NEEDED)
      const isCoil = /^(?:pe|drip|tube)-/.test(stock)
      if (isCoil) expect(needed).toBeCloseTo(mm / 304.8, 4)
      else expect(needed).toBe(count)
    }
  }
}

describe('to the last piece', () => {
  test.each(Object.keys(scenarios))('the list of %s is its take-off and its boards', (name) => {
    agrees(evaluate(scenarios[name]!()))
  })

  test('and so is that of any bay', () => {
    fc.assert(
      fc.property(fc.oneof(arbitraryBay, arbitraryWater), (layout) => agrees(evaluate(layout))),
      { seed: 8_110, numRuns: 40 },
    )
  })

  test('nothing is bought short: packs hold what is needed with its spares', () => {
    for (const line of linesOf(evaluate(scenarios['kestrel-bend-house-2']!()))) {
      const pack = /of ([0-9,]+)/.exec(line.cells[4]!.text)?.[1]?.replaceAll(',', '') ?? '1'
      if (line.key.includes('@') || line.cells[4]!.text.includes('ft')) continue
      expect(numberIn(line, PACKS) * Number(pack)).toBeGreaterThanOrEqual(
        Math.floor(numberIn(line, NEEDED) + numberIn(line, SPARE) + 1e-6),
      )
    }
  })
})

describe('the sheet', () => {
  const layout = scenarios['kestrel-bend-house-2']!()
  const pieces = piecesOf(layout)
  const text = pieces.flatMap((piece) => (piece.as === 'words' ? [piece.text] : [])).join('\n')

  test('says what its sums are worth before any of them', () => {
    expect(text).toMatch(/invented placeholder/)
    expect(text).toMatch(/unpriced, and in no sum/)
    expect(pieces.findIndex(({ as }) => as === 'words')).toBeLessThan(
      pieces.findIndex(({ as }) => as === 'table'),
    )
  })

  test('a thing without a price is a dash and never 0', () => {
    const blanks = linesOf(evaluate(layout)).filter(({ cells }) => cells[7]!.value === null)
    expect(blanks.length).toBeGreaterThan(0)
    for (const { cells } of blanks) expect(cells[7]!.text).toBe('—')
  })

  test('the sums of the suppliers come to what is bought', () => {
    const tables = tablesIn(pieces)
    const sums = tables.flatMap(({ rows }) =>
      rows.filter(({ isSum }) => isSum).map((row) => numberIn(row, 7)),
    )
    const totals = tables.find(({ id }) => id === 'shop-totals')!
    const bought = totals.rows.find(({ key }) => key === 'bought')!
    expect(sums.reduce((sum, cents) => sum + cents, 0)).toBe(bought.cells[1]!.value)
  })

  test('tells the longest stick for the truck, in the buyer’s units', () => {
    expect(text).toMatch(/Longest on the truck: 12 ft, \d+ of 2x4 lumber\./)
    const metric = piecesOf(layout, { units: 'metric' }).flatMap((piece) =>
      piece.as === 'words' ? [piece.text] : [],
    )
    expect(metric.join('\n')).toMatch(/Longest on the truck: 3\.66 m/)
  })

  test('copper, brass and treated wood are told to whoever buys', () => {
    const cautions = pieces.flatMap((piece) =>
      piece.as === 'words' && piece.tone === 'caution' ? [piece.text] : [],
    )
    expect(cautions.join('\n')).toMatch(/Treated lumber/)
    expect(cautions.join('\n')).toMatch(/Copper, brass and zinc/)
  })

  test('what is on hand stands there and is not bought', () => {
    const [lumber] = evaluate(layout).cuts.filter(({ stock }) => stock === 'lumber-2x4')
    const leftover = { stock: 'lumber-2x4', lengthMm: lumber!.lines[0]!.lengthMm, count: 3 }
    const pieced = piecesOf({ ...layout, bench: { ...layout.bench, leftovers: [leftover] } })
    const onHand = tablesIn(pieced).find(({ id }) => id === 'shop-on-hand')!
    expect(onHand.rows.map(({ cells }) => cells[2]!.value)).toEqual([3])
    expect(tablesIn(pieces).some(({ id }) => id === 'shop-on-hand')).toBe(false)
  })

  test('an old quote is marked on a day that is written as one', () => {
    const quote = {
      ...layout.counter.quotes[0],
      key: 'tower',
      name: 'Tower',
      spec: '',
      group: 'growing' as const,
      unit: 'piece',
      pack: 1,
      cents: 900,
      breaks: [],
      supplier: 'Tower maker',
      aisle: '',
      leadDays: 21,
      waste: { kind: 'none' as const },
      isWholePack: true,
      isTaxed: true,
      isReturnable: false,
      date: '2027-02-01',
      note: '',
    }
    const quoted = { ...layout, counter: { ...layout.counter, quotes: [quote] } }
    const old = piecesOf(quoted).flatMap((piece) => (piece.as === 'words' ? [piece.text] : []))
    expect(old.join('\n')).toMatch(/1 price is more than 60 days old/)
    const tower = linesOf(evaluate(quoted)).find(({ key }) => key === 'tower')!
    expect(tower.cells[8]!.text).toMatch(/Asked on 2027-02-01, more than 60 days ago/)
    expect(tower.cells[7]!.value).toBe(480 * 900)
  })
})

test('an empty bay needs no list', () => {
  expect(piecesOf(emptyBay(5000, 8000, 'Empty'))).toEqual([])
})
