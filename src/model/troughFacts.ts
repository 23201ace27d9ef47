/** What a row of racks or a lone trough says of its gutters, so that gravity water need not know its parameters. All mm. */
export interface TroughFacts {
  /** Catalogue key. */
  readonly gutter: string
  readonly fallMmPerM: number
  /** From high end to low end, on the flat. */
  readonly runMm: number
  readonly outletFromHighMm: number
  readonly outletBoreMm: number
  /** One gutter under each line; 1 for a lone trough. */
  readonly lines: number
  /** Where towers drip, station 1 first: distance of each station from the high end. Empty for a lone trough. */
  readonly stationFromHighMm: readonly number[]
  /** How high the tips hang over the invert at the high end; undefined for a lone trough. */
  readonly tipOverHighInvertMm: number | undefined
  /** How much warmer or colder plastic makes a gutter grow or shrink is told by its joiners. */
  readonly joiners: number
}
