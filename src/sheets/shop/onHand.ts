import { stockOf } from '../../catalogue/stock'
import type { CutList, StockCount } from '../../model/cutList'
import { counted, type Row, said, type Table } from '../../model/table'
import { thousands } from '../../units/thousands'
import { writeOnTape } from '../../units/writeLength'
import { writeStock } from '../../units/writeStock'
import type { Units } from '../../units/length'

type Fate = 'leftover' | 'sawn'

const FATES: Readonly<Record<Fate, string>> = {
  leftover: 'Leftover on hand, used up by this plan',
  sawn: 'Bought and sawn already',
}

const rowOf = ({ stock, title }: CutList, { stockMm, count }: StockCount, fate: Fate, units: Units): Row => ({
  key: `${fate}:${stock}@${stockMm}`,
  cells: [
    said(title),
    // A leftover is what a tape finds; what was bought is called what the yard calls it.
    counted(stockMm, fate === 'leftover' ? writeOnTape(stockMm, units) : writeStock(stockMm, units)),
    counted(count, thousands(count)),
    said(FATES[fate]),
  ],
})

/** What is not bought since it is here: leftovers that the plan uses, and boards that are sawn. */
export const onHandTable = (cuts: readonly CutList[], units: Units): Table => ({
  id: 'shop-on-hand',
  title: 'On hand: not bought again',
  columns: [
    { key: 'stock', title: 'Stock', unit: 'text' },
    { key: 'lengthMm', title: 'Length', unit: 'mm' },
    { key: 'count', title: 'How many', unit: 'count' },
    { key: 'why', title: 'Why', unit: 'text' },
  ],
  rows: cuts.flatMap((list) => [
    ...list.leftovers.map((one) => rowOf(list, one, 'leftover', units)),
    ...list.sawn.map((one) => rowOf(list, one, 'sawn', units)),
  ]),
})

/** The longest that the truck must carry: `Longest on the truck: 12 ft, 128 of 2x4 lumber.`; nothing where no stick is bought. */
export const truckWords = (cuts: readonly CutList[], units: Units): readonly string[] => {
  const sticks = cuts
    .filter(({ stock }) => stockOf(stock).form === 'stick')
    .flatMap(({ title, bought }) => bought.map((one) => ({ ...one, title })))
  const longestMm = sticks.reduce((most, { stockMm }) => Math.max(most, stockMm), 0)
  if (longestMm === 0) return []
  const those = sticks
    .filter(({ stockMm }) => stockMm === longestMm)
    .map(({ count, title }) => `${thousands(count)} of ${title}`)
  return [`Longest on the truck: ${writeStock(longestMm, units)}, ${those.join(', ')}.`]
}
