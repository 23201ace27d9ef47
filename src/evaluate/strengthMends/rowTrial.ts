import type { Layout, Part } from '../../layout/schema'
import { setFields } from '../../layout/setFields'
import type { PartId } from '../../model/ids'
import type { RowStrength } from '../../model/strength'
import type { RackRow } from '../../parts/rack-row/schema'
import { kindOf } from '../../parts'
import { strengthOf } from '../5-loads'
import type { Evaluation } from '../evaluation'

/** Fields of a row and what they shall be. */
export type RowValues = Partial<RackRow>

/** The row of racks of this id; undefined where it is something else. */
export const rackRowIn = ({ parts }: Layout, id: PartId): RackRow | undefined => {
  const part = parts.find((each) => each.id === id)
  return part?.kind === 'rack-row' ? part : undefined
}

const strengthAs = ({ bay }: Evaluation, part: Part): RowStrength | undefined => {
  const built = kindOf(part).derive(part, bay.site)
  return strengthOf({ ...bay, built: [built] }).get(part.id)
}

/**
 * The strength of one row with some of its fields set anew, by itself on the site of the bay as it stands: quick enough to go
 * through many of them. Undefined where the schema refuses one. What the change does to the bay's common levels is left to the
 * trial in the bay.
 */
export const rowWith = (evaluation: Evaluation, id: PartId, values: RowValues): RowStrength | undefined => {
  const edited = setFields(evaluation.layout, [{ part: id, values }])
  const part = edited.ok ? rackRowIn(edited.layout, id) : undefined
  return part && strengthAs(evaluation, part)
}
