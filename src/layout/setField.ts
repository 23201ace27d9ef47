import type { PartId } from '../model/ids'
import { asRead, done, refusal, type Edited } from './edited'
import { replacePart } from './edits'
import { firstIssueWords, quoted } from './faultWords'
import { partSchema, type Layout, type Part } from './schema'
import { withGapsOf } from './takenOut'

/** What a part is can't be edited, only how it is. */
const fixedFields: readonly string[] = ['id', 'kind']

const isField = (part: Part, field: string): boolean =>
  Object.hasOwn(part, field) && !fixedFields.includes(field)

/** Towers taken out are counted by racks, bars and lines: with other numbers of these they must be counted anew. */
const withSameGaps = (before: Part, after: Part, field: string): Part =>
  before.kind === 'rack-row' && after.kind === 'rack-row' && field !== 'takenOut'
    ? withGapsOf(before, after)
    : after

/** Sets one field of a part, checked by the schema of its kind; a refused value comes back as a sentence. */
export const setField = (layout: Layout, id: PartId, field: string, value: unknown): Edited => {
  const part = layout.parts.find((p) => p.id === id)
  if (!part) return refusal(`no part of this bay has the id ${quoted(id)}`)
  if (!isField(part, field))
    return refusal(`a ${part.kind.replace('-', ' ')} has no field ${quoted(field)} that can be set`)
  const candidate = { ...part, [field]: value }
  const checked = partSchema.safeParse(candidate)
  if (!checked.success)
    return refusal(firstIssueWords(partSchema, checked.error.issues, candidate, asRead(layout)))
  return done(replacePart(layout, withSameGaps(part, checked.data, field)))
}
