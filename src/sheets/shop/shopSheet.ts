import { shopList } from '../../evaluate/shop/shopList'
import { STALE_DAYS } from '../../model/quoteDate'
import type { ShopList } from '../../model/shop'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { onHandTable, truckWords } from './onHand'
import { bannerWords, leadWords, staleIn, supplierWords, unmadeWords } from './shopWords'
import { type Buyer, supplierTable, totalsTable } from './supplierTable'

/** Said where prices have dates, since a paper grows older in the pocket. */
const ageWords = (list: ShopList): readonly string[] => {
  const dates = list.suppliers.flatMap(({ lines }) => lines.map(({ price }) => price.row.date))
  const oldest = dates.filter((date) => date !== '').toSorted()[0]
  return oldest === undefined
    ? []
    : [`The oldest price was asked on ${oldest}; ask again what is more than ${STALE_DAYS} days old.`]
}

/** What the sums are worth and what must be known before the first shop. */
const beforeShopping = (list: ShopList, { now }: PlanOnPaper, { units, day }: Buyer): readonly Piece[] =>
  [
    [...bannerWords(list.totals, staleIn(list, day)), ...ageWords(list), ...unmadeWords(now.cuts)].join(' '),
    ...truckWords(now.cuts, units),
  ]
    .filter((text) => text !== '')
    .map((text) => words(text))

const onHand = (plan: PlanOnPaper, { units }: Buyer): readonly Piece[] => {
  const table = onHandTable(plan.now.cuts, units)
  return table.rows.length === 0 ? [] : [heading(table.title), tableOf(table)]
}

const bySupplier = (list: ShopList, buyer: Buyer): readonly Piece[] =>
  list.suppliers.flatMap((supplier) => {
    const title = [supplierWords(supplier), leadWords(supplier.leadDays)].filter(Boolean).join(', ')
    return [heading(title), tableOf(supplierTable(supplier, buyer), true)]
  })

const piecesOf = (plan: PlanOnPaper, { units, dateText }: SheetOptions): readonly Piece[] => {
  const { cuts, counts, layout } = plan.now
  const list = shopList(cuts, counts, layout.counter)
  if (list.suppliers.length === 0) return []
  const buyer = { counter: layout.counter, units, day: dateText }
  return [
    ...beforeShopping(list, plan, buyer),
    heading('What it comes to'),
    tableOf(totalsTable(list, buyer)),
    ...cautionsFor('shop', plan.now, units),
    ...onHand(plan, buyer),
    ...bySupplier(list, buyer),
  ]
}

/** Everything to buy, by supplier and aisle, what takes longest to come first. */
export const shopSheet: Sheet = {
  id: 'shop',
  code: 'SH',
  title: 'Shop list',
  reader: 'Buyer',
  size: 'small',
  pieces: piecesOf,
}
