import * as z from 'zod/mini'
import { drainLineSchema } from '../parts/drain-line/schema'
import { headBoxSchema } from '../parts/head-box/schema'
import { mainSchema } from '../parts/main/schema'
import { obstacleSchema } from '../parts/obstacle/schema'
import { openingSchema } from '../parts/opening/schema'
import { rackRowSchema } from '../parts/rack-row/schema'
import { sumpSchema } from '../parts/sump/schema'
import { troughSchema } from '../parts/trough/schema'
import { benchSchema } from './bench'
import { counterSchema } from './counter'
import { houseSchema } from './house'
import { papersSchemaOf } from './papers'
import { settingsSchema } from './settings'

export const FORMAT = 'kerf-and-fall/layout'
export const VERSION = 1

/** Ten times the parts of an acre. */
export const MOST_PARTS = 5000

export const partSchema = z.discriminatedUnion('kind', [
  rackRowSchema,
  troughSchema,
  drainLineSchema,
  sumpSchema,
  mainSchema,
  headBoxSchema,
  obstacleSchema,
  openingSchema,
])

const planShape = {
  title: z.string().check(z.minLength(1), z.maxLength(120)),
  house: houseSchema,
  parts: z.array(partSchema).check(z.maxLength(MOST_PARTS)),
  settings: settingsSchema,
  bench: z._default(benchSchema, benchSchema.parse({})),
  counter: z._default(counterSchema, counterSchema.parse({})),
}

/** A bay as it was issued or kept: the whole layout without its own papers. */
export const planSchema = z.object(planShape)

export const papersSchema = papersSchemaOf(planSchema)

/** The document, and the whole of it: nothing derived is ever stored. */
export const layoutSchema = z.object({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  ...planShape,
  papers: z._default(papersSchema, papersSchema.parse({})),
})

export type Part = z.infer<typeof partSchema>

type Frozen<T> = { readonly [K in keyof T]: T[K] }

export type KeptPlan = Frozen<z.infer<typeof planSchema>>

export type Papers = Frozen<z.infer<typeof papersSchema>>

/** Immutable by habit: an edit returns a new layout that shares every object it did not touch. */
export type Layout = Frozen<z.infer<typeof layoutSchema>>
