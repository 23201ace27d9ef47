import type { Counter } from '../../layout/counter'
import type { ShopLine, ShopList } from '../../model/shop'
import type { Units } from '../../units/length'
import { buyWords, leadWords, priceWords, supplierWords, thingWords, totalRows } from './shopWords'

interface TextOf {
  readonly title: string
  /** ISO date. */
  readonly day: string
  readonly banner: readonly string[]
  readonly counter: Pick<Counter, 'currency' | 'tax'>
  readonly units: Units
}

const lineText = (line: ShopLine, { counter, units }: TextOf): string =>
  `[ ] ${buyWords(line, units)}  ${thingWords(line)}  ${priceWords(line.boughtCents, counter.currency)}`

/** Lines of one aisle under its name. */
const aisleText = (aisle: string, lines: readonly ShopLine[], of: TextOf): string[] => [
  ...(aisle === '' ? [] : [`- ${aisle}`]),
  ...lines.map((line) => lineText(line, of)),
]

/** The aisles of a supplier's lines, in their order. */
export const aislesOf = (
  lines: readonly ShopLine[],
): readonly { readonly aisle: string; readonly lines: readonly ShopLine[] }[] => {
  const aisles = new Map<string, ShopLine[]>()
  for (const line of lines) {
    const { aisle } = line.price.row
    const known = aisles.get(aisle)
    if (known) known.push(line)
    else aisles.set(aisle, [line])
  }
  return [...aisles].map(([aisle, its]) => ({ aisle, lines: its }))
}

/** The list as plain text, to be sent to whoever shops: by supplier and aisle, with a box to tick before each line. */
export const shopText = (list: ShopList, of: TextOf): string => {
  const { title, day, banner, counter } = of
  const suppliers = list.suppliers.flatMap((supplier) => [
    '',
    [supplierWords(supplier), leadWords(supplier.leadDays)].filter(Boolean).join(', '),
    ...aislesOf(supplier.lines).flatMap(({ aisle, lines }) => aisleText(aisle, lines, of)),
  ])
  return [
    `Shop list, ${title}, ${day}`,
    ...banner,
    ...suppliers,
    '',
    ...totalRows(list.totals, counter.tax, counter.currency).map(([name, sum]) => `${name}: ${sum}`),
    '',
  ].join('\n')
}
