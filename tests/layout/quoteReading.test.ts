import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sheetLines, textOf } from '../../src/app/drawer/prices/sheetLines'
import { baseBook, baseRow } from '../../src/catalogue/priceBook/baseBook'
import { knownPrice } from '../../src/catalogue/priceBook/knownPrice'
import { emptyBay } from '../../src/layout/empty'
import { clearLayer, dropRow, quote, takeReading } from '../../src/layout/quoteEdits'
import { type BookReading, readBook, type OwnLayer } from '../../src/layout/quoteReading'
import { layerBook, sheetText, wholeBook } from '../../src/layout/quoteSheet'
import type { Layout } from '../../src/layout/schema'
import { type PriceLayers, type PriceRow } from '../../src/model/priceRow'
import { feet } from '../../src/units/length'
import { expectEditLaws } from '../support/laws'

const TODAY = '2026-04-05'
const none: PriceLayers = { book: [], quotes: [] }
const bay = emptyBay(feet(20), feet(40), 'Bay')

const rowOf = (key: string, changes: Partial<PriceRow> = {}): PriceRow => ({ ...baseRow(key)!, ...changes })

const tried = async (text: string, layer: OwnLayer = 'quotes', layers = none) =>
  readBook(await sheetLines(text), { layer, layers, today: TODAY })

const reading = async (text: string, layer: OwnLayer = 'quotes', layers = none): Promise<BookReading> => {
  const read = await tried(text, layer, layers)
  if ('fault' in read) throw new Error(read.fault)
  return read
}

const whys = ({ refused }: BookReading) => refused.map(({ line, why }) => `${line}: ${why}`)

const layout = (edited: { ok: true; layout: Layout } | { ok: false; sentence: string }): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

