import type { Layout } from '../../src/layout/schema'
import type { StockMeasures } from '../../src/model/measuredStock'
import { inches } from '../../src/units/length'

/** What a tape and a caliper find of a stock, inches; what is left out is as the catalogue has it. */
export interface Found {
  readonly over?: number
  readonly thick?: number
  readonly wide?: number
  readonly od?: number
  readonly wall?: number
}

const mm = (inch: number | undefined): number | null => (inch === undefined ? null : inches(inch))

export const measuring = (stock: string, { over = 0, thick, wide, od, wall }: Found): StockMeasures => ({
  stock,
  overMm: inches(over),
  thickMm: mm(thick),
  wideMm: mm(wide),
  odMm: mm(od),
  wallMm: mm(wall),
})

/** A bay built of stock that measures so. */
export const measuredBay = (layout: Layout, ...measured: readonly StockMeasures[]): Layout => ({
  ...layout,
  bench: { ...layout.bench, measured: [...measured] },
})
