import { nameOf } from '../layout/names'
import type { Layout } from '../layout/schema'
import type { PartId } from '../model/ids'

export { nameOf }

/** `Row 2`, or `3 parts`. */
export const namesOf = ({ parts }: Layout, ids: readonly PartId[]): string => {
  const [first, ...others] = parts.filter(({ id }) => ids.includes(id))
  if (!first) return 'nothing'
  return others.length === 0 ? nameOf(first) : `${others.length + 1} parts`
}