describe('a file of prices', () => {
  test('has its columns in any order and by their names in any letters, and says which it does not know', async () => {
    const { added, unknownColumns, same } = await reading(
      'PRICE;Colour;Key;Quote_date\n9,60;red;screw;2026-04-01\n',
    )
    expect(added.map(({ after }) => after)).toEqual([rowOf('screw', { cents: 960, date: '2026-04-01' })])
    expect(unknownColumns).toEqual(['Colour'])
    expect(same).toBe(0)
  })

  test('leaves what stands where a column is not there or a cell is empty, but an empty price is no price', async () => {
    const { added } = await reading('key,price,supplier\ntee-pe-3/4,,\nscrew,9.60,Corner shop\n')
    expect(added.map(({ after }) => after)).toEqual([
      rowOf('tee-pe-3/4', { cents: undefined, date: TODAY }),
      rowOf('screw', { cents: 960, date: TODAY, supplier: 'Corner shop' }),
    ])
  })

  test('dates a price that it does not date itself, and makes no invented price a quote by its shelf', async () => {
    const { added, dated } = await reading('key,price,aisle\nscrew,11,Row 4\nhook-tie,3.40,Row 5\n')
    expect(added.map(({ after }) => after.date)).toEqual([TODAY, ''])
    expect(dated).toBe(1)
  })

  test('says what is new, what changes and what stands already', async () => {
    const quotes = [
      rowOf('screw', { cents: 900, date: '2026-01-01' }),
      rowOf('head-box', { cents: 1, date: TODAY }),
    ]
    const read = await reading('key,price\nscrew,9.60\nfoot-strainer,50\nhead-box,0.01\n', 'quotes', {
      book: [],
      quotes,
    })
    expect(read.changed.map(({ before, after }) => [before.cents, after.cents])).toEqual([[900, 960]])
    expect(read.added.map(({ before, after }) => [before.cents, after.cents])).toEqual([[5200, 5000]])
    expect(read.same).toBe(1)
  })

  test('into the book is read against the book, and says which of its prices a quote covers', async () => {
    const quotes = [rowOf('screw', { cents: 900, date: TODAY })]
    const read = await reading('key,price\nscrew,9.60\nfoot-strainer,50\n', 'book', { book: [], quotes })
    expect(read.added.map(({ before }) => before.cents)).toEqual([1080, 5200])
    expect(read.covered).toBe(1)
  })

  test('takes a length of lumber that the catalogue does not list', async () => {
    const { added } = await reading('key,price\nlumber-2x4@9ft,5.10\n')
    expect(added[0]?.after).toMatchObject({ cents: 510, stockMm: feet(9) })
  })

  test('tells each bad line with its number and leaves out nothing else', async () => {
    const text = [
      'key,price,pack,lead days,waste,taxed,quote date,price breaks,group',
      'screw,9.60,100,1,5 %,yes,2026-04-01,10: 9.00 | 50: 8.50,fasteners',
      'gloves,2,,,,,,,',
      'tee-pe-3/4,ask,,,,,,,',
      'tee-pe-1,"1,234",,,,,,,',
      '',
      'tee-pe-2,1,0,,,,,,',
      'elbow-pe-1,1,1,two,,,,,',
      'elbow-pe-2,1,1,,lots,,,,',
      'foot-strainer,1,1,,,maybe,,,',
      'head-box,1,1,,,,2026-02-30,,',
      'clamp-pe-1,1,1,,,,,10 at 9,',
      'clamp-pe-2,1,1,,,,,10: 1 | 10: 2,',
      'sight-tube,1,1,,,,,,toys',
      'screw,2,,,,,,,',
      'hook',
      ',1,,,,,,,',
      'goof-plug,1.00,25,3,2 spares,no,2026-04-02,,',
    ].join('\r\n')
    const read = await reading(text)
    expect(read.added.map(({ after }) => after.key)).toEqual(['screw', 'goof-plug'])
    expect(read.added[0]?.after.breaks).toEqual([
      { from: 10, cents: 900 },
      { from: 50, cents: 850 },
    ])
    expect(whys(read)).toEqual([
      '3: Nothing has the key "gloves".',
      '4: Its price “ask” is no amount of money: write it as 12.50.',
      '5: Its price “1,234” could be thousands or parts of one: write it with two decimals.',
      '7: Its pack, “0”, is no whole number from 1 to 1000000.',
      '8: Its lead days, “two”, is no whole number from 0 to 730.',
      '9: Its waste, “lots”, is none of cut, none, 5 %, 2 spares.',
      '10: Its taxed, “maybe”, is neither yes nor no.',
      '11: Its quote date “2026-02-30” is no day: write it as 2026-04-03.',
      '12: Its price breaks: “10 at 9” is no break such as 10: 9.60.',
      '13: Its price breaks name one number twice.',
      '14: Its group, “toys”, is none of lumber, conduit, gutter, drain, pipe, fittings, pit, pump, electrics, growing, fasteners, safety.',
      '15: Its key stands in line 2 already.',
      '16: It has 1 cell where the first line has 9.',
      '17: It has no key.',
    ])
  })

  test('counts lines as an editor does, breaks inside quotes with them', async () => {
    const read = await reading('key,name,price\nscrew,"Screw\n\ncoated",9\n\nnone such,x,1\n')
    expect(whys(read)).toEqual(['6: Nothing has the key "none such".'])
  })

  test('that ends within quotes loses that line and keeps those before it', async () => {
    const read = await reading('key,name,price\nscrew,Screw,9\nfoot-strainer,"Pump,5\nhead-box,Filter,1\n')
    expect(read.added.map(({ after }) => after.key)).toEqual(['screw'])
    expect(whys(read)).toEqual([
      '3: A quote mark opens in it and does not close, so this line and all behind it could not be read.',
    ])
  })

  test.each([
    ['', 'It is empty.'],
    ['name,price\nScrew,9\n', /no column “key”/],
    ['key,price,Price\nscrew,9,8\n', 'Its first line has the column “price” twice.'],
    ['key,layer\nscrew,base\n', 'It has no column to read besides the key.'],
    ['\u0000\u0001PNG\n', /no column “key”/],
  ])('%j is no price book', async (text, fault) => {
    expect(await tried(text)).toEqual({ fault: expect.stringMatching(fault) as string })
  })

  test('reads days as a spreadsheet saved them, where the sheet shows which number is the month', async () => {
    const dates = async (days: readonly string[]) => {
      const keys = ['screw', 'foot-strainer', 'head-box']
      const read = await reading(`key;quote date\n${days.map((day, i) => `${keys[i]};${day}`).join('\n')}\n`)
      return [...read.added.map(({ after }) => after.date), ...read.refused.map(() => 'refused')]
    }
    expect(await dates(['3.4.2026', '03.04.2026'])).toEqual(['2026-04-03', '2026-04-03'])
    expect(await dates(['3/4/2026', '3/25/2026'])).toEqual(['2026-03-04', '2026-03-25'])
    expect(await dates(['3/4/2026', '25/3/2026'])).toEqual(['2026-04-03', '2026-03-25'])
    expect(await dates(['3/4/2026', '4/4/2026'])).toEqual(['2026-04-04', 'refused'])
    expect(await dates(['13/4/2026', '4/13/2026'])).toEqual(['refused', 'refused'])
  })

  test('may be of UTF-8 or of the older set of a western sheet', () => {
    expect(textOf(new TextEncoder().encode('Fußplatte').buffer)).toBe('Fußplatte')
    expect(textOf(new Uint8Array([0x46, 0x75, 0xdf]).buffer)).toBe('Fuß')
  })
})

