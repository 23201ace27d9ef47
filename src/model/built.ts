import type { Point, Place } from '../geometry/point'
import type { DrainFacts } from './drainFacts'
import type { FeedFacts } from './feedFacts'
import type { PartId } from './ids'
import type { PitFacts } from './pitFacts'
import type { RackFacts } from './rackFacts'
import type { TroughFacts } from './troughFacts'
import type { HeadBoxFacts, PumpFacts } from './supplyFacts'

/**
 * The built things: every part kind derives to these and to nothing else, and everything downstream reads only these.
 * `x` and `y` are floor coordinates in mm. `z` is measured from what `Built.zFrom` says: `rack-datum` is the underside
 * of the foot plate at the highest foot of the whole bay (found in the levels step, so that moving one row does not
 * re-derive another), `benchmark` is a site level. Bodies alone are measured from the floor under them.
 */
export interface Built {
  readonly part: PartId
  readonly zFrom: 'rack-datum' | 'benchmark'
  readonly sticks: readonly Stick[]
  readonly tubes: readonly Tube[]
  readonly fittings: readonly Fitting[]
  readonly bodies: readonly Body[]
  readonly mouths: readonly Mouth[]
  readonly supports: readonly Support[]
  /** Only where towers hang. */
  readonly rack?: RackFacts
  /** Only where troughs catch water. */
  readonly trough?: TroughFacts
  /** Only for a buried drain; its tube's path holds the invert. */
  readonly drain?: DrainFacts
  /** Only for a pit. */
  readonly pit?: PitFacts
  /** Only where towers are fed. */
  readonly feed?: FeedFacts
  /** Only for a pit with a pump in it. */
  readonly pump?: PumpFacts
  /** Only for a head box. */
  readonly headBox?: HeadBoxFacts
}

/** How the saw hand makes a piece. */
export type CutRule =
  | { readonly kind: 'exact' }
  /** Cut a whole stick of stock in `parts` equal mates: mark, cut on the mark. 2 is halving. */
  | { readonly kind: 'equal-parts'; readonly parts: number; readonly stockMm: number }
  /** A whole stick as it comes. */
  | { readonly kind: 'uncut'; readonly stockMm: number }

export interface Hole {
  /** From the stick's foot (`from` end) to the hole's centre, mm. */
  readonly centreMm: number
  readonly diameterMm: number
  /** Off the middle of the face that it goes through, mm to the right looking downhill along the row; none: in the middle. */
  readonly asideMm?: number
}

/** A straight length of stock. The distance from `from` to `to` is `lengthMm`, always. */
export interface Stick {
  /** Member mark, one name on every sheet: `RS-p`, `BX`, `RL` ... */
  readonly mark: string
  /** Catalogue key of what it is cut from: `lumber-2x4`, `conduit-3/4`, `gutter-5in`, `drain-4in` ... */
  readonly stock: string
  readonly lengthMm: number
  readonly from: Place
  readonly to: Place
  /** Width seen from above, mm, and height, mm; for round stock both are the outside diameter. */
  readonly widthMm: number
  readonly heightMm: number
  readonly cut: CutRule
  /** How much shorter the crew may cut it, mm. */
  readonly minusMm: number
  readonly holes: readonly Hole[]
  /** Which rack of a row it belongs to, from 0 at its start; 0 for other kinds. */
  readonly rack: number
}

/** A flexible or jointed run along a path. */
export interface Tube {
  readonly role:
    | 'lateral'
    | 'header'
    | 'sub-header'
    | 'riser-pipe'
    | 'microtube'
    | 'drop'
    | 'drain'
    | 'main'
    | 'zone-pipe' // from the main to a row's inlet, or from one row to the next behind its valve
    | 'pump-pipe' // from a pump or head box to the main
  readonly stock: string
  readonly path: readonly Place[]
  /** Length to cut, mm, slack included, so never shorter than the path. */
  readonly lengthMm: number
  /** Rigid pipe whose laying starts at its last point with a piece other than a whole stick: that piece, mm. */
  readonly firstMm?: number
}

/** One counted thing at a place. */
export interface Fitting {
  /** Catalogue key: `tower`, `hook`, `foot-plate`, `end-cap-3/4` ... */
  readonly item: string
  readonly at: Place
  /** Only of what is no piece: mm of a run, mm² of a sheet. */
  readonly amount?: number
}

export type BodyRole =
  | 'canopy' // leaves at full reach: what aisles are measured from
  | 'frame' // timber and conduit
  | 'foot'
  | 'trough'
  | 'post'
  | 'equipment'
  | 'keep-clear' // nothing may stand in it
  | 'footing'
  | 'pit'
  | 'trench'
  | 'main'
  | 'door' // the gap in the wall, for carts and people
  | 'person-door' // the same, where no cart goes
  | 'door-swing'

/** A footprint with a height band, above the floor at that place, mm (below the floor is negative). */
export interface Body {
  readonly part: PartId
  readonly role: BodyRole
  /** Anticlockwise outline, mm. */
  readonly outline: readonly Point[]
  readonly fromMm: number
  readonly toMm: number
}

export type MouthRole =
  | 'tower-head'
  | 'trough-outlet'
  | 'drain-end'
  | 'pit-inlet'
  | 'pump'
  | 'main-end'
  | 'zone-inlet' // behind a valve of its own
  | 'shared-inlet' // behind another row's valve
  | 'head-box'

/** A place where water passes between parts. Joints are made over role, position and level, never over kinds. */
export interface Mouth {
  readonly role: MouthRole
  readonly at: Place
  /** Line of the row (1-based, from its left looking from start to end) for tower heads and trough outlets, else 0. */
  readonly line: number
  /** Station along the row (1-based, from its start) for tower heads, else 0. */
  readonly station: number
}

/** Where a stick rests. */
export interface Support {
  readonly rests: 'floor' | 'stick'
  readonly at: Place
  /** Half sizes of the bearing on the floor, mm along x and y (0 for stick on stick). */
  readonly halfXMm: number
  readonly halfYMm: number
}
