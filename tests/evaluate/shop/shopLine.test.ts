import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { shopLine } from '../../../src/evaluate/shop/shopLine'
import type { KnownPrice, PriceRow } from '../../../src/model/priceRow'
import type { Wanted } from '../../../src/model/shop'

const plainRow: PriceRow = {
  key: 'tee-pe-1',
  name: 'Tee',
  spec: '1 in',
  group: 'fittings',
  unit: 'piece',
  pack: 1,
  cents: 100,
  breaks: [],
  supplier: 'Shop',
  aisle: 'A',
  leadDays: 1,
  waste: { kind: 'none' },
  isWholePack: true,
  isTaxed: true,
  isReturnable: true,
  date: '2026-05-01',
  note: '',
}

const priced = (changes: Partial<PriceRow>): KnownPrice => ({
  row: { ...plainRow, ...changes },
  layer: 'quote',
  isPlaceholder: false,
})

const pieces = (needed: number): Wanted => ({
  key: 'tee-pe-1',
  title: 'Tee',
  unit: 'piece',
  needed,
  inOne: 1,
  planned: 0,
})

const coils = (feet: number, planned: number): Wanted => ({
  ...pieces(feet),
  unit: 'ft',
  inOne: 100,
  planned,
})

describe('a line of the shop list, by hand', () => {
  test('1,926 screws and 5 % are 2,022, in 21 boxes of 100 at the price from 20 boxes on', () => {
    // 5 % of 1,926 are 96.3, so 96; 21 boxes x 9.60 = 201.60, of which 1,926 / 2,100 = 184.90 go into the bay.
    const screws = priced({
      pack: 100,
      unit: 'box',
      cents: 1080,
      breaks: [{ from: 20, cents: 960 }],
      waste: { kind: 'share', share: 0.05 },
    })
    const line = shopLine(pieces(1926), screws)
    expect(line.needed + line.spare).toBe(2022)
    expect(line).toMatchObject({ packs: 21, bought: 2100, packCents: 960, boughtCents: 20_160 })
    expect(line.neededCents).toBe(18_490)
  })

  test('buy 50, it costs less: 46 at 1.00 are 46.00, 50 at 0.90 are 45.00', () => {
    const row = priced({ breaks: [{ from: 50, cents: 90 }] })
    expect(shopLine(pieces(46), row).buyUp).toEqual({ packs: 50, cents: 4500, over: 4 })
    // 45 at 1.00 are 45.00: no less; 44 cost less as they are.
    expect(shopLine(pieces(45), row).buyUp).toBeUndefined()
    expect(shopLine(pieces(44), row).buyUp).toBeUndefined()
  })

  test('the cheapest of several breaks above is told', () => {
    const breaks = [
      { from: 50, cents: 95 },
      { from: 60, cents: 75 },
    ]
    // 49 at 1.00 = 49.00; 50 at 0.95 = 47.50; 60 at 0.75 = 45.00.
    expect(shopLine(pieces(49), priced({ breaks })).buyUp).toEqual({ packs: 60, cents: 4500, over: 11 })
  })

  test('a coil is bought whole, and as often as the cutting plan says', () => {
    // Three pieces of 60 ft are 180 ft, and yet each takes a coil of 100 ft.
    expect(shopLine(coils(180, 3), priced({}))).toMatchObject({ packs: 3, bought: 300 })
    // 98 ft and 3 % are 100.94 ft: a second coil, of 200 ft at 2.00 in all, 98 / 200 of it needed.
    const line = shopLine(coils(98, 1), priced({ waste: { kind: 'share', share: 0.03 } }))
    expect(line).toMatchObject({ packs: 2, bought: 200, boughtCents: 200, neededCents: 98 })
  })

  test('2 % of 90 sticks are 2 more, of 2 sticks none, of 25 one', () => {
    // 1.8, 0.04 and 0.5 of a stick, to the nearest whole one.
    const sticks = (count: number) => ({ ...pieces(count), planned: count })
    const bought = (count: number) =>
      shopLine(sticks(count), priced({ waste: { kind: 'share', share: 0.02 } })).packs
    expect([90, 2, 24, 25].map(bought)).toEqual([92, 2, 24, 26])
  })

  test('a spare valve', () => {
    expect(shopLine(pieces(6), priced({ waste: { kind: 'spares', count: 1 } }))).toMatchObject({
      spare: 1,
      packs: 7,
    })
  })

  test('sheet is cut to the whole square foot', () => {
    const sheet: Wanted = { ...pieces(37.28), unit: 'ft2' }
    expect(shopLine(sheet, priced({ isWholePack: false, cents: 260 }))).toMatchObject({
      bought: 38,
      boughtCents: 9880,
    })
  })

  test('without a price there are packs to buy and no sum', () => {
    const { cents: _, ...blank } = plainRow
    const line = shopLine(pieces(480), { row: blank, layer: 'quote', isPlaceholder: false })
    expect(line).toMatchObject({ packs: 480, bought: 480 })
    expect([line.packCents, line.neededCents, line.boughtCents, line.buyUp]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ])
  })

  test('a share that comes out whole but for rounding takes no pack more', () => {
    // 300 x 1.1 is 330.00000000000006 in the machine: 33 packs of 10, not 34.
    expect(shopLine(pieces(300), priced({ pack: 10, waste: { kind: 'share', share: 0.1 } })).packs).toBe(33)
  })
})

