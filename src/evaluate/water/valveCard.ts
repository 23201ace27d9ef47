import type { PartId } from '../../model/ids'

/** How the valves of a bay are set so that all its towers get the same. Flows in litres an hour, heads in mm. */
export interface ValveCard {
  /** What each tower should get. */
  readonly targetLph: number
  /**
   * What each gets as a share of that, with the neediest zone wide open: the pump has one speed, so all targets go up or
   * down together.
   */
  readonly factor: number
  /** The share that the settings below are for: `factor`, or 1 where valves hold a strong pump back. */
  readonly setFactor: number
  readonly verdict: PumpVerdict
  /**
   * Head that is left over at the neediest zone with its valve wide open, mm: what all valves burn alike where they hold
   * a strong pump back. One valve behind the pump, or the bypass, can take it from all of them.
   */
  readonly leftMm: number
  /** In the order of the bay's parts; zones whose ball valve is shut are not on it. */
  readonly zones: readonly ZoneSetting[]
}

/** `fits`: within 5 % of the target. */
export type PumpVerdict = 'fits' | 'too-small' | 'too-large'

/** How the trim valve of one zone is set. */
export interface ZoneSetting {
  /** The row with the valves. */
  readonly part: PartId
  readonly flowLph: number
  /** Level of the water before the valves, mm. */
  readonly inletHeadMm: number
  /** What a sight tube behind the valves shows over the mean of the open ends: the setting to go by. */
  readonly sightMm: number
  /** What the trim valve burns, as multiples of the velocity head in its bore. */
  readonly trimK: number
  readonly trimTurns: number
  readonly trimTurnsAll: number
  /** The one that finds least left over: it stays wide open, unless valves hold the pump back. */
  readonly isNeediest: boolean
}

/** What becomes of a balanced bay when a hand sets each valve a little off. */
export interface HandSet {
  /** How far each valve is off to either side, as a share of its turns. */
  readonly offBy: number
  readonly scenarios: number
  /** Least and greatest mean of each zone over the scenarios, as shares of what it was set for. */
  readonly zones: ReadonlyMap<PartId, { readonly leastShare: number; readonly mostShare: number }>
  readonly leastShare: number
  readonly mostShare: number
}
