import { kindOf } from '../parts/index'
import type { PartId } from '../model/ids'
import { withChained } from './chaining'
import { replacePart } from './edits'
import type { Layout, Part } from './schema'

/** A layout in which what was moved, turned or mirrored has come to rest. */
export interface Rested {
  readonly layout: Layout
  /** The part that the moved one has become a piece of. */
  readonly onto?: Part
  /** The moved part, where it did not stay as it was let go because it fitted itself into the house. */
  readonly fitted?: Part
}

/** The part where its kind says that it belongs in this house. */
export const fittedIn = (part: Part, { house }: Layout): Part =>
  kindOf(part).fitIn?.(part, house.outline) ?? part

const partOf = ({ parts }: Layout, id: PartId): Part | undefined => parts.find((part) => part.id === id)

const isAlike = (a: Part | undefined, b: Part): boolean => JSON.stringify(a) === JSON.stringify(b)

/**
 * Lets go of what an edit has moved. A single part fits itself into the house, and chains on to another that it has
 * come to stand against; several keep their places to each other. The very same layout as `before` where the part ends
 * where it began, such as a door that was moved out of its wall by less than it takes to leave it.
 */
export const atRest = (before: Layout, after: Layout, ids: readonly PartId[]): Rested => {
  const [id, ...others] = ids
  const part = id === undefined || others.length > 0 || after === before ? undefined : partOf(after, id)
  if (!part) return { layout: after }
  const fitted = fittedIn(part, after)
  if (isAlike(partOf(before, part.id), fitted)) return { layout: before, fitted }
  const rested = withChained(replacePart(after, fitted), part.id)
  return fitted === part ? rested : { ...rested, fitted }
}
