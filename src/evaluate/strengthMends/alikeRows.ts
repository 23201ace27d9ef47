import type { Layout } from '../../layout/schema'
import type { PartId } from '../../model/ids'
import type { RackRow } from '../../parts/rack-row/schema'
import { rackRowIn } from './rowTrial'

/** Fields that say where a row stands and how its water is let in and out; its strength does not follow from them. */
const APART = new Set<keyof RackRow>([
  'id',
  'name',
  'locked',
  'at',
  'heading',
  'fallsTo',
  'inlet',
  'riserAt',
  'riserSide',
  'valveSet',
  'waterFrom',
  'valve',
  'trimTurns',
  'trimTurnsAll',
  'gradedTubes',
])

const builtLike = (row: RackRow): string =>
  JSON.stringify(
    Object.entries(row)
      .filter(([field]) => !APART.has(field as keyof RackRow)) // a row has no other fields than its schema names
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )

/** The rows that are built as this one is, itself first; none where it is no row of racks. */
export const alikeRows = (layout: Layout, id: PartId): readonly PartId[] => {
  const row = rackRowIn(layout, id)
  if (!row) return []
  const key = builtLike(row)
  const others = layout.parts.filter(
    (part) => part.kind === 'rack-row' && part.id !== id && builtLike(part) === key,
  )
  return [id, ...others.map((part) => part.id)]
}
