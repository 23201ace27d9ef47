import { conduits } from '../../../catalogue/conduit'
import { lumbers } from '../../../catalogue/lumber'
import { stockOf } from '../../../catalogue/stock'
import type { Bench } from '../../../layout/bench'
import type { Measure } from '../../../layout/stockEdits'
import type { CutList } from '../../../model/cutList'
import { measuresOf } from '../../../model/measuredStock'
import { asTyped } from '../../../units/precision'
import type { Units } from '../../../units/length'
import { writerFor } from '../../../units/writer'

/** One number of a stock that a tape or a caliper can find, beside what the catalogue says. */
export interface MeasureCell {
  readonly measure: Measure
  readonly label: string
  /** As it was measured, in words; nothing where it was not. */
  readonly shown: string
  /** What holds while nothing is measured. */
  readonly catalogue: string
}

/** A material in the table of stock. */
export interface StockRow {
  readonly stock: string
  readonly title: string
  readonly isLumber: boolean
  readonly cells: readonly MeasureCell[]
}

/** What is read off a tape and what off a caliper. */
const withTape = (mm: number, units: Units): string => writerFor(units, asTyped).onTape(mm)
const withCaliper = (mm: number, units: Units): string => writerFor(units).bore(mm)

interface Known {
  readonly measure: Measure
  readonly label: string
  readonly catalogueMm: number
  readonly write: (mm: number, units: Units) => string
}

const OVER: Known = { measure: 'overMm', label: 'Longer than its name', catalogueMm: 0, write: withTape }

/** What of a stock matters to the bay: of lumber its section, of conduit its outside and wall, of all its length. */
const measurable = (stock: string): readonly Known[] => {
  const lumber = lumbers.find(({ key }) => key === stock)
  const conduit = conduits.find(({ key }) => key === stock)
  return [
    OVER,
    ...(lumber
      ? [
          { measure: 'thickMm', label: 'Thickness', catalogueMm: lumber.thickMm, write: withTape } as const,
          { measure: 'wideMm', label: 'Width', catalogueMm: lumber.wideMm, write: withTape } as const,
        ]
      : []),
    ...(conduit
      ? [
          { measure: 'odMm', label: 'Outside', catalogueMm: conduit.odMm, write: withCaliper } as const,
          { measure: 'wallMm', label: 'Wall', catalogueMm: conduit.wallMm, write: withCaliper } as const,
        ]
      : []),
  ]
}

const cellOf = (
  { measure, label, catalogueMm, write }: Known,
  measuredMm: number | null,
  units: Units,
): MeasureCell => ({
  measure,
  label,
  shown: measuredMm === null ? '' : write(measuredMm, units),
  catalogue: write(catalogueMm, units),
})

/** A length over its name of nothing is none that was measured. */
const found = (mm: number | null | undefined): number | null => (mm === undefined || mm === 0 ? null : mm)

const rowOf = (stock: string, measured: Bench['measured'], units: Units): StockRow => {
  const measures = measuresOf(measured, stock)
  return {
    stock,
    title: stockOf(stock).title,
    isLumber: lumbers.some(({ key }) => key === stock),
    cells: measurable(stock).map((known) => cellOf(known, found(measures?.[known.measure]), units)),
  }
}

const isStick = (stock: string): boolean => stockOf(stock).form === 'stick'

/** The boards and sticks that this bay is cut from, and those that were measured whether it still is or not. */
export const stockRows = (
  cuts: readonly Pick<CutList, 'stock'>[],
  measured: Bench['measured'],
  units: Units,
): readonly StockRow[] => {
  const inBay = cuts.map(({ stock }) => stock).filter(isStick)
  const known = measured.map(({ stock }) => stock).filter((stock) => !inBay.includes(stock))
  return [...inBay, ...known].map((stock) => rowOf(stock, measured, units))
}
