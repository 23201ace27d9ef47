/** What a drain line says about itself beside its built things, so that checks need not know its parameters. */
export interface DrainFacts {
  /** Positive where it falls from its first point to its last. */
  readonly slopeMmPerM: number
  readonly leastSlopeMmPerM: number
  readonly leastCoverMm: number
  readonly bedMm: number
  readonly trenchMm: number
}