const texts = fc
  .string({ unit: fc.constantFrom(...Array.from('=+-@\t\n,;"\' a1＝é|:')), minLength: 1, maxLength: 20 })
  .map((text) => text.trim())
  .filter((text) => text !== '')
const cents = fc.integer({ min: 0, max: 100_000_000 })

/** Any row that a layer may hold, hostile words and all. */
const anyRow: fc.Arbitrary<PriceRow> = fc.record({
  key: fc.constantFrom(...baseBook.map(({ key }) => key)),
  name: texts,
  spec: texts,
  group: fc.constantFrom('lumber' as const, 'safety' as const),
  unit: texts,
  pack: fc.integer({ min: 1, max: 1000 }),
  cents: fc.option(cents, { nil: undefined }),
  breaks: fc
    .uniqueArray(fc.record({ from: fc.integer({ min: 1, max: 999 }), cents }), {
      maxLength: 4,
      selector: ({ from }) => from,
    })
    .map((breaks) => breaks.toSorted((a, b) => a.from - b.from)),
  supplier: texts,
  aisle: texts,
  leadDays: fc.integer({ min: 0, max: 730 }),
  waste: fc.oneof(
    fc.constant({ kind: 'cut' as const }),
    fc.constant({ kind: 'none' as const }),
    fc.record({
      kind: fc.constant('share' as const),
      share: fc.integer({ min: 0, max: 100 }).map((n) => n / 100),
    }),
    fc.record({ kind: fc.constant('spares' as const), count: fc.integer({ min: 0, max: 99 }) }),
  ),
  isWholePack: fc.boolean(),
  isTaxed: fc.boolean(),
  isReturnable: fc.boolean(),
  date: fc.constantFrom('2026-04-01', '2025-12-31'),
  note: texts,
})

const withStock = (row: PriceRow): PriceRow => {
  const { stockMm } = rowOf(row.key)
  return stockMm === undefined ? row : { ...row, stockMm }
}

const anyRows = fc
  .uniqueArray(anyRow, { selector: ({ key }) => key, minLength: 1, maxLength: 12 })
  .map((rows) => rows.map(withStock))

