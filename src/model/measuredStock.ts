/** Stock as it measures where that differs from the catalogue, by its key; lengths mm, null is as the catalogue has it. */
export interface StockMeasures {
  readonly stock: string
  /** How much longer than its name a board or stick really is; less than 0 is short. */
  readonly overMm: number
  readonly thickMm: number | null
  readonly wideMm: number | null
  readonly odMm: number | null
  readonly wallMm: number | null
}

/** What was measured of a stock; undefined where nothing was. */
export const measuresOf = (measured: readonly StockMeasures[], stock: string): StockMeasures | undefined =>
  measured.find((each) => each.stock === stock)

/** A length that the yard sells, mm: what it is called by, and what a tape finds. */
export interface StockLength {
  readonly stockMm: number
  readonly measuredMm: number
}

/** A length of a stock by its name, mm, with what a tape finds of it. */
export const lengthAsMeasured = (
  stockMm: number,
  stock: string,
  measured: readonly StockMeasures[],
): StockLength => ({ stockMm, measuredMm: stockMm + (measuresOf(measured, stock)?.overMm ?? 0) })
