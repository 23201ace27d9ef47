import { describe, expect, test } from 'vitest'
import { fieldText, fieldWriter, readField, readNumber } from '../../src/sidebar/fieldText'
import { gph } from '../../src/units/flow'

const writer = fieldWriter('feet-inches')

describe('a field holds in words', () => {
  test.each([
    ['length', 11.90625, `15/32"`], // 15/32 in at 25.4 mm an inch
    ['length', 1676.4, `5' 6"`],
    ['level', -209.55, `-8-1/4"`],
    ['fall', 1000 / 96, '1/8 in/ft'], // 1/8 in in 12 in
    ['count', 3, '3'],
    ['share', 0.03, '3.00 %'],
    ['flow', gph(4.125), '4.125 gph'],
    ['temperature', 20, '68.0 °F'],
    ['text', 'Row 4', 'Row 4'],
    ['length', null, ''],
  ] as const)('%s %s as %s', (unit, value, words) => {
    expect(fieldText(unit, value, writer)).toBe(words)
  })
})

test('a metric field gives back the tenth of a millimetre that was typed', () => {
  expect(fieldText('length', 1690.4, fieldWriter('metric'))).toBe('1690.4 mm')
})

describe('a field takes', () => {
  test.each([
    ['length', `5' 6"`, 1676.4],
    ['level', '-8 1/4', -209.55],
    ['count', ' 12 ', 12],
    ['share', '3', 0.03],
    ['flow', '4', gph(4)],
    ['temperature', '68', 20],
    ['text', 'Row 4', 'Row 4'],
  ] as const)('%s “%s”', (unit, text, value) => {
    expect(readField(unit, text, 'feet-inches')).toEqual({ ok: true, value })
  })

  test('a fall in the units of the reader', () => {
    expect(readField('fall', '10', 'metric')).toEqual({ ok: true, value: 10 })
    const perFoot = readField('fall', '1/8', 'feet-inches')
    expect(perFoot.ok && Number(perFoot.value)).toBeCloseTo(10.4167, 3)
  })
})

test('a metric field of water is read and written in metric', () => {
  const metric = fieldWriter('metric')
  const shown = [fieldText('flow', 15.25, metric), fieldText('temperature', 12.5, metric)]
  expect(shown).toEqual(['15.25 L/h', '12.5 °C'])
  expect(readField('flow', '15.25', 'metric')).toEqual({ ok: true, value: 15.25 })
  expect(readField('temperature', '12.5', 'metric')).toEqual({ ok: true, value: 12.5 })
})

test('degrees are a plain number with its sign', () => {
  expect(readNumber('-12.5')).toEqual({ ok: true, value: -12.5 })
  expect(readNumber('north')).toEqual({ ok: false, sentence: '“north” is not a number.' })
})

describe('a level stands in its field as it is read', () => {
  // A benchmark called 100 ft that lies at -3 in: 0 in the file is 100 ft 3 in on paper, 1203 in.
  const reading = { zeroMm: 25.4 * 1203, in: 'feet' } as const

  test('and is typed likewise', () => {
    // By hand: 1203 - 8.25 = 1194.75 in = 99.5625 ft.
    expect(fieldText('level', -209.55, fieldWriter('feet-inches', reading))).toBe('99.5625 ft')
    expect(readField('level', '99.5625', 'feet-inches', reading)).toEqual({ ok: true, value: -209.55 })
  })

  test('but no length is, and not what the benchmark itself is called', () => {
    const exact = fieldWriter('feet-inches', reading)
    expect(fieldText('length', -209.55, exact)).toBe(`-8-1/4"`)
    expect(readField('length', '8-1/4', 'feet-inches', reading)).toEqual({ ok: true, value: 209.55 })
    expect(fieldText('plain-level', 25.4 * 1200, exact)).toBe('100.00 ft')
    expect(readField('plain-level', '100', 'feet-inches', reading)).toEqual({ ok: true, value: 30480 })
  })
})

describe('a field refuses with a sentence', () => {
  test.each([
    ['count', '3.5'],
    ['count', '-1'],
    ['count', ''],
    ['share', 'most'],
    ['flow', '4 ft'],
    ['temperature', 'cold'],
    ['length', 'long'],
    ['fall', 'steep'],
  ] as const)('%s “%s”', (unit, text) => {
    const read = readField(unit, text, 'feet-inches')
    expect(!read.ok && read.sentence).toMatch(/^[A-Z“].*\.$/)
  })
})
