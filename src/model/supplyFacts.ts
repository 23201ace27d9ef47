import type { Place } from '../geometry/point'

/** One point of a pump curve. */
export interface PumpPoint {
  readonly flowLph: number
  readonly headMm: number
}

/** The pump or pumps in a pit, with what stands between them and the main. */
export interface PumpFacts {
  /** Where the discharge leaves the pit, benchmark levels, mm. */
  readonly at: Place
  /** Like pumps side by side. */
  readonly pumps: number
  /** Flow rising from 0, head falling; three points or more. */
  readonly curve: readonly PumpPoint[]
  /** Of the level that the pump draws from, mm from the benchmark's zero. */
  readonly suctionMm: number
  /** Catalogue key of the pipe from the pump to the main. */
  readonly stock: string
  /** Strainer, unions, check valve, elbows: multiples of the velocity head in that pipe. */
  readonly lossK: number
  /** The filter's own, clean and when it is due for cleaning; 0 without a filter. */
  readonly filterCleanK: number
  readonly filterDirtyK: number
  readonly isFilterDirty: boolean
  readonly hasCheckValve: boolean
  /** A valve that lets water straight back into the pit. */
  readonly bypass: { readonly boreMm: number; readonly lossK: number } | undefined
}

/** A small overflow tank that keeps one head whatever is open. */
export interface HeadBoxFacts {
  readonly at: Place
  /** Water level, mm from the benchmark's zero. */
  readonly waterMm: number
}
