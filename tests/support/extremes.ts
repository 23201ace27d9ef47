import fc from 'fast-check'
import * as z from 'zod/mini'
import { layoutSchema, type Layout } from '../../src/layout/schema'
import { houseSchema } from '../../src/layout/house'
import { settingsSchema } from '../../src/layout/settings'
import { emptyBay } from '../../src/layout/empty'
import { kinds } from '../../src/parts'
import { LONGEST_MM, feet } from '../../src/units/length'

type Limits = z.core.JSONSchema.BaseSchema

/** Made by hand below, where a value must be more than within its bounds. */
const BY_HAND = new Set(['id', 'kind', 'name', 'at', 'points', 'takenOut', 'accepted', 'place'])

const onlyOne = <T>(value: T) => fc.constant(value)

/** The ends of what a number may be, and anything between. */
const number = ({ type, minimum, maximum }: Limits): fc.Arbitrary<unknown> => {
  const [min, max] = [minimum ?? -LONGEST_MM, maximum ?? LONGEST_MM]
  const between = type === 'integer' ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true })
  return fc.oneof(onlyOne(min), onlyOne(max), between)
}

/** Legal values of one field, from its JSON Schema; nothing for a field that is no plain value. */
const legal = (limits: Limits): fc.Arbitrary<unknown> | undefined => {
  if (limits.const !== undefined) return onlyOne(limits.const)
  if (limits.enum) return fc.constantFrom(...limits.enum)
  if (limits.type === 'boolean') return fc.boolean()
  if (limits.type === 'number' || limits.type === 'integer') return number(limits)
  const options = limits.anyOf?.flatMap((option) => legal(option as Limits) ?? [])
  if (options) return fc.oneof(...options)
  return limits.type === 'null' ? onlyOne(null) : undefined
}

/** Some of an object's fields at legal values, the others left to their defaults. */
const someFields = (schema: z.core.$ZodType): fc.Arbitrary<Record<string, unknown>> => {
  const { properties = {} } = z.toJSONSchema(schema, { io: 'input' })
  const fields = Object.entries(properties).flatMap(([name, limits]) => {
    const values = BY_HAND.has(name) ? undefined : legal(limits as Limits)
    return values ? [[name, values] as const] : []
  })
  return fc.record(Object.fromEntries(fields), { requiredKeys: [] })
}

/** Near each other, so that parts meet; or as far out as a file can hold. */
const coordinate = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -2000, max: 12_000 }) },
  { weight: 1, arbitrary: fc.constantFrom(0, -LONGEST_MM, LONGEST_MM) },
)
const place = fc.record({ x: coordinate, y: coordinate })
/** Points may repeat. */
const run = fc.array(place, { minLength: 2, maxLength: 5 })

const partOf = (kind: (typeof kinds)[number]) =>
  fc
    .record({
      at: place,
      points: run,
      values: someFields(kind.schema),
      takenOut: fc.uniqueArray(fc.nat(1199)),
    })
    .map(({ at, points, values, takenOut }) => ({ ...values, kind: kind.kind, at, points, takenOut }))

const profile = fc.array(
  fc.record({
    distanceMm: fc.constantFrom(0, 1, 500, LONGEST_MM),
    heightMm: fc.constantFrom(0, 1800, LONGEST_MM),
  }),
  { minLength: 1, maxLength: 3 },
)

const house = fc
  .record({
    values: someFields(houseSchema),
    outline: fc.option(fc.array(place, { minLength: 3, maxLength: 6 }), { nil: undefined }),
    curvedWalls: fc.array(fc.record({ edge: fc.integer({ min: 0, max: 199 }), profile }), { maxLength: 3 }),
    spotLevels: fc.array(
      fc.record({ at: place, levelMm: fc.constantFrom(0, -50, LONGEST_MM, -LONGEST_MM) }),
      {
        maxLength: 4,
      },
    ),
    services: fc.array(fc.record({ points: run, depthMm: fc.constantFrom(0, 300, 6096) }), { maxLength: 2 }),
  })
  .map(({ values, outline, ...lists }) => ({
    outline: outline ?? emptyBay(feet(30), feet(40), 'Bay').house.outline,
    ...values,
    ...lists,
  }))

/** With ids and names; the schema drops fields that a kind has not. */
const listed = (parts: readonly Record<string, unknown>[]) =>
  parts.map((part, index) => ({ ...part, id: `${String(part['kind'])}-${index + 1}`, name: 'Part' }))

/** Layouts at the very ends of what the schema accepts, sound or not: lines without length, walls that cross, floors like cliffs. */
export const extremeLayout: fc.Arbitrary<Layout> = fc
  .record({
    house,
    settings: someFields(settingsSchema),
    parts: fc.array(fc.oneof(...kinds.map(partOf)), { maxLength: 6 }),
  })
  .map(({ parts, ...rest }) =>
    layoutSchema.parse({ ...emptyBay(feet(30), feet(40), 'Bay'), ...rest, parts: listed(parts) }),
  )
