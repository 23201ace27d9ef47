/** How many of one counted thing. */
export interface CountLine {
  /** Catalogue key of the fitting. */
  readonly item: string
  readonly title: string
  readonly count: number
}
