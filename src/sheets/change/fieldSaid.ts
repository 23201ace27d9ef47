import type * as z from 'zod/mini'
import type { Words } from '../../checks/context'
import { unwrapped } from '../../layout/fieldAt'
import { defOf } from '../../layout/limits'
import { fieldNumberWords } from '../../model/fieldWords'
import type { FieldMeta } from '../../model/fields'

type Schema = z.core.$ZodType

const fieldSchema = (schema: Schema, field: string): Schema | undefined => {
  const def = defOf(unwrapped(schema).schema)
  return def.type === 'object' ? def.shape[field] : undefined
}

const valueSaid = (value: unknown, { unit, choices, whenNull }: FieldMeta, write: Words): string => {
  if (value === null || value === undefined) return whenNull ?? 'left to the program'
  if (typeof value === 'number') return fieldNumberWords(value, unit, write)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return typeof value === 'string' ? (choices?.[value] ?? value) : 'other'
}

/** Words for what has none of its own: plain texts and numbers as they are. */
const plainSaid = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : ''

/** A field before and after in the reader's words; one that has none is told by its name. */
export const fieldSaid = (
  schema: Schema | undefined,
  field: string,
  before: unknown,
  after: unknown,
  write: Words,
): { readonly label: string; readonly from: string; readonly to: string } => {
  const own = schema && fieldSchema(schema, field)
  const meta = own && unwrapped(own).meta
  if (meta)
    return { label: meta.label, from: valueSaid(before, meta, write), to: valueSaid(after, meta, write) }
  const [label, from, to] = [PLAIN[field] ?? field, plainSaid(before), plainSaid(after)]
  return { label, from, to: from === '' && to === '' ? 'changed' : to }
}

/** What is changed on the plan or in a form of its own, and so has no words among the fields. */
const PLAIN: Readonly<Record<string, string>> = {
  points: 'Its line',
  heading: 'The way it lies',
  takenOut: 'Towers taken out',
  curve: 'Pump curve',
  gradedTubes: 'Tubes cut by station',
  waterFrom: 'Where its water comes from',
  trimTurns: 'Trim valve, turns',
  name: 'Name',
  locked: 'Held in its place',
  title: 'Name',
  outline: 'Walls',
  curvedWalls: 'Curved walls',
  spotLevels: 'Floor levels',
  benchmark: 'Benchmark',
  services: 'What lies under the floor',
  lumberMm: 'Lengths at the yard',
  growth: 'Crop as it is drawn',
  bucket: 'Bucket test',
  accepted: 'Warnings that are accepted',
  book: 'The supplier’s prices',
  quotes: 'Quotes for this job',
  currency: 'Currency',
  norms: 'Minutes a task',
}
