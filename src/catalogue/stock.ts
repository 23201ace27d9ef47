import { feet, inches } from '../units/length'
import { conduits } from './conduit'
import { gutters } from './gutter'
import { finder } from './lookup'
import { lumbers } from './lumber'
import { drainPipes, polys } from './pipe'

/** Anything that pieces are cut from, whatever it is. */
export interface StockItem {
  readonly key: string
  readonly title: string
  readonly form: 'stick' | 'coil'
  /** Lengths that can be bought, shortest first, mm. */
  readonly lengthsMm: readonly number[]
  /** `saw`: every cut eats a kerf. `none`: snips, a tubing cutter or a knife part it without loss. */
  readonly kerf: 'saw' | 'none'
}

type Named = Pick<StockItem, 'key' | 'title'>

const stock = (
  { key, title }: Named,
  form: StockItem['form'],
  lengthsMm: readonly number[],
  kerf: StockItem['kerf'],
): StockItem => ({ key, title, form, lengthsMm, kerf })

export const stocks: readonly StockItem[] = [
  ...lumbers.map((lumber) => stock(lumber, 'stick', lumber.lengthsMm, 'saw')),
  ...conduits.map((conduit) => stock(conduit, 'stick', [conduit.stickMm], 'none')),
  ...gutters.map((gutter) => stock(gutter, 'stick', [gutter.sectionMm], 'none')),
  ...drainPipes.map((pipe) => stock(pipe, 'stick', [pipe.stickMm], 'saw')),
  ...polys.map((poly) => stock(poly, 'coil', [poly.coilMm], 'none')),
]

/** The stock of a catalogue key, such as `lumber-2x4` or `conduit-3/4`. */
export const stockOf: (key: string) => StockItem = finder('stock', stocks, (item) => item.key)

/** Key of the price book's row for a length of stock, by the length that it is sold by: `lumber-2x4@12ft`, `lumber-2x4@104.625in`. */
export const stockKey = (stock: string, nominalMm: number): string => {
  const inchesLong = Math.round((nominalMm / inches(1)) * 1000) / 1000
  const feetLong = (inchesLong * inches(1)) / feet(1)
  return Number.isInteger(Math.round(feetLong * 1e6) / 1e6)
    ? `${stock}@${Math.round(feetLong)}ft`
    : `${stock}@${inchesLong}in`
}
