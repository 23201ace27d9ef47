import type * as z from 'zod/mini'
import type { Mirror, Motion } from '../geometry/motion'
import type { Point } from '../geometry/point'
import type { Built } from './built'
import type { Mark } from './drawing'
import type { PartId } from './ids'
import type { StockMeasures } from './measuredStock'
import type { Site } from './site'

export interface PartBase {
  readonly id: PartId
  readonly kind: string
  readonly name: string
  readonly locked: boolean
}

/** A place on a part that can be dragged: an end of a row, a corner, a point of a line. */
export interface Handle {
  readonly id: string
  readonly at: Point
  readonly does: string
}

/** One thing on the parts shelf: a kind with its starting values. */
export interface Preset<P extends PartBase> {
  readonly id: string
  readonly title: string
  /** One line for the shelf. */
  readonly hint: string
  readonly values: Partial<Omit<P, keyof PartBase>>
}

/** Everything the program must know of a kind of part. All functions are pure. */
export interface PartKind<P extends PartBase> {
  readonly kind: P['kind']
  readonly title: string
  readonly schema: z.ZodMiniType<P>
  readonly presets: readonly Preset<P>[]
  /** A complete part, ready to build, with its middle as near to `at` as it can be. */
  create(id: PartId, name: string, at: Point, preset: Preset<P>): P
  move(part: P, motion: Motion): P
  mirror(part: P, mirror: Mirror): P
  /** The part where it belongs once it is let go: an opening in the wall it is near. `outline` is the house's, anticlockwise. */
  fitIn?(part: P, outline: readonly Point[]): P
  /** Tip height above the rack datum that this part needs, built of stock as it measures, mm; the bay takes the greatest. */
  tipNeededMm?(part: P, measured: readonly StockMeasures[]): number
  /** By the mark of a member, the fields whose lengths make it shorter, the one that is given up most lightly first. */
  readonly shavedBy?: Readonly<Record<string, readonly string[]>>
  derive(part: P, site: Site): Built
  draw(part: P, built: Built): readonly Mark[]
  handles(part: P): readonly Handle[]
  /** The part with one handle dragged to a place; the same part where that can't be. */
  drag(part: P, handle: string, to: Point): P
  /** Add a point after the handle's point, or take the handle's point away; only kinds with points. */
  addPoint?(part: P, at: Point): P
  removePoint?(part: P, handle: string): P
  /** The same part chained on to `onto`'s end, if `part` was dropped against it: one part in place of two. */
  chain?(onto: P, part: P): P | undefined
}
