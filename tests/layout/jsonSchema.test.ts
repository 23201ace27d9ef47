import { describe, expect, test } from 'vitest'
import { publishedSchema } from '../../src/layout/jsonSchema'
import { expectGolden } from '../support/golden'

type Node = { readonly [key: string]: Node } & { readonly [key: string]: unknown } // as deep as the test looks

const rowFields = (): Node => {
  const schema = publishedSchema() as Node
  const options = schema['$defs']!['part']!['oneOf'] as unknown as readonly Node[]
  return options.find((option) => option['properties']!['kind']!['const'] === ('rack-row' as unknown))![
    'properties'
  ]!
}

describe('the published schema', () => {
  test('is kept beside the program', () => {
    expectGolden('public/layout.schema.json', `${JSON.stringify(publishedSchema(), null, 2)}\n`)
  })

  test('tells the words, the unit, the bounds and the default of a length', () => {
    // 48 in and 120 in are 1219.2 mm and 3048 mm.
    expect(rowFields()['rackLengthMm']).toEqual({
      title: 'Rack length',
      'x-unit': 'length',
      type: 'number',
      minimum: 1219.2,
      maximum: 3048,
      default: 3048,
    })
  })

  test('writes what a plan is made of once, for the layout and for the plans that it keeps', () => {
    const schema = publishedSchema() as Node
    expect(schema['properties']!['parts']!['items']).toEqual({ $ref: '#/$defs/part' })
    expect(schema['$defs']!['plan']!['properties']!['parts']!['items']).toEqual({ $ref: '#/$defs/part' })
  })

  test('asks for what has no default and allows nothing that the reader refuses', () => {
    const { required, additionalProperties } = publishedSchema()
    expect(required).toEqual(['format', 'version', 'title', 'house', 'parts', 'settings'])
    expect(additionalProperties).toBe(false)
  })
})
