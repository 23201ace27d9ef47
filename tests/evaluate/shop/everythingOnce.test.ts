import { describe, expect, test } from 'vitest'
import { fittingOf } from '../../../src/catalogue/fittings'
import { stockKey, stockOf } from '../../../src/catalogue/stock'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { shopList } from '../../../src/evaluate/shop/shopList'
import type { Built } from '../../../src/model/built'
import { scenarios } from '../../support/scenarios'

/*
 * The shop list against the built things themselves, without the take-off and without the sums of the list: all that stands among
 * the fittings of a part is bought, all that a stick or a tube is made of is bought, each once and in enough packs.
 */

const fittingsIn = (built: readonly Built[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { fittings } of built)
    for (const { item, amount = 1 } of fittings) counts.set(item, (counts.get(item) ?? 0) + amount)
  return counts
}

const IN_FT2 = 304.8 ** 2

describe.each(Object.entries(scenarios))('everything in %s is on the shop list', (_, layoutOf) => {
  const { bay, cuts, counts, layout } = beforeChecks(layoutOf())
  const built = [...bay.built, ...bay.joinedPipes]
  const list = shopList(cuts, counts, layout.counter)
  const lines = list.suppliers.flatMap((supplier) => supplier.lines)
  const lineOf = (key: string) => lines.find((line) => line.key === key)

  test('once', () => {
    expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length)
  })

  test('every fitting of every part that is bought and no work', () => {
    const joined = (kind: string) =>
      bay.joins.filter((join) => join.kind === kind && join.to !== undefined).length
    const fittings = new Map(fittingsIn(built))
    // A boot for each drain that comes into a pit, and a drop for each outlet over a drain, belong to no part alone.
    if (fittings.has('pit-boot'))
      fittings.set('pit-boot', (fittings.get('pit-boot') ?? 0) + joined('drain-to-pit'))
    fittings.set('drop', joined('outlet-to-drain'))
    for (const [item, count] of fittings) {
      const { unit, isWork } = fittingOf(item)
      const needed = unit === 'ft2' ? count / IN_FT2 : count
      if (isWork) expect(lineOf(item)).toBeUndefined()
      else expect([item, lineOf(item)?.needed ?? 0]).toEqual([item, expect.closeTo(needed, 6)])
    }
  })

  test('every length of board, stick and coil that a cut list buys, and none beside', () => {
    const bought = cuts.flatMap((cut) => cut.bought.map((each) => stockKey(cut.stock, each.stockMm)))
    const stock = lines.filter(({ key }) => key.includes('@'))
    expect(stock.map(({ key }) => key).toSorted()).toEqual(bought.toSorted())
  })

  test('as much of every stock as its pieces are long', () => {
    const wanted = new Map<string, number>()
    for (const { sticks, tubes } of built)
      for (const { stock, lengthMm } of [...sticks, ...tubes])
        wanted.set(stock, (wanted.get(stock) ?? 0) + lengthMm)
    for (const [stock, mm] of wanted) {
      const boughtMm = lines
        .filter(({ key }) => key.startsWith(`${stock}@`))
        .reduce(
          (sum, { bought, price: { row } }) =>
            sum + (stockOf(stock).form === 'coil' ? bought * 304.8 : bought * (row.stockMm ?? 0)),
          0,
        )
      // But for what pieces lose when each is rounded to a tick.
      expect(boughtMm / mm).toBeGreaterThanOrEqual(0.9999)
    }
  })

  test('and the totals are what is paid for packs at their price', () => {
    const paid = lines.reduce(
      (sum, { packs, packCents }) => sum + (packCents === undefined ? 0 : Math.round(packs * packCents)),
      0,
    )
    expect(list.totals.boughtCents).toBe(paid)
    for (const { packs, price, bought, needed, spare, key } of lines) {
      expect([key, bought >= needed + spare - 1e-6]).toEqual([key, true])
      // One pack fewer would not do, but for coils whose pieces can't be joined from ends.
      const isCoil = price.row.stockMm !== undefined
      if (price.row.isWholePack && !isCoil)
        expect([key, (packs - 1) * price.row.pack < needed + spare]).toEqual([key, true])
    }
  })
})
