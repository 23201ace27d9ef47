import type { Built, Stick } from '../../model/built'
import type { RowSpot } from '../../model/strength'

/** A stick in its row's own axes. */
export interface FrameStick {
  readonly from: RowSpot
  readonly to: RowSpot
  readonly stick: Stick
}

export interface HungAt extends RowSpot {
  readonly line: number
  readonly station: number
}

/** A row of racks as built, in its own axes: u from its start, v to the right looking along it, z over the rack datum. */
export interface Frame {
  readonly built: Built
  readonly lengthMm: number
  /** Sticks by their mark, along u, then v. */
  readonly sticks: ReadonlyMap<string, readonly FrameStick[]>
  /** Heads of the towers that hang. */
  readonly towers: readonly HungAt[]
}
