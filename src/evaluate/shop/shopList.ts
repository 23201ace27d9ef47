import { type PriceOf, pricesOf } from '../../catalogue/priceBook/knownPrice'
import type { Counter } from '../../layout/counter'
import type { CountLine } from '../../model/countLine'
import type { CutList } from '../../model/cutList'
import type { KnownPrice, PriceLayers } from '../../model/priceRow'
import { rememberEach } from '../../model/remember'
import type { ShopLine, ShopList, ShopTotals, SupplierList, Wanted } from '../../model/shop'
import { bySize } from '../../units/bySize'
import { shopLine } from './shopLine'
import { type SawnBoards, wantedOf } from './wanted'

/** A thing that no book has a row for: it stands on the list all the same, without a price. */
const unlisted = ({ key, title }: Wanted): KnownPrice => ({
  row: {
    key,
    name: title,
    spec: '',
    group: 'fittings',
    unit: 'piece',
    pack: 1,
    breaks: [],
    supplier: '',
    aisle: '',
    leadDays: 0,
    waste: { kind: 'none' },
    isWholePack: false,
    isTaxed: true,
    isReturnable: false,
    date: '',
    note: 'No row of the price book',
  },
  layer: 'base',
  isPlaceholder: false,
})

/** Prices by key, looked up once for as long as the layers are the same: a drag asks for all of them in every frame. */
const keptPrices = rememberEach<PriceLayers, null, PriceOf>((layers) => {
  const find = pricesOf(layers)
  const known = new Map<string, KnownPrice | undefined>()
  return (key) => {
    if (!known.has(key)) known.set(key, find(key))
    return known.get(key)
  }
})

/** A line for each thing that the bay wants, in no order. */
export const shopLines = (
  cuts: readonly CutList[],
  counts: readonly CountLine[],
  layers: PriceLayers,
  boards: SawnBoards = 'left-out',
): ShopLine[] => {
  const priceOf = keptPrices(layers, null)
  return wantedOf(cuts, counts, boards).map((wanted) =>
    shopLine(wanted, priceOf(wanted.key) ?? unlisted(wanted)),
  )
}

const total = <T>(things: readonly T[], of: (thing: T) => number): number =>
  things.reduce((sum, thing) => sum + of(thing), 0)

/** Tax is of the whole bill, rounded once, as a till does it. */
const totalsOf = (lines: readonly ShopLine[], tax: number): ShopTotals => ({
  neededCents: total(lines, ({ neededCents = 0 }) => neededCents),
  boughtCents: total(lines, ({ boughtCents = 0 }) => boughtCents),
  taxCents: Math.round(
    tax *
      total(
        lines.filter(({ price }) => price.row.isTaxed),
        ({ boughtCents = 0 }) => boughtCents,
      ),
  ),
  unpriced: lines.filter(({ boughtCents }) => boughtCents === undefined).length,
  placeholders: lines.filter(({ price }) => price.isPlaceholder).length,
})

const sumOf = (all: readonly ShopTotals[]): ShopTotals => ({
  neededCents: total(all, ({ neededCents }) => neededCents),
  boughtCents: total(all, ({ boughtCents }) => boughtCents),
  taxCents: total(all, ({ taxCents }) => taxCents),
  unpriced: total(all, ({ unpriced }) => unpriced),
  placeholders: total(all, ({ placeholders }) => placeholders),
})

const compare = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

/** Along the shelves: by aisle, then by name, small before big and shorter stock before longer. */
const byAisle = ({ price: { row: a } }: ShopLine, { price: { row: b } }: ShopLine): number =>
  compare(a.aisle, b.aisle) ||
  bySize(a.name, b.name) ||
  (a.stockMm ?? 0) - (b.stockMm ?? 0) ||
  bySize(a.spec, b.spec) ||
  compare(a.key, b.key)

const supplierList = (supplier: string, lines: readonly ShopLine[], tax: number): SupplierList => ({
  supplier,
  leadDays: Math.max(...lines.map(({ price }) => price.row.leadDays)),
  lines: lines.toSorted(byAisle),
  totals: totalsOf(lines, tax),
})

/** What has to be ordered longest ahead comes first. */
const byLead = (a: SupplierList, b: SupplierList): number =>
  b.leadDays - a.leadDays || compare(a.supplier, b.supplier)

/**
 * Everything that has to be bought for a bay, by supplier and aisle. What has no price has its line and is in no sum; leftovers
 * on hand and boards that are sawn are not bought again, unless boards sawn are `counted` for what the bay costs.
 */
export const shopList = (
  cuts: readonly CutList[],
  counts: readonly CountLine[],
  counter: PriceLayers & Pick<Counter, 'tax'>,
  boards: SawnBoards = 'left-out',
): ShopList => {
  const shelves = new Map<string, ShopLine[]>()
  for (const line of shopLines(cuts, counts, counter, boards)) {
    const { supplier } = line.price.row
    shelves.set(supplier, [...(shelves.get(supplier) ?? []), line])
  }
  const suppliers = [...shelves].map(([supplier, lines]) => supplierList(supplier, lines, counter.tax))
  return { suppliers: suppliers.sort(byLead), totals: sumOf(suppliers.map(({ totals }) => totals)) }
}
