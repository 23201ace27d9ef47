import type { Point } from '../geometry/point'
import { chainOf } from '../layout/chaining'
import { addParts, replacePart } from '../layout/edits'
import { nextId, nextName } from '../layout/names'
import type { Layout, Part } from '../layout/schema'
import type { ShelfItem } from '../parts/index'

/** Obstacles and openings are called by what they are, such as `Post 3`; of the other kinds a crew counts all alike. */
const isCalledByPreset = ({ kind }: ShelfItem): boolean => kind.kind === 'obstacle' || kind.kind === 'opening'

const newName = (item: ShelfItem, layout: Layout): string =>
  isCalledByPreset(item)
    ? nextName(layout, item.kind.kind, item.preset.title)
    : nextName(layout, item.kind.kind)

/** A whole part of a shelf item, not yet in the layout, with its middle at a place. */
export const partFrom = (item: ShelfItem, layout: Layout, at: Point): Part =>
  item.kind.create(nextId(layout, item.kind.kind), newName(item, layout), at, item.preset)

/** The layout with a new part; chained on to another where it stands against one. */
export const withDropped = (layout: Layout, part: Part): { layout: Layout; onto?: Part } => {
  const chained = chainOf(layout, part)
  return chained
    ? { layout: replacePart(layout, chained.whole), onto: chained.onto }
    : { layout: addParts(layout, [part]) }
}