describe('written and read again', () => {
  test.each([',', ';'] as const)('parted by %s every row comes back as it was', async (separator) => {
    await fc.assert(
      fc.asyncProperty(anyRows, async (quotes) => {
        const text = sheetText(layerBook('quote', { book: [], quotes }), separator)
        const { added, refused } = await reading(text)
        expect(refused).toEqual([])
        expect(added.map(({ after }) => after)).toEqual(quotes)
      }),
      { seed: 20_260_405, numRuns: 200 },
    )
  })

  test('the whole book changes nothing', async () => {
    const layers = {
      book: [rowOf('screw', { cents: 900, date: TODAY })],
      quotes: [rowOf('lumber-2x4@9ft', { cents: 1, date: TODAY })],
    }
    const read = await reading(sheetText(wholeBook(layers)), 'quotes', layers)
    expect(read).toMatchObject({ added: [], changed: [], refused: [], unknownColumns: [], dated: 0 })
    expect(read.same).toBe(baseBook.length + 1)
  })

  test('an independent reader finds every row with its price and its layer', () => {
    const layers = {
      book: [rowOf('screw', { cents: 905, date: TODAY, name: '=run("x"), at once' })],
      quotes: [],
    }
    const records: Record<string, string>[] = parse(sheetText(wholeBook(layers)), {
      bom: true,
      columns: true,
    })
    expect(records.map(({ key }) => key)).toEqual(baseBook.map(({ key }) => key))
    expect(records.find(({ key }) => key === 'screw')).toMatchObject({
      price: '9.05',
      layer: 'book',
      name: `'=run("x"), at once`,
      'price breaks': '20: 9.60',
      waste: '5 %',
    })
    expect(records.find(({ key }) => key === 'tower')).toMatchObject({ price: '', layer: 'base' })
    expect(records.find(({ key }) => key === 'lumber-2x4@12ft')).toMatchObject({
      'stock length': '12ft',
      price: '7.44',
    })
  })

  test('one layer alone has its own rows', () => {
    const layers = { book: [rowOf('screw')], quotes: [rowOf('foot-strainer')] }
    expect(layerBook('book', layers).map(({ row }) => row.key)).toEqual(['screw'])
    expect(layerBook('quote', layers).map(({ row }) => row.key)).toEqual(['foot-strainer'])
    expect(layerBook('base', layers)).toHaveLength(baseBook.length)
  })
})

describe('edits of the book', () => {
  const quoted = (key: string, change: Partial<PriceRow>) => (from: Layout) =>
    layout(quote(from, key, change, TODAY))

  test('a price is a quote of today, and gone again shows what stood beneath', () => {
    const after = expectEditLaws(bay, quoted('screw', { cents: 905 }))
    expect(knownPrice('screw', after.counter)).toMatchObject({
      layer: 'quote',
      row: { cents: 905, date: TODAY },
    })
    const back = expectEditLaws(after, (from) => layout(dropRow(from, 'quotes', 'screw')))
    expect(back.counter.quotes).toEqual([])
    expect(dropRow(back, 'quotes', 'screw')).toEqual({ ok: true, layout: back })
  })

  test('no price is a quote too', () => {
    const after = expectEditLaws(bay, quoted('screw', { cents: undefined }))
    expect(knownPrice('screw', after.counter)?.row.cents).toBeUndefined()
    expect(knownPrice('screw', after.counter)?.layer).toBe('quote')
  })

  test('another aisle makes no invented price a quote of today', () => {
    const after = expectEditLaws(bay, quoted('screw', { aisle: '7' }))
    expect(knownPrice('screw', after.counter)).toMatchObject({ layer: 'quote', isPlaceholder: true })
  })

  test('a key that nothing has, or too high a price, is refused', () => {
    expect(quote(bay, 'gloves', { cents: 1 }, TODAY)).toMatchObject({ ok: false })
    expect(quote(bay, 'screw', { cents: 1e12 }, TODAY)).toMatchObject({ ok: false })
  })

  test('a file is taken in one, and what it does not name stays', async () => {
    const before = quoted('foot-strainer', { cents: 1 })(quoted('screw', { cents: 2 })(bay))
    const read = await reading('key,price\nscrew,9\nhead-box,8\n', 'quotes', before.counter)
    const after = expectEditLaws(before, (from) => layout(takeReading(from, read)))
    expect(after.counter.quotes.map(({ key, cents: each }) => [key, each])).toEqual([
      ['screw', 900],
      ['foot-strainer', 1],
      ['head-box', 800],
    ])
    expect(layout(clearLayer(after, 'quotes')).counter.quotes).toEqual([])
  })
})
