import * as z from 'zod/mini'
import { fields, type FieldMeta } from '../model/fields'
import { defOf, type Limits, limitsOf } from './limits'

export type FieldPath = readonly PropertyKey[]

/** A field as its schema tells of it: its words, where it has some, and what it can be. */
export interface FieldFacts {
  readonly meta: FieldMeta | undefined
  readonly limits: Limits
}

type Schema = z.core.$ZodType

const isRecord = (value: unknown): value is Readonly<Record<PropertyKey, unknown>> =>
  typeof value === 'object' && value !== null

const inside = (value: unknown, key: PropertyKey): unknown => (isRecord(value) ? value[key] : undefined)

/** The schema under defaults and nulls, with the first words met on the way down. */
export const unwrapped = (
  schema: Schema,
  meta = fields.get(schema),
): { schema: Schema; meta: FieldMeta | undefined } => {
  const def = defOf(schema)
  const isWrapped = def.type === 'default' || def.type === 'nullable' || def.type === 'optional'
  return isWrapped ? unwrapped(def.innerType, meta ?? fields.get(def.innerType)) : { schema, meta }
}

const optionFor = (options: readonly Schema[], value: unknown): Schema | undefined =>
  options.find((option) => {
    const def = defOf(option)
    const kind = def.type === 'object' ? def.shape['kind'] : undefined
    return kind !== undefined && z.safeParse(kind, inside(value, 'kind')).success
  })

const stepInto = (schema: Schema, key: PropertyKey, value: unknown): Schema | undefined => {
  const def = defOf(unwrapped(schema).schema)
  if (def.type === 'array') return def.element
  if (def.type === 'object') return def.shape[String(key)]
  if (def.type !== 'union') return undefined
  const option = optionFor(def.options, value)
  return option && stepInto(option, key, value)
}

/** What the schema tells of the field at a path; `value` is the whole value, which decides between kinds. */
export const fieldAt = (schema: Schema, path: FieldPath, value: unknown): FieldFacts | undefined => {
  let [at, here]: [Schema | undefined, unknown] = [schema, value]
  for (const key of path) {
    at = at && stepInto(at, key, here)
    here = inside(here, key)
  }
  if (!at) return undefined
  const field = unwrapped(at)
  return { meta: field.meta, limits: limitsOf(field.schema) }
}
