import { removeParts, replacePart } from './edits'
import type { Layout, Part } from './schema'
import type { PartId } from '../model/ids'
import { kindOf } from '../parts/index'

/** Two parts that have become one. */
export interface Chained {
  readonly onto: Part
  /** The one part in place of two, with the id of `onto`. */
  readonly whole: Part
}

/** What a part makes with another of its kind that it stands against; undefined where there is none. */
export const chainOf = ({ parts }: Layout, part: Part): Chained | undefined => {
  for (const onto of parts) {
    if (onto.id === part.id || onto.kind !== part.kind) continue
    const whole = kindOf(onto).chain?.(onto, part)
    if (whole) return { onto, whole }
  }
  return undefined
}

/** The layout in which a part that stands against another of its kind is chained on to it. */
export const withChained = (layout: Layout, id: PartId): { layout: Layout; onto?: Part } => {
  const part = layout.parts.find((one) => one.id === id)
  const chained = part && chainOf(layout, part)
  if (!chained) return { layout }
  return { layout: replacePart(removeParts(layout, [id]), chained.whole), onto: chained.onto }
}
