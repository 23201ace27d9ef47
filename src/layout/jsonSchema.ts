import * as z from 'zod/mini'
import { fields } from '../model/fields'
import { benchSchema } from './bench'
import { counterSchema } from './counter'
import { helpOf } from './fieldHelp'
import { houseSchema } from './house'
import { layoutSchema, partSchema, planSchema } from './schema'
import { settingsSchema } from './settings'

/** A plan stands in the layout itself and among its papers: what it is made of is written once, under these names. */
const named = z.registry<{ readonly id: string }>()
named.add(partSchema, { id: 'part' })
named.add(houseSchema, { id: 'house' })
named.add(settingsSchema, { id: 'settings' })
named.add(benchSchema, { id: 'bench' })
named.add(counterSchema, { id: 'counter' })
named.add(planSchema, { id: 'plan' })

type Published = z.core.JSONSchema.BaseSchema

/** The words of a field where other programs look for them; its unit and choices under names of their own. */
const withWords = (zodSchema: z.core.$ZodType, jsonSchema: Published): void => {
  const meta = fields.get(zodSchema)
  if (!meta) return
  jsonSchema.title = meta.label
  const help = helpOf(meta)
  if (help) jsonSchema.description = help
  jsonSchema['x-unit'] = meta.unit
  if (meta.choices) jsonSchema['x-choices'] = meta.choices
}

/** The JSON Schema of a layout file, as people and other programs write it: a field with a default may be left out. */
export const publishedSchema = (): Published => {
  const { $schema, ...schema } = z.toJSONSchema(layoutSchema, {
    io: 'input',
    metadata: named,
    override: ({ zodSchema, jsonSchema }) => {
      withWords(zodSchema, jsonSchema)
      // The reader refuses fields it does not know, so the published schema does too.
      if (jsonSchema.type === 'object') jsonSchema.additionalProperties = false
    },
  })
  return {
    ...($schema ? { $schema } : {}),
    title: 'Kerf & Fall layout',
    description:
      'Lengths and levels are in mm on a tick of 1/320 mm; falls are in mm per metre, flows in litres an hour, temperatures in degrees Celsius, shares of 1.',
    ...schema,
  }
}