const breaks = fc
  .uniqueArray(
    fc.record({ from: fc.integer({ min: 2, max: 400 }), cents: fc.integer({ min: 0, max: 5000 }) }),
    {
      maxLength: 4,
      selector: ({ from }) => from,
    },
  )
  .map((list) => list.toSorted((a, b) => a.from - b.from))

const waste = fc.oneof(
  fc.constantFrom({ kind: 'cut' } as const, { kind: 'none' } as const),
  fc.integer({ min: 0, max: 30 }).map((per) => ({ kind: 'share', share: per / 100 }) as const),
  fc.integer({ min: 0, max: 5 }).map((count) => ({ kind: 'spares', count }) as const),
)

const anyRow = fc
  .record({
    pack: fc.integer({ min: 1, max: 120 }),
    cents: fc.option(fc.integer({ min: 0, max: 5000 }), { nil: undefined }),
    breaks,
    waste,
    isWholePack: fc.boolean(),
  })
  .map(({ cents, ...rest }) => ({ ...rest, ...(cents === undefined ? { cents: undefined } : { cents }) }))

const anyWanted = fc.oneof(
  fc.integer({ min: 1, max: 3000 }).map(pieces),
  fc
    .record({ feet: fc.integer({ min: 1, max: 3000 }), more: fc.nat(3) })
    .map(({ feet, more }) => coils(feet, Math.ceil(feet / 100) + more)),
)

describe('whatever the row', () => {
  const holds = (check: (wanted: Wanted, price: KnownPrice) => void) =>
    fc.assert(
      fc.property(anyWanted, anyRow, (wanted, row) => check(wanted, priced(row))),
      { seed: 8_001, numRuns: 500 },
    )

  test('what is bought holds what is needed and to spare, and less than one pack beyond', () => {
    holds((wanted, price) => {
      const line = shopLine(wanted, price)
      expect(line.bought).toBeGreaterThan(line.needed + line.spare - 1e-5)
      const least = Math.max(
        line.needed + line.spare,
        price.row.isWholePack ? wanted.planned * wanted.inOne : 0,
      )
      const step = price.row.isWholePack ? price.row.pack * wanted.inOne : 1
      expect(line.bought).toBeLessThan(least + step + 1e-5)
    })
  })

  test('buying up never costs more, and leaves something over', () => {
    holds((wanted, price) => {
      const { buyUp, boughtCents, packs } = shopLine(wanted, price)
      if (!buyUp) return
      expect(buyUp.cents).toBeLessThan(boughtCents ?? -1)
      expect(buyUp.packs).toBeGreaterThan(packs)
      expect(buyUp.over).toBeGreaterThan(0)
    })
  })

  test('what is needed costs no more than what is bought; what has no price costs neither', () => {
    holds((wanted, price) => {
      const { neededCents, boughtCents } = shopLine(wanted, price)
      expect(neededCents === undefined).toBe(boughtCents === undefined)
      expect(neededCents ?? 0).toBeLessThanOrEqual(boughtCents ?? 0)
    })
  })
})
