import type * as z from 'zod/mini'
import { unwrapped } from '../layout/fieldAt'
import { helpOf } from '../layout/fieldHelp'
import { defOf } from '../layout/limits'
import type { FieldMeta } from '../model/fields'

type Schema = z.core.$ZodType

export interface Choice {
  readonly value: string
  readonly words: string
}

/** One field of a part, of the house or of the settings, as a screen shows it. */
export interface Field {
  readonly key: string
  readonly meta: FieldMeta
  /** What the program does while the field holds null; undefined where it never may. */
  readonly whenNull: string | undefined
  /** What a field that held null starts from, in its own unit. */
  readonly start: number
  readonly choices: readonly Choice[]
}

export interface FieldGroup {
  readonly title: string
  readonly fields: readonly Field[]
}

const choicesOf = (schema: Schema, meta: FieldMeta): Choice[] => {
  const def = defOf(schema)
  if (def.type !== 'enum') return []
  return (meta.order ?? Object.values(def.entries).map(String)).map((value) => ({
    value,
    words: meta.choices?.[value] ?? value,
  }))
}

const isNullable = (schema: Schema): boolean => {
  const def = defOf(schema)
  if (def.type === 'nullable') return true
  return def.type === 'default' ? isNullable(def.innerType) : false
}

/** The first default under the outer wrappers that is a number. */
const startOf = (schema: Schema): number => {
  const def = defOf(schema)
  if (def.type === 'default' && typeof def.defaultValue === 'number') return def.defaultValue
  return def.type === 'default' || def.type === 'nullable' ? startOf(def.innerType) : 0
}

const fieldOf = (key: string, schema: Schema): Field[] => {
  const { schema: bare, meta } = unwrapped(schema)
  if (!meta) return []
  const whenNull = isNullable(schema) ? (meta.whenNull ?? 'Left to the program') : undefined
  const help = helpOf(meta)
  const told = help === undefined ? meta : { ...meta, help }
  return [{ key, meta: told, whenNull, start: startOf(schema), choices: choicesOf(bare, meta) }]
}

/** Every field of a record that has words, in the order of its schema; what is changed on the plan has none. */
export const fieldList = (schema: Schema): readonly Field[] => {
  const def = defOf(unwrapped(schema).schema)
  if (def.type !== 'object') return []
  return Object.entries(def.shape).flatMap(([key, field]) => fieldOf(key, field))
}

/** The fields that count for these values: the sizes of a shape that a part has not got are left out. */
export const applying = (
  fields: readonly Field[],
  values: Readonly<Record<string, unknown>>,
): readonly Field[] =>
  fields.filter(
    ({ meta: { appliesTo } }) => !appliesTo || appliesTo.values.includes(String(values[appliesTo.field])),
  )

/** Fields under their headings, both in the order in which they first come. */
export const grouped = (fields: readonly Field[]): readonly FieldGroup[] => {
  const groups = new Map<string, Field[]>()
  for (const field of fields) {
    const { group } = field.meta
    groups.set(group, [...(groups.get(group) ?? []), field])
  }
  return [...groups].map(([title, list]) => ({ title, fields: list }))
}
