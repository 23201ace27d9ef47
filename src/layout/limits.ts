import type * as z from 'zod/mini'

/** What one value can be, as far as a sentence can say it. */
export interface Limits {
  readonly type: 'number' | 'whole number' | 'text' | 'list' | 'switch' | 'record'
  /** The values that it can be, where they are few. */
  readonly values?: readonly unknown[]
  /** Of the number, or of the length of the text or list. */
  readonly least?: number
  readonly most?: number
}

type Schema = z.core.$ZodType
type Check = z.core.$ZodChecks

/** What a schema is made of. Every schema that zod makes is one of its own kinds; the base type just does not say so. */
export const defOf = (schema: Schema) => (schema as z.core.$ZodTypes)._zod.def

type Bounds = Pick<Limits, 'least' | 'most'>

const boundOf = (check: z.core.$ZodCheck): Bounds => {
  // Every check that zod makes is one of its own kinds; the base type just does not say so.
  const def = (check as Check)._zod.def
  switch (def.check) {
    case 'greater_than':
      return { least: Number(def.value) }
    case 'less_than':
      return { most: Number(def.value) }
    case 'min_length':
      return { least: def.minimum }
    case 'max_length':
      return { most: def.maximum }
    default:
      return {}
  }
}

const boundsOf = (schema: Schema): Bounds =>
  (schema._zod.def.checks ?? []).map(boundOf).reduce<Bounds>((all, bound) => ({ ...all, ...bound }), {})

/** The limits that a schema sets to one value. */
export const limitsOf = (schema: Schema): Limits => {
  const def = defOf(schema)
  switch (def.type) {
    case 'pipe':
      return limitsOf(def.in)
    case 'enum':
      return { type: 'text', values: Object.values(def.entries) }
    case 'literal':
      return { type: 'text', values: def.values }
    case 'number':
      return { type: 'format' in def ? 'whole number' : 'number', ...boundsOf(schema) }
    case 'string':
      return { type: 'text', ...boundsOf(schema) }
    case 'array':
      return { type: 'list', ...boundsOf(schema) }
    case 'boolean':
      return { type: 'switch' }
    default:
      return { type: 'record' }
  }
}
