import type { Layout, Part } from '../layout/schema'
import type { PartId } from '../model/ids'
import { kindOf } from '../parts/index'

/** What a part is called on screen: its own name, or that of its kind. */
export const nameOf = (part: Part): string => part.name || kindOf(part).title

/** `Row 2`, or `3 parts`. */
export const namesOf = ({ parts }: Layout, ids: readonly PartId[]): string => {
  const [first, ...others] = parts.filter(({ id }) => ids.includes(id))
  if (!first) return 'nothing'
  return others.length === 0 ? nameOf(first) : `${others.length + 1} parts`
}
