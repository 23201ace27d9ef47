import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { baseRow } from '../../../src/catalogue/priceBook/baseBook'
import { stockKey } from '../../../src/catalogue/stock'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { shopList } from '../../../src/evaluate/shop/shopList'
import type { Layout } from '../../../src/layout/schema'
import type { PriceLayers, PriceRow } from '../../../src/model/priceRow'
import type { ShopLine, ShopList } from '../../../src/model/shop'
import { feet } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

const leanTo = scenarios['lintel-lane-lean-to']!()
const kestrel = scenarios['kestrel-bend-house-2']!()

type Priced = PriceLayers & Pick<Layout['counter'], 'tax'>

const listOf = (layout: Layout, counter: Partial<Priced> = {}): ShopList => {
  const { cuts, counts } = beforeChecks(layout)
  return shopList(cuts, counts, { ...layout.counter, ...counter })
}

const linesOf = ({ suppliers }: ShopList): readonly ShopLine[] => suppliers.flatMap(({ lines }) => lines)

const lineIn = (list: ShopList, key: string): ShopLine => {
  const line = linesOf(list).find((each) => each.key === key)
  if (!line)
    throw new RangeError(
      `No line ${key} in ${linesOf(list)
        .map((each) => each.key)
        .join(', ')}`,
    )
  return line
}

const quote = (key: string, changes: Partial<PriceRow>): PriceRow => {
  const row = baseRow(key)
  if (!row) throw new RangeError(`No row ${key}`)
  return { ...row, ...changes }
}

describe('the sample bay’s list', () => {
  const list = listOf(kestrel)

  test('2,022 screws in 21 boxes: worked example of the trade notes, hand arithmetic', () => {
    // 18 x 66 pairs + 8 x 18 splices + 4 x 81 bearers + 6 x 45 braces = 1,188 + 144 + 324 + 270 = 1,926; + 5 %.
    const { needed, spare, packs } = lineIn(list, 'screw')
    expect([needed, Math.round(needed + spare), packs]).toEqual([1926, 2022, 21])
  })

  test('480 microtubes of 3 ft are 1,440 ft, with 3 % 1,483 ft: 15 coils of 100 ft', () => {
    const { needed, spare, packs, bought } = lineIn(list, 'tube-1/8@100ft')
    expect([needed, Math.round(needed + spare), packs, bought]).toEqual([1440, 1483, 15, 1500])
  })

  test('boards of each length have a line of their own, and what the plan buys of them', () => {
    const bought = beforeChecks(kestrel).cuts.find(({ stock }) => stock === 'lumber-2x4')?.bought ?? []
    expect(bought.length).toBe(2)
    for (const { stockMm, count } of bought)
      expect(lineIn(list, stockKey('lumber-2x4', stockMm)).packs).toBe(count)
  })

  test('work is not bought: there is no line for a hole', () => {
    const keys = linesOf(list).map(({ key }) => key)
    expect(keys.filter((key) => key.includes('hole') || key === 'bell-joint')).toEqual([])
  })

  test('what takes longest to come stands first', () => {
    const leads = list.suppliers.map(({ leadDays }) => leadDays)
    expect(leads).toEqual(leads.toSorted((a, b) => b - a))
  })

  test('in every supplier’s list the aisles come one after the other', () => {
    for (const { lines } of list.suppliers) {
      const aisles = lines.map(({ price }) => price.row.aisle)
      expect(aisles.filter((aisle, index) => aisle !== aisles[index - 1]).length).toBe(new Set(aisles).size)
    }
  })
})

