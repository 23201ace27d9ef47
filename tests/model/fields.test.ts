import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { fieldNumberWords } from '../../src/model/fieldWords'
import { flow, share, temperature } from '../../src/model/fields'
import { gph } from '../../src/units/flow'
import { parseFlow, parseShare, parseTemperature } from '../../src/units/parseWater'
import { writerFor } from '../../src/units/writer'

const words = { label: 'Field', group: 'Water' }
const wanted = flow(gph(4), words, gph(0.5), gph(30))
const warm = temperature(20, words, 2, 40)
const scatter = share(0.03, words, 0, 0.3)

describe('fields of water', () => {
  test('take their defaults where nothing stands', () => {
    // 4 x 3.785411784 L, exact.
    expect([z.parse(wanted, undefined), z.parse(warm, undefined), z.parse(scatter, undefined)]).toEqual([
      15.141647136, 20, 0.03,
    ])
  })

  test.each([
    [wanted, '0.5 gph', '0.49 gph', (text: string) => parseFlow(text, 'metric')],
    [wanted, '30 gph', '30.01 gph', (text: string) => parseFlow(text, 'metric')],
    [warm, '35.6 °F', '35.5 °F', (text: string) => parseTemperature(text, 'metric')],
    [warm, '104 °F', '104.1 °F', (text: string) => parseTemperature(text, 'metric')],
    [scatter, '30 %', '30.1 %', parseShare],
  ] as const)(
    '%# take a bound typed in the unit of the reader, and nothing past it',
    (field, bound, past, parse) => {
      const read = (text: string) => {
        const parsed = parse(text)
        return parsed.ok && z.safeParse(field, parsed.value).success
      }
      expect([read(bound), read(past)]).toEqual([true, false])
    },
  )

  test('keep what they hold when it is read again', () => {
    const any = flow(0, words, 0, 1e6)
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (lph) => {
        const kept = z.parse(any, lph)
        expect(z.parse(any, kept)).toBe(kept)
        expect(Math.abs(kept - lph)).toBeLessThan(1e-8)
      }),
      { seed: 4019 },
    )
    expect(Object.is(z.parse(any, -0), 0)).toBe(true)
  })

  test.each([NaN, Infinity, '4', null])('refuse %s', (value) => {
    for (const field of [wanted, warm, scatter]) expect(z.safeParse(field, value).success).toBe(false)
  })
})

test('the number of every sort of field is written in the units of the reader', () => {
  const written = (units: 'feet-inches' | 'metric') =>
    (
      ['length', 'level', 'plain-level', 'fall', 'flow', 'temperature', 'share', 'count', undefined] as const
    ).map((unit) => fieldNumberWords(1, unit, writerFor(units)))
  // 1 mm is 0.0394 in; 1 mm/m is 0.012 in/ft; 1 L/h is 0.264 gph; 1 °C is 33.8 °F.
  expect(written('feet-inches')).toEqual([
    '1/16"',
    '1/16"',
    '1/16"',
    '0.012 in/ft',
    '0.3 gph',
    '34 °F',
    '100.0 %',
    '1',
    '1',
  ])
  expect(written('metric')).toEqual([
    '1 mm',
    '1 mm',
    '1 mm',
    '1 mm/m',
    '1.0 L/h',
    '1 °C',
    '100.0 %',
    '1',
    '1',
  ])
})
