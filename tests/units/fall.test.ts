import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseFall } from '../../src/units/parseFall'
import { inchesPerFoot } from '../../src/units/slope'
import { writeFall } from '../../src/units/writeFall'

const seed = 4015

/** 1/8 in in 12 in is 1 in 96: 10.41666... mm in a metre. */
const eighth = 1000 / 96

const mmPerM = (text: string, units: 'feet-inches' | 'metric' = 'feet-inches'): number | string => {
  const parsed = parseFall(text, units)
  return parsed.ok ? parsed.mmPerM : parsed.sentence
}

describe('typed falls', () => {
  test.each(['1/8', '1/8 in/ft', '1/8"/ft', '1/8" per foot', '1/8 inch per foot', '⅛', '.125', '1:96'])(
    '%s is 1/8 in a foot',
    (text) => {
      expect(mmPerM(text)).toBeCloseTo(eighth, 10)
    },
  )

  test.each(['10', '10 mm/m', '10mm per metre', '1 cm/m', '1 %', '1%', '1:100'])(
    '%s is 10 mm in a metre',
    (text) => {
      expect(mmPerM(text, 'metric')).toBe(10)
    },
  )

  test('marks are read whatever the units, a bare fraction only in feet and inches', () => {
    expect(mmPerM('10 mm/m')).toBe(10)
    expect(mmPerM('1/8 in/ft', 'metric')).toBeCloseTo(eighth, 10)
    expect(mmPerM('1/8', 'metric')).toMatch(/is not a fall/)
  })

  test('a minus is a rise, and minus nothing is level', () => {
    expect(mmPerM('-1/8')).toBeCloseTo(-eighth, 10)
    expect(mmPerM('-0')).toBe(0)
  })

  test.each([
    ['', /^Nothing is typed/],
    ['steep', /^“steep” is not a fall\. Write it like 1\/8 in\/ft, 10 mm\/m, 1 % or 1:96\.$/],
    ['1/0', /has 0 under its fraction/],
    ['1:0', /has no run/],
    ['13', /steeper than one in one/],
    ['1,5', /has a comma/],
    ['5 ft', /is not a fall/],
  ])('"%s" is refused', (text, sentence) => {
    expect(mmPerM(text)).toMatch(sentence)
  })
})

describe('written falls', () => {
  test.each([
    [eighth, '1/8 in/ft', '10.4 mm/m'],
    [eighth / 2, '1/16 in/ft', '5.2 mm/m'],
    [-eighth, '-1/8 in/ft', '-10.4 mm/m'],
    [10, '0.12 in/ft', '10 mm/m'],
    [0, '0 in/ft', '0 mm/m'],
    [-0.001, '0 in/ft', '0 mm/m'],
    [1000, '12 in/ft', '1000 mm/m'],
    [NaN, '—', '—'],
  ])('%d mm/m', (fall, imperial, metric) => {
    expect(writeFall(fall, 'feet-inches')).toBe(imperial)
    expect(writeFall(fall, 'metric')).toBe(metric)
  })

  test('any 1/64 in/ft comes back, and any 0.1 mm/m', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -768, max: 768 }),
        fc.integer({ min: -10_000, max: 10_000 }),
        (parts, tenths) => {
          const written = writeFall(inchesPerFoot(parts / 64), 'feet-inches')
          expect(mmPerM(written)).toBeCloseTo(parts * (eighth / 8), 9)
          expect(mmPerM(writeFall(tenths / 10, 'metric'), 'metric')).toBe(tenths / 10 + 0)
        },
      ),
      { seed },
    )
  })
})
