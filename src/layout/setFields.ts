import type { PartId } from '../model/ids'
import { done, type Edited } from './edited'
import type { Layout } from './schema'
import { setField } from './setField'

/** Fields of one part and what they shall be. */
export interface FieldChanges {
  readonly part: PartId
  readonly values: Readonly<Record<string, unknown>>
}

/** Sets fields of several parts as one edit: all of them, or none and the first sentence on why not. */
export const setFields = (layout: Layout, changes: readonly FieldChanges[]): Edited => {
  let edited: Edited = done(layout)
  for (const { part, values } of changes)
    for (const [field, value] of Object.entries(values))
      if (edited.ok) edited = setField(edited.layout, part, field, value)
  return edited
}
