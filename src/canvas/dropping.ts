import type { Point } from '../geometry/point'
import { addParts, replacePart } from '../layout/edits'
import { nextId, nextName } from '../layout/names'
import type { Layout, Part } from '../layout/schema'
import type { ShelfItem } from '../parts/index'
import { chainOf } from './chaining'

/** A whole part of a shelf item, not yet in the layout, with its middle at a place. */
export const partFrom = ({ kind, preset }: ShelfItem, layout: Layout, at: Point): Part =>
  kind.create(nextId(layout, kind.kind), nextName(layout, kind.kind), at, preset)

/** The layout with a new part; chained on to another where it stands against one. */
export const withDropped = (layout: Layout, part: Part): { layout: Layout; onto?: Part } => {
  const chained = chainOf(layout, part)
  return chained
    ? { layout: replacePart(layout, chained.whole), onto: chained.onto }
    : { layout: addParts(layout, [part]) }
}
