import { rackRowHelp } from '../parts/rack-row/help'
import { rackRowSchema } from '../parts/rack-row/schema'
import type { FieldMeta } from '../model/fields'
import { unwrapped } from './fieldAt'

const shape: Readonly<Record<string, Parameters<typeof unwrapped>[0]>> = rackRowSchema.shape

/** Help that stands apart from its schema, by the words of its field. */
const apart: ReadonlyMap<FieldMeta | undefined, string> = new Map(
  Object.entries(rackRowHelp).flatMap(([key, words]) => {
    const field = shape[key]
    return field ? [[unwrapped(field).meta, words] as const] : []
  }),
)

/** The sentence for the curious about a field, wherever it stands. */
export const helpOf = (meta: FieldMeta): string | undefined => meta.help ?? apart.get(meta)
