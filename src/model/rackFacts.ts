import type { Heading } from '../geometry/motion'
import type { Point } from '../geometry/point'

/** One long face of a row, where people and carts work it; it runs from the row's start to its end. */
export interface RackFace {
  readonly from: Point
  readonly to: Point
  /** Out of the row, into the aisle. */
  readonly facing: Heading
}

/** What goes under the troughs at one gutter bearer; the same under every line. Both exact: a sixteenth is for who writes it. */
export interface BearerShim {
  /** From the end of the row where its gutters are high to the middle of the bearer, mm. */
  readonly fromHighMm: number
  readonly shimMm: number
}

/** A conduit that goes through holes of the row's risers, as a caliper finds it; mm. */
export interface DrilledFor {
  /** Catalogue key. */
  readonly stock: string
  readonly odMm: number
  readonly bitMm: number
}

/** How rails meet: in a sleeve over a shared riser, in a sleeve between racks, big stick takes small stick, over a dowel, side by side. */
export type JointKind = 'J1' | 'J2' | 'J3' | 'J4' | 'J5'

/** What goes into what where rails meet, as a caliper finds them; mm. */
export interface RailJoint {
  /** Rails into a sleeve or a bigger rail, or a dowel into the rails. */
  readonly goesIn: 'rail' | 'dowel'
  /** Outside of what goes in. */
  readonly insideOdMm: number
  /** Inside of the conduit that takes it. */
  readonly boreMm: number
  /** How far it goes in, each side. */
  readonly insertionMm: number
}

/**
 * What a row of racks says about itself beside its built things, so that checks need not know its parameters.
 * Heights are mm above the rack datum; widths and gaps are mm.
 */
export interface RackFacts {
  readonly racks: number
  readonly lines: number
  readonly stations: number
  readonly towers: number
  readonly sites: number
  readonly pitchMm: number
  readonly lineSpacingMm: number
  /** Each line's distance from the left face, canopy included, mm, line 1 first; read backwards, from the right face. */
  readonly lineReachMm: readonly number[]
  readonly bodyMm: number
  /** Least clear gap along the row between a hanger bar and a riser, and between a bar and a sleeve; Infinity without one. */
  readonly barToRiserMm: number
  readonly barToSleeveMm: number
  /** From the middle of the trough outlets to the nearest station, along the row. */
  readonly outletToStationMm: number
  readonly runMm: number
  /** Longest single-fall run that the tip window allows with this gutter and fall. */
  readonly longestRunMm: number
  readonly tipMm: number
  /** Tip height that the fall, the trough and the bearers ask for; above `tipMm` where a fixed riser is too short. */
  readonly tipNeededMm: number
  /** The tip window: how low and how high the tips may hang, by the invert at the high end and the lip at the low end. */
  readonly tipLowestMm: number
  readonly tipHighestMm: number
  readonly lipHighMm: number
  readonly lipLowMm: number
  readonly invertHighMm: number
  readonly invertOutletMm: number
  readonly invertLowMm: number
  readonly bearerTopMm: number
  /** From the high end down. */
  readonly bearerShims: readonly BearerShim[]
  readonly barTopMm: number
  readonly lateralMm: number
  /** Highest point while a tower is lifted off. */
  readonly liftTopMm: number
  /** Riser foot to hole centre, plain hole and sleeve (or big stick) hole, and what the conduit lies on. */
  readonly plainHoleMm: number
  readonly sleeveHoleMm: number
  readonly plainHoleBottomMm: number
  readonly sleeveHoleBottomMm: number
  readonly drilledFor: readonly DrilledFor[]
  /** None in a row of one rack, nor where rails lap side by side. */
  readonly railJoint: RailJoint | undefined
  readonly joint: JointKind
  /** Whether rails rest on risers, or hang from the house with neither risers nor a base under them. */
  readonly carriedBy: 'floor' | 'house'
  readonly bracing: 'both' | 'along' | 'across' | 'none'
  readonly hold: 'free' | 'anchored' | 'tied'
  /** What of the lumber is preserved. */
  readonly treated: 'none' | 'base' | 'all'
  /** How drips off galvanised conduit are kept from the water. */
  readonly drips: 'tied' | 'painted' | 'bare'
  /** What a tower of this row weighs planted and flooded, kg; undefined where nobody weighed one. */
  readonly towerKg: number | undefined
  readonly riserMm: number
  readonly riserNeededMm: number
  readonly tipWidthMm: number
  /** Inside width of the trough at the depth where the tip hangs. */
  readonly troughAtTipMm: number
  /** Left and right looking from the row's start to its end, whichever way its gutters fall. */
  readonly leftFace: RackFace
  readonly rightFace: RackFace
}
