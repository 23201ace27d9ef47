import { isStale } from '../../model/quoteDate'
import type { CutLine, CutList } from '../../model/cutList'
import type { PriceRow } from '../../model/priceRow'
import type { ShopLine, ShopList, ShopTotals, ShopUnit, SupplierList } from '../../model/shop'
import { feet, MM_PER_M, type Units } from '../../units/length'
import { money } from '../../units/money'
import { thousands } from '../../units/thousands'

/** What stands where there is no price, which is never 0. */
const NO_PRICE = '—'

export const priceWords = (cents: number | undefined, currency: string): string =>
  cents === undefined ? NO_PRICE : money(cents, currency)

/** Thousands apart; parts of one to a tenth while they are a good part of it, and of less than one to a hundredth. */
const plain = (count: number): string => {
  if (count < 1) return String(Math.round(count * 100) / 100)
  const tenths = Math.round(count * 10) / 10
  const shown = tenths < 10 ? tenths : Math.round(count)
  return thousands(shown)
}

/** A share as it was typed: `3 %`, `6.25 %`. */
const perCent = (share: number): string => `${Number((share * 100).toFixed(3))} %`

const inUnit: Readonly<Record<Units, Readonly<Record<ShopUnit, (count: number) => string>>>> = {
  'feet-inches': {
    piece: plain,
    ft: (count) => `${plain(count)} ft`,
    ft2: (count) => `${plain(count)} sq ft`,
  },
  metric: {
    piece: plain,
    ft: (count) => `${plain(feet(count) / MM_PER_M)} m`,
    ft2: (count) => `${plain((count * feet(1) ** 2) / MM_PER_M ** 2)} m²`,
  },
}

/** So many pieces, or so much of a coil or a sheet: `1,926`, `116 ft`, `35 m`. */
export const amountWords = (count: number, unit: ShopUnit, units: Units): string => inUnit[units][unit](count)

/** `box` to `boxes`, `coil` to `coils`: what a price book calls one of a thing. */
const many = (unit: string, count: number): string => {
  if (count === 1 || unit === '') return unit
  if (/(?:^| )foot$/.test(unit)) return unit.replace(/foot$/, 'feet')
  return /(?:s|x|ch|sh)$/.test(unit) ? `${unit}es` : `${unit}s`
}

/** So many of what is sold: `21 boxes`, `2 coils`; of what is sold by the piece the number alone. */
const soldWords = ({ pack, unit }: PriceRow, packs: number): string =>
  pack === 1 && (unit === 'piece' || unit === '') ? plain(packs) : `${plain(packs)} ${many(unit, packs)}`

/** What of it to put in the cart: `21 boxes`, `2 coils`, `12`; of what is cut off the roll how much: `38 sq ft`. */
export const packsWords = ({ price: { row }, packs, bought, unit }: ShopLine, units: Units): string =>
  row.isWholePack ? soldWords(row, packs) : amountWords(bought, unit, units)

/** What it is sold by: `box of 100`, `coil`, `piece`, `foot`. */
export const packWords = ({ price: { row }, unit }: ShopLine, units: Units): string => {
  const one = row.unit === '' ? 'piece' : row.unit
  return !row.isWholePack || row.pack === 1 ? one : `${one} of ${amountWords(row.pack, unit, units)}`
}

/** What to ask for at the till: `21 boxes of 100`, `2 coils`, `80 boards`, `12`, `38 sq ft`. */
export const buyWords = (line: ShopLine, units: Units): string => {
  const { row } = line.price
  const of = !row.isWholePack || row.pack === 1 ? '' : ` of ${amountWords(row.pack, line.unit, units)}`
  return `${packsWords(line, units)}${of}`
}

/** What is bought beyond the count: the rule of its row and what it comes to, `3 %: 15`; empty where nothing is. */
export const spareWords = ({ price: { row }, spare, unit }: ShopLine, units: Units): string => {
  if (spare <= 0) return ''
  const amount = amountWords(spare, unit, units)
  return row.waste.kind === 'share' ? `${perCent(row.waste.share)}: ${amount}` : amount
}

/** `Tee, 3/4 in poly pipe`. */
export const thingWords = ({ name, price: { row } }: ShopLine): string =>
  row.spec === '' ? name : `${name}, ${row.spec}`

