import type { Place } from '../geometry/point'
import type { Quantity, stateWords, Term } from './finding'
import type { PartId } from './ids'

export type StrengthState = (typeof stateWords.strength)[number]
export type StanceState = (typeof stateWords.stance)[number]

/**
 * What hangs while a member is screened: every tower; every tower but those of the spans whose harvest is worst for it; the
 * towers of the lines on one side; nothing; every tower at the proof load.
 */
export const loadStates = ['full', 'harvested', 'one-side', 'empty', 'proof'] as const
export type LoadState = (typeof loadStates)[number]

/** What is screened. Titles, formulas, limits and sources stand in strengthBasis.ts under the same names. */
export type ScreenId =
  | 'rail-stress'
  | 'rail-sag'
  | 'rail-joint'
  | 'rail-uplift'
  | 'bar-stress'
  | 'bar-sag'
  | 'riser-slenderness'
  | 'riser-column'
  | 'riser-push'
  | 'hole-net'
  | 'hole-edge'
  | 'hole-end'
  | 'hole-bearing'
  | 'ground-bearing'
  | 'house-load'

/** One screen of a member as drawn: what was found against what is allowed. A screening, never a rating. */
export interface Screen {
  readonly id: ScreenId
  /** Mark of the member, as on every sheet: `RL`, `HB`, `RS-p` ... */
  readonly mark: string
  readonly state: StrengthState
  /** Share of the limit that is used; 1 at the limit, Infinity where the member is refused whatever it carries. */
  readonly used: number
  readonly measured: Quantity
  readonly limit: Quantity
  readonly under: LoadState
  /** Where it is worst, in the row's axes: mm from its start, mm to the right of its centreline, mm over the rack datum. */
  readonly at: RowSpot
  /** The arithmetic, in the order in which it is done by hand. */
  readonly terms: readonly Term[]
}

/** In a row's own axes: u from its start, v to the right looking from start to end, z over the rack datum; mm. */
export interface RowSpot {
  readonly u: number
  readonly v: number
  readonly z: number
}

/** One span of a rail between two supports, or what overhangs the last; worst of all load states. */
export interface RailSpan {
  readonly fromU: number
  readonly toU: number
  readonly isOverhang: boolean
  /** Catalogue key of the conduit that is worst in it. */
  readonly stock: string
  readonly momentNmm: number
  readonly stressMpa: number
  readonly sagMm: number
  readonly state: StrengthState
  readonly used: number
  readonly under: LoadState
}

/** A rail line of a row: its sticks as chained, what they rest on, and what comes of it. */
export interface RailLine {
  readonly v: number
  readonly z: number
  readonly sticks: readonly { readonly fromU: number; readonly toU: number; readonly stock: string }[]
  /** Hinges: slip joints. */
  readonly hingesU: readonly number[]
  readonly hangers: readonly { readonly u: number; readonly fullN: number }[]
  readonly spans: readonly RailSpan[]
  /** What each riser carries with everything hung, at most and at least; less than 0 where the rail lifts. */
  readonly reactions: readonly {
    readonly u: number
    readonly fullN: number
    readonly mostN: number
    readonly leastN: number
  }[]
  /** With everything hung, along the line: for drawing. */
  readonly curve: {
    readonly u: readonly number[]
    readonly sagMm: readonly number[]
    readonly momentNmm: readonly number[]
  }
}

/** A hanger bar as a beam on two rails, with the towers that hang off it, the worst one of the row. */
export interface BarScreen {
  readonly u: number
  readonly stock: string
  /** Rails and towers, v in mm; loads in N. */
  readonly railV: readonly number[]
  readonly loads: readonly { readonly v: number; readonly downN: number }[]
  readonly fromV: number
  readonly toV: number
  readonly momentNmm: number
  readonly stressMpa: number
  readonly sagMm: number
  readonly under: LoadState
  /** Rail spacing at which the moment over the rails and the moment between them are alike, mm; undefined where no spacing does so. */
  readonly bestSpacingMm: number | undefined
}

/** A row stands that tips at so many times the push, no sooner. Source: IBC 1807.2.3, of retaining walls, borrowed. */
export const STANDS_AT = 1.5

/** How tall risers may be, of the base's width, before they are tied. Common practice, no source. */
export const TALLEST_TO_BASE = 2.5

/** How a row stands in one state of load against a person who pushes or pulls at the height of its rails. */
export interface Tip {
  readonly under: LoadState
  /** Across the row or along it, whichever tips it with less. */
  readonly way: 'across' | 'along'
  readonly weightN: number
  /** From the middle of the weight to the edge that it would tip over, mm. */
  readonly armMm: number
  /** Force at the height of the rails that tips it, N; 0 where it tips by itself. */
  readonly tipsAtN: number
  /** That force over the assumed push. */
  readonly safety: number
  readonly state: StanceState
}

export interface Stance {
  readonly baseHalfMm: number
  readonly railMm: number
  readonly riserMm: number
  /** Worst one-sided resultant, mm from the centreline, and how far it may be. */
  readonly oneSideMm: number
  readonly oneSideLimitMm: number
  /** Riser over base, and how much is allowed before it is tied. */
  readonly heightToBase: number
  readonly tips: readonly Tip[]
  /** What a held row is held by; none where it stands by its weight. */
  readonly heldBy: 'anchored' | 'tied' | undefined
  readonly state: StanceState
}

/** Noise of a machine, of a ratio. */
const CLOSE_RATIO = 1e-6

/** Whether a row's risers are too tall for its base to stand untied. */
export const isTooTall = ({ heightToBase }: Pick<Stance, 'heightToBase'>): boolean =>
  heightToBase > TALLEST_TO_BASE + CLOSE_RATIO

/** What a row carries and weighs, N and N/mm. */
export interface RowLoads {
  readonly towerN: number
  readonly isWeighed: boolean
  readonly towers: number
  /** Frame, conduit and full laterals without towers. */
  readonly ownN: number
  readonly barN: number
  readonly fullN: number
  /** Weight by member mark, `lateral` among them, N. */
  readonly byMark: ReadonlyMap<string, number>
}

/** Step 5 of one row of racks. */
export interface RowStrength {
  readonly part: PartId
  readonly loads: RowLoads
  /** Every screen of every kind of member at its worst place: worst first, geometry that is kept after all that loads use. The first governs. */
  readonly screens: readonly Screen[]
  /** Left and right, looking from the row's start. */
  readonly rails: readonly RailLine[]
  readonly bar: BarScreen | undefined
  readonly stance: Stance
  /** The worst of its screens. */
  readonly state: StrengthState
  /** The worst place on the floor, to jump to. */
  readonly at: Place
}
