import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ksi, poundsForce, psf } from '../../src/units/force'
import { pounds } from '../../src/units/mass'
import { parseForce, parseMass, parsePressure, parseStress } from '../../src/units/parseForce'
import type { ParsedNumber } from '../../src/units/parseMeasure'
import { writerFor } from '../../src/units/writer'

const valueOf = (parsed: ParsedNumber): number | string => (parsed.ok ? parsed.value : parsed.sentence)

// NIST Special Publication 811 (2008), appendix B.8: a pound is 0.45359237 kg, a pound-force 4.448222 N, a ksi
// 6.894757 MPa, a pound-force a square foot 0.04788026 kPa.
describe('typed weights', () => {
  test.each(['25', '25 lb', '25lbs', '25 lb.', '25 pounds', '25 LB', '11.33980925 kg'])(
    '%s is 25 pounds',
    (text) => {
      expect(valueOf(parseMass(text, 'feet-inches'))).toBeCloseTo(11.33980925, 8)
    },
  )

  test.each(['11', '11 kg', '11 kilos', '11 kilograms', '11.0 kg.'])('%s is 11 kilograms', (text) => {
    expect(valueOf(parseMass(text, 'metric'))).toBe(11)
  })
})

describe('typed forces', () => {
  test.each(['50', '50 lb', '50 lbf', '50 pounds', '222.4111 N'])('%s is 50 pounds of force', (text) => {
    expect(valueOf(parseForce(text, 'feet-inches'))).toBeCloseTo(222.4111, 4)
  })

  test.each(['220', '220 N', '220n', '220 newtons'])('%s is 220 newtons', (text) => {
    expect(valueOf(parseForce(text, 'metric'))).toBe(220)
  })
})

describe('typed stresses and pressures', () => {
  test.each(['30', '30 ksi', '30000 psi', '206.84271 MPa'])('%s is 30 ksi', (text) => {
    expect(valueOf(parseStress(text, 'feet-inches'))).toBeCloseTo(206.8427, 4)
  })

  test.each(['200', '200 MPa', '200 mpa'])('%s is 200 MPa', (text) => {
    expect(valueOf(parseStress(text, 'metric'))).toBe(200)
  })

  test.each(['1500', '1500 psf', '71.82039 kPa'])('%s is 1500 psf', (text) => {
    expect(valueOf(parsePressure(text, 'feet-inches'))).toBeCloseTo(71.82039, 5)
  })

  test('a bare number is kPa to a metric builder', () => {
    expect(valueOf(parsePressure('70', 'metric'))).toBe(70)
  })
})

test('a minus is left for the field to refuse', () => {
  expect(valueOf(parseForce('−50 N', 'metric'))).toBe(-50)
  expect(valueOf(parseMass('-0', 'metric'))).toBe(0)
})

describe('what is no such measure is refused', () => {
  test.each([
    [parseMass('', 'metric'), 'Nothing is typed. Write it like 11 kg or 25 lb.'],
    [parseMass('heavy', 'feet-inches'), '“heavy” is not a weight. Write it like 25 lb or 11 kg.'],
    [parseMass('25 psi', 'feet-inches'), '“25 psi” is not a weight. Write it like 25 lb or 11 kg.'],
    [parseForce('50 kg', 'metric'), '“50 kg” is not a force. Write it like 220 N or 50 lb.'],
    [parseStress('30 lb', 'feet-inches'), '“30 lb” is not a stress. Write it like 30 ksi or 200 MPa.'],
    [
      parsePressure('1,500', 'metric'),
      '“1,500” has a comma. Write thousands without one, and decimals with a point.',
    ],
    [
      parsePressure('soft', 'metric'),
      '“soft” is not a pressure on ground. Write it like 70 kPa or 1500 psf.',
    ],
  ])('%j', (parsed, sentence) => {
    expect(parsed).toEqual({ ok: false, sentence })
  })
})

test('what a field shows of a tenth that was typed is read back as it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 5000 }), (tenths) => {
      const typed = tenths / 10
      const [us, metric] = [writerFor('feet-inches').exact(), writerFor('metric').exact()]
      expect(valueOf(parseMass(us.mass(pounds(typed)), 'metric'))).toBeCloseTo(pounds(typed), 9)
      expect(valueOf(parseMass(metric.mass(typed), 'feet-inches'))).toBe(typed)
      expect(valueOf(parseForce(us.force(poundsForce(typed)), 'metric'))).toBeCloseTo(poundsForce(typed), 9)
      expect(valueOf(parseForce(metric.force(typed), 'feet-inches'))).toBe(typed)
      expect(valueOf(parseStress(us.stress(ksi(typed)), 'metric'))).toBeCloseTo(ksi(typed), 9)
      expect(valueOf(parseStress(metric.stress(typed), 'feet-inches'))).toBe(typed)
      expect(valueOf(parsePressure(us.pressure(psf(typed)), 'metric'))).toBeCloseTo(psf(typed), 9)
      expect(valueOf(parsePressure(metric.pressure(typed), 'feet-inches'))).toBe(typed)
    }),
    { seed: 7002 },
  )
})