describe('prices', () => {
  test('a quote left blank has no sum, and is counted; the rest of the total is as before without it', () => {
    const before = listOf(kestrel)
    const { boughtCents = 0 } = lineIn(before, 'foot-plate')
    expect(boughtCents).toBeGreaterThan(0)
    const { cents: _, ...row } = quote('foot-plate', { date: '2026-05-01' })
    const after = listOf(kestrel, { quotes: [row] })
    expect(lineIn(after, 'foot-plate').boughtCents).toBeUndefined()
    expect(after.totals.unpriced).toBe(before.totals.unpriced + 1)
    expect(after.totals.boughtCents).toBe(before.totals.boughtCents - boughtCents)
  })

  test('tax is of what is taxed', () => {
    // 132 foot plates at 2.00 are 264.00; 8.25 % of it is 21.78. Nothing else has a price that is taxed.
    const quotes = linesOf(listOf(kestrel)).map(({ key }) =>
      quote(key, key === 'foot-plate' ? { cents: 200, breaks: [], isTaxed: true } : { isTaxed: false }),
    )
    expect(listOf(kestrel, { quotes, tax: 0.0825 }).totals.taxCents).toBe(2178)
  })

  test('a thing that no book knows stands on the list without a price', () => {
    const { cuts } = beforeChecks(leanTo)
    const line = {
      item: 'no-such-thing',
      title: 'No such thing',
      group: 'pit',
      count: 3,
      unit: 'piece',
      isWork: false,
      perPart: new Map(),
    } as const
    const list = shopList(cuts, [line], leanTo.counter)
    expect(lineIn(list, 'no-such-thing')).toMatchObject({ name: 'No such thing', packs: 3 })
    expect(list.totals.unpriced).toBe(1)
  })
})

describe('leftovers and boards that are sawn', () => {
  const boards = (list: ShopList): number =>
    linesOf(list)
      .filter(({ key }) => key.startsWith('lumber-2x4@'))
      .reduce((sum, { packs }) => sum + packs, 0)

  test('a 12 ft board on hand is one fewer to buy, or one that is shorter', () => {
    const onHand: Layout = {
      ...kestrel,
      bench: { ...kestrel.bench, leftovers: [{ stock: 'lumber-2x4', lengthMm: feet(12), count: 10 }] },
    }
    const [before, after] = [listOf(kestrel), listOf(onHand)]
    expect(boards(after)).toBeLessThan(boards(before))
    expect(after.totals.boughtCents).toBeLessThan(before.totals.boughtCents)
  })

  test('boards sawn are not bought again, and count in what the bay costs', () => {
    const sawn: Layout = {
      ...kestrel,
      bench: { ...kestrel.bench, sawn: [{ stock: 'lumber-2x4', stockMm: feet(12), count: 5 }] },
    }
    const { cuts, counts, layout } = beforeChecks(sawn)
    const [left, counted] = [
      shopList(cuts, counts, layout.counter),
      shopList(cuts, counts, layout.counter, 'counted'),
    ]
    const twelve = 'lumber-2x4@12ft'
    expect(lineIn(counted, twelve).packs).toBe(lineIn(left, twelve).packs + 5)
  })
})

describe('whatever the prices', () => {
  const keys = linesOf(listOf(leanTo)).map(({ key }) => key)
  const quotes = fc
    .array(
      fc.record({
        key: fc.constantFrom(...keys),
        cents: fc.option(fc.nat(9000), { nil: undefined }),
        supplier: fc.constantFrom('', 'North yard', 'South yard'),
        isTaxed: fc.boolean(),
        pack: fc.integer({ min: 1, max: 50 }),
      }),
      { maxLength: 30 },
    )
    .map((rows) => rows.map(({ key, cents, ...changes }) => ({ ...quote(key, changes), cents })))

  test('the total is the sum of its lines, each thing stands once, and a blank is in no sum', () => {
    fc.assert(
      fc.property(quotes, fc.integer({ min: 0, max: 20 }), (rows, per) => {
        const list = listOf(leanTo, { quotes: rows, tax: per / 100 })
        const lines = linesOf(list)
        const priced = lines.flatMap(({ boughtCents }) => (boughtCents === undefined ? [] : [boughtCents]))
        expect(list.totals.boughtCents).toBe(priced.reduce((sum, cents) => sum + cents, 0))
        expect(list.totals.unpriced).toBe(lines.length - priced.length)
        expect(lines.map(({ key }) => key).sort()).toEqual(keys.toSorted())
        expect(list.totals.taxCents).toBe(
          list.suppliers.reduce((sum, { totals }) => sum + totals.taxCents, 0),
        )
      }),
      { seed: 8_002, numRuns: 60 },
    )
  })
})
