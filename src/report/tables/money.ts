import { labour } from '../../evaluate/shop/labour'
import { shopList } from '../../evaluate/shop/shopList'
import type { LabourLine, ShopLine, ShopList, SupplierList } from '../../model/shop'
import { thousands } from '../../units/thousands'
import { countField, type Field, numberField, quiet, sectionOf, textField, type Section } from '../fields'
import type { Told } from '../told'

interface Bought {
  readonly supplier: SupplierList
  readonly line: ShopLine
}

const nothingUnder = (text: string, otherwise: string): string => (text === '' ? otherwise : text)

const tenths = (count: number): string => thousands(Math.round(count * 10) / 10)

const sourceOf = ({ price, boughtCents }: ShopLine): string => {
  if (boughtCents === undefined) return 'no price'
  return price.isPlaceholder ? 'placeholder' : price.layer
}

const shopFields = ({ money }: Told): readonly Field<Bought>[] => [
  textField('supplier', 'Supplier', ({ supplier }) => nothingUnder(supplier.supplier, 'none named')),
  quiet(countField('leadDays', 'Days ahead', ({ line }) => line.price.row.leadDays)),
  quiet(textField('aisle', 'Aisle', ({ line }) => line.price.row.aisle)),
  textField('item', 'Item', ({ line }) => [line.name, line.price.row.spec].filter(Boolean).join(', ')),
  quiet(textField('key', 'Key', ({ line }) => line.key)),
  numberField('needed', 'Needed', 'count', tenths, ({ line }) => line.needed),
  quiet(textField('unit', 'Unit', ({ line }) => line.unit)),
  quiet(numberField('spare', 'Spare', 'count', tenths, ({ line }) => line.spare)),
  numberField('packs', 'Buy', 'count', tenths, ({ line }) => line.packs),
  textField('packUnit', 'Of', ({ line }) => line.price.row.unit),
  quiet(countField('inPack', 'In one', ({ line }) => line.price.row.pack)),
  quiet(numberField('bought', 'Bought', 'count', tenths, ({ line }) => line.bought)),
  quiet(numberField('packCents', 'Price of one', 'cents', money, ({ line }) => line.packCents)),
  quiet(numberField('neededCents', 'Needed, money', 'cents', money, ({ line }) => line.neededCents)),
  numberField('boughtCents', 'Total', 'cents', money, ({ line }) => line.boughtCents),
  textField('priceFrom', 'Price from', ({ line }) => sourceOf(line)),
]

const listOf = ({ plan: { cuts, counts, layout } }: Told): ShopList => shopList(cuts, counts, layout.counter)

/** What is still to be bought, by supplier and aisle; a price of nobody's says `placeholder`, and none is never 0. */
export const shopSection = (told: Told): Section =>
  sectionOf({
    id: 'shop',
    title: 'To buy',
    fields: shopFields(told),
    items: listOf(told).suppliers.flatMap((supplier) => supplier.lines.map((line) => ({ supplier, line }))),
    keyOf: ({ line }) => line.key,
  })

interface Sum {
  readonly key: string
  readonly what: string
  readonly cents: number
  readonly unpriced: number
  readonly placeholders: number
}

const sumsOf = (told: Told): readonly Sum[] => {
  const toBuy = listOf(told).totals
  const { cuts, counts, layout } = told.plan
  const all = shopList(cuts, counts, layout.counter, 'counted').totals
  const { unpriced, placeholders } = toBuy
  return [
    { key: 'needed', what: 'Needed', cents: toBuy.neededCents, unpriced, placeholders },
    {
      key: 'bought',
      what: 'To buy, with spares, in whole packs',
      cents: toBuy.boughtCents,
      unpriced,
      placeholders,
    },
    { key: 'tax', what: 'Tax on what is to buy', cents: toBuy.taxCents, unpriced, placeholders },
    {
      key: 'bay',
      what: 'The bay, with what is sawn already',
      cents: all.boughtCents,
      unpriced: all.unpriced,
      placeholders: all.placeholders,
    },
  ]
}

const sumFields = ({ money }: Told): readonly Field<Sum>[] => [
  quiet(textField('key', 'Key', ({ key }) => key)),
  textField('what', 'Money', ({ what }) => what),
  numberField('cents', 'Sum', 'cents', money, ({ cents }) => cents),
  countField('unpriced', 'Without a price', ({ unpriced }) => unpriced),
  countField('placeholders', 'Invented prices', ({ placeholders }) => placeholders),
]

/** The sums under the shop list; what has no price is in none of them. */
export const moneySection = (told: Told): Section =>
  sectionOf({
    id: 'money',
    title: 'Money',
    fields: sumFields(told),
    items: sumsOf(told),
    keyOf: ({ key }) => key,
  })

const hours = (value: number): string => thousands(value.toFixed(1))

const labourFields: readonly Field<LabourLine>[] = [
  quiet(textField('task', 'Task', ({ task }) => task)),
  textField('title', 'Work', ({ title }) => title),
  numberField('count', 'Count', 'count', tenths, ({ count }) => count),
  textField('unit', 'Of', ({ unit }) => unit),
  numberField('minutesEach', 'Minutes each', 'min', tenths, ({ minutesEach }) => minutesEach),
  numberField('hours', 'Hours', 'h', hours, (line) => line.hours),
]

/** Hours of one person, task by task, before supervision and the crew's factor. */
export const labourSection = ({ plan: { bay, layout } }: Told): Section =>
  sectionOf({
    id: 'labour',
    title: 'Work',
    fields: labourFields,
    items: labour(bay, layout.counter).lines,
    keyOf: ({ task }) => task,
  })