/** What more there is to say of a line: whose price it is, how old, what a break saves, what can go back. */
export const lineNotes = (line: ShopLine, currency: string, units: Units, day: string): string[] => {
  const { price, buyUp, boughtCents, unit } = line
  const { row, layer, isPlaceholder } = price
  return [
    ...(boughtCents === undefined ? ['No price'] : []),
    ...(isPlaceholder ? ['Placeholder'] : []),
    ...(!isPlaceholder && layer === 'quote' ? ['Quote'] : []),
    ...(!isPlaceholder && layer === 'book' ? ['Supplier’s book'] : []),
    ...(isStale(row, day) ? [`Asked on ${row.date}, more than 60 days ago`] : []),
    ...(buyUp && boughtCents !== undefined
      ? [
          `Buy ${soldWords(row, buyUp.packs)}, it costs ${money(boughtCents - buyUp.cents, currency)} less, and ${amountWords(buyUp.over, unit, units)} ${unit === 'piece' && buyUp.over === 1 ? 'is' : 'are'} over for spares or the next row`,
        ]
      : []),
    ...(row.isReturnable ? [] : ['Can’t go back']),
  ]
}

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`)

/** When to order: `order 21 days ahead`; nothing for what is on the shelf. */
export const leadWords = (leadDays: number): string => (leadDays > 0 ? `order ${days(leadDays)} ahead` : '')

/** Whose list it is: `Tower maker`. */
export const supplierWords = ({ supplier }: Pick<SupplierList, 'supplier'>): string =>
  supplier === '' ? 'No supplier named' : supplier

/** What is paid in one place, with how much of it nobody knows: `$1,252.00`, `$20.00 and 2 unpriced`, `2 unpriced`. */
export const supplierSum = ({ lines, totals }: SupplierList, currency: string): string =>
  [
    ...(totals.unpriced < lines.length ? [money(totals.boughtCents, currency)] : []),
    ...(totals.unpriced > 0 ? [`${totals.unpriced} unpriced`] : []),
  ].join(' and ')

/** How many prices of a list are too old. */
export const staleIn = ({ suppliers }: ShopList, day: string): number =>
  suppliers.reduce((sum, { lines }) => sum + lines.filter(({ price }) => isStale(price.row, day)).length, 0)

/** What a total is worth, in sentences; none where every line has a price of somebody's own. */
export const bannerWords = ({ unpriced, placeholders }: ShopTotals, stale: number): string[] => [
  ...(unpriced > 0
    ? [`${unpriced === 1 ? '1 item is' : `${unpriced} items are`} unpriced, and in no sum.`]
    : []),
  ...(placeholders > 0
    ? [
        `${placeholders === 1 ? '1 price is an invented placeholder' : `${placeholders} prices are invented placeholders`}: put your own in the price book.`,
      ]
    : []),
  ...(stale > 0 ? [`${stale === 1 ? '1 price is' : `${stale} prices are`} more than 60 days old.`] : []),
]

const piecesIn = (lines: readonly CutLine[]): number => lines.reduce((sum, { count }) => sum + count, 0)

/** Pieces that no stock makes are bought nowhere, and the list must say so. */
export const unmadeWords = (cuts: readonly CutList[]): string[] =>
  cuts.flatMap(({ title, tooLong, ranOut }) => {
    const count = piecesIn([...tooLong, ...ranOut])
    return count === 0
      ? []
      : [
          `${count === 1 ? '1 piece' : `${count} pieces`} of ${title} can’t be made from what is on offer, and ${count === 1 ? 'is' : 'are'} not on this list.`,
        ]
  })

/** The sums under a list, in the order in which they are paid. */
export const totalRows = (
  { neededCents, boughtCents, taxCents }: ShopTotals,
  tax: number,
  currency: string,
): readonly (readonly [string, string])[] => [
  ['Needed', money(neededCents, currency)],
  ['Bought, with spares, in whole packs', money(boughtCents, currency)],
  ...(tax > 0
    ? [
        [`Tax of ${perCent(tax)} on what is taxed`, money(taxCents, currency)] as const,
        ['To pay', money(boughtCents + taxCents, currency)] as const,
      ]
    : []),
]
