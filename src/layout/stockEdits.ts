import { stockOf } from '../catalogue/stock'
import { measuresOf, type StockMeasures } from '../model/measuredStock'
import { inches, toTicks } from '../units/length'
import { asTyped } from '../units/precision'
import { writerFor, type Writer } from '../units/writer'
import { setBench, setSettings } from './bayEdits'
import type { Bench, Leftover, MeasuredStock } from './bench'
import { refusal, type Edited } from './edited'
import { measuredFault } from './measuredFault'
import type { Layout } from './schema'

/** Edits of what the yard sells and what lies about: lengths on offer, stock as it measures, leftovers. */

const asCatalogued = (stock: string): StockMeasures => ({
  stock,
  overMm: 0,
  thickMm: null,
  wideMm: null,
  odMm: null,
  wallMm: null,
})

/** What can be measured of a stock. */
export type Measure = Exclude<keyof MeasuredStock, 'stock'>

const saysNothing = ({ overMm, thickMm, wideMm, odMm, wallMm }: StockMeasures): boolean =>
  overMm === 0 && [thickMm, wideMm, odMm, wallMm].every((mm) => mm === null)

/** In the place where it stands, at the end if it is new, gone if it says nothing more. */
const withMeasures = (measured: Bench['measured'], next: StockMeasures): StockMeasures[] => {
  const others = measured.filter(({ stock }) => stock !== next.stock)
  if (saysNothing(next)) return others
  return measuresOf(measured, next.stock)
    ? measured.map((each) => (each.stock === next.stock ? next : each))
    : [...measured, next]
}

const exactWriter = ({ settings }: Layout): Writer => writerFor(settings.units, asTyped)

/** One measure of a stock, mm; null is as the catalogue has it, and of a length over its name 0. Refused where no stock is so. */
export const setMeasure = (layout: Layout, stock: string, measure: Measure, mm: number | null): Edited => {
  const { measured } = layout.bench
  const now = measuresOf(measured, stock) ?? asCatalogued(stock)
  const next = withMeasures(measured, { ...now, [measure]: measure === 'overMm' ? (mm ?? 0) : mm })
  const fault = measuredFault(next, exactWriter(layout))
  return fault === undefined ? setBench(layout, { measured: next }) : refusal(fault)
}

/** The lengths of lumber that the yard has, mm, in any order. */
export const setLumberLengths = (layout: Layout, lengthsMm: readonly number[]): Edited =>
  lengthsMm.length === 0
    ? refusal('the yard must have one length of lumber at least, or nothing can be cut')
    : setSettings(layout, { lumberMm: [...new Set(lengthsMm)].sort((a, b) => a - b) })

const LEAST_LEFTOVER_MM = inches(1)

const leftoverFault = ({ stock, lengthMm, count }: Leftover, { onTape }: Writer): string | undefined => {
  if (lengthMm < LEAST_LEFTOVER_MM)
    return `a leftover of ${stockOf(stock).title} is ${onTape(LEAST_LEFTOVER_MM)} long at least, not ${onTape(lengthMm)}`
  return count >= 1 ? undefined : 'how many of it lie about is a whole number from 1'
}

const isLike = (a: Leftover, b: Leftover): boolean =>
  a.stock === b.stock && toTicks(a.lengthMm) === toTicks(b.lengthMm)

const withLeftovers = (layout: Layout, leftovers: Bench['leftovers'], changed: Leftover): Edited => {
  const fault = leftoverFault(changed, exactWriter(layout))
  return fault === undefined ? setBench(layout, { leftovers }) : refusal(fault)
}

/** Boards or offcuts on hand; they are counted in with those of one stock and length that lie there already. */
export const addLeftover = (layout: Layout, more: Leftover): Edited => {
  const { leftovers } = layout.bench
  const added = leftovers.some((each) => isLike(each, more))
    ? leftovers.map((each) => (isLike(each, more) ? { ...each, count: each.count + more.count } : each))
    : [...leftovers, more]
  return withLeftovers(layout, added, more)
}

/** The leftovers of one line changed; an index that no line has changes nothing. */
export const setLeftover = (
  layout: Layout,
  index: number,
  changes: Partial<Omit<Leftover, 'stock'>>,
): Edited => {
  const { leftovers } = layout.bench
  const now = leftovers[index]
  if (!now) return setBench(layout, {})
  const changed = { ...now, ...changes }
  return withLeftovers(layout, leftovers.with(index, changed), changed)
}

export const removeLeftover = (layout: Layout, index: number): Edited =>
  setBench(layout, { leftovers: layout.bench.leftovers.filter((_, i) => i !== index) })
