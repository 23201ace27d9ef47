import { describe, expect, test } from 'vitest'
import { houseSchema } from '../../src/layout/house'
import { settingsSchema } from '../../src/layout/settings'
import { sumpSchema } from '../../src/parts/sump/schema'
import { troughSchema } from '../../src/parts/trough/schema'
import { kinds } from '../../src/parts/index'
import { rackRowSchema } from '../../src/parts/rack-row/schema'
import { fieldList, grouped } from '../../src/sidebar/fieldList'
import { onTick, inches } from '../../src/units/length'

/** Changed on the plan or by an action, so without words in the schema. */
const onThePlan = ['id', 'kind', 'at', 'heading', 'points', 'takenOut']

/** Typed in a table of its own beside the fields. */
const besideThem = ['curve']

test('bores are offered from the least up, though some are whole numbers', () => {
  const wordsOf = (schema: Parameters<typeof fieldList>[0], label: string) =>
    fieldList(schema)
      .find(({ meta }) => meta.label === label)
      ?.choices.map(({ words }) => words)
  expect(wordsOf(troughSchema, 'Outlet bore')).toEqual([
    '1/2 in outlet',
    '3/4 in outlet',
    '1 in outlet',
    '2 in outlet',
  ])
  expect(wordsOf(sumpSchema, 'Overflow pipe')).toEqual(['1 in', '1-1/2 in', '2 in', '3 in', '4 in'])
})

describe.each(kinds.map((kind) => ({ name: kind.kind, kind })))('the inspector of a $name', ({ kind }) => {
  const fields = fieldList(kind.schema)
  const part = kind.create(`${kind.kind}-1`, 'A', { x: 0, y: 0 }, kind.presets[0]!)

  test('shows every field that the part has, but what is changed on the plan or in a table', () => {
    expect(fields.map(({ key }) => key).sort()).toEqual(
      Object.keys(part)
        .filter((key) => !onThePlan.includes(key) && !besideThem.includes(key))
        .sort(),
    )
  })

  test('offers the value that the part holds among the words of each choice', () => {
    for (const { key, meta, choices } of fields)
      if (meta.unit === 'choice') {
        expect(choices.map(({ value }) => value)).toContain(Reflect.get(part, key))
        expect(new Set(choices.map(({ words }) => words)).size).toBe(choices.length)
      } else expect(choices).toEqual([])
  })

  test('lets no field be empty but one that says what then happens', () => {
    for (const { key, meta, whenNull, start } of fields) {
      const taken = kind.schema.safeParse({ ...part, [key]: null })
      expect(taken.success, key).toBe(whenNull !== undefined)
      // A name, which has no number to start from, is chosen from a list.
      if (whenNull !== undefined && meta.unit !== 'text')
        expect(kind.schema.safeParse({ ...part, [key]: start }).success).toBe(true)
    }
  })

  test('puts each field under one heading', () => {
    const groups = grouped(fields)
    expect(groups.flatMap((group) => group.fields.map(({ key }) => key)).sort()).toEqual(
      fields.map(({ key }) => key).sort(),
    )
    expect(new Set(groups.map(({ title }) => title)).size).toBe(groups.length)
  })
})

test('a riser left to the levels starts from 66 in when it is taken back', () => {
  const riser = fieldList(rackRowSchema).find(({ key }) => key === 'riserMm')
  expect(riser).toMatchObject({ whenNull: 'As long as the levels ask', start: onTick(inches(66)) })
})

test('settings and house give fields too; their lists are left to tables', () => {
  const settings = fieldList(settingsSchema).map(({ key }) => key)
  expect(settings).toContain('cartMm')
  expect(settings).not.toContain('accepted')
  expect(fieldList(houseSchema).map(({ key }) => key)).toEqual(['headroomMm'])
  expect(fieldList(houseSchema.shape.benchmark).map(({ key }) => key)).toEqual([
    'name',
    'valueMm',
    'levelMm',
    'closingMm',
  ])
})
