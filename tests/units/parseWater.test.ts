import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gph } from '../../src/units/flow'
import { fahrenheit } from '../../src/units/temperature'
import type { ParsedNumber } from '../../src/units/parseMeasure'
import { parseFlow, parseShare, parseTemperature } from '../../src/units/parseWater'
import { writerFor } from '../../src/units/writer'

const seed = 4018

const valueOf = (parsed: ParsedNumber): number | string => (parsed.ok ? parsed.value : parsed.sentence)

// A US gallon is 3.785411784 L, NIST Special Publication 811 (2008): 4 of them 15.1416 L, 32 a minute 7268.0 L/h.
describe('typed flows', () => {
  test.each([
    '4',
    '4 gph',
    '4GPH',
    '4 gal/h',
    '4 gal/hr',
    '4 gal per hour',
    '4 US gallons an hour',
    '4.0 gal. / hr.',
  ])('%s is 4 gallons an hour', (text) => {
    expect(valueOf(parseFlow(text, 'feet-inches'))).toBeCloseTo(15.1416, 4)
  })

  test.each(['32 gpm', '32 gal/min', '32 gallons per minute', '32 gallons a minute'])(
    '%s is 32 gallons a minute',
    (text) => {
      expect(valueOf(parseFlow(text, 'metric'))).toBeCloseTo(7267.99, 2)
    },
  )

  test.each([
    '120',
    '120 L/h',
    '120 lph',
    '120 litres per hour',
    '120 liters/hour',
    '2 L/min',
    '2 lpm',
    '2 l / min',
  ])('%s is 120 litres an hour', (text) => {
    expect(valueOf(parseFlow(text, 'metric'))).toBe(120)
  })

  test('a minus is left for the field to refuse', () => {
    expect(valueOf(parseFlow('−4 L/h', 'metric'))).toBe(-4)
    expect(valueOf(parseFlow('-0', 'metric'))).toBe(0)
  })
})

describe('typed temperatures', () => {
  test.each(['68', '68°', '68 F', '68f', '68 °F', '68 deg F', '68 degrees Fahrenheit', '20 °C'])(
    '%s is 20 °C',
    (text) => {
      expect(valueOf(parseTemperature(text, 'feet-inches'))).toBeCloseTo(20, 12)
    },
  )

  test.each(['20', '20 c', '20ºC', '20 celsius', '68 °F'])('%s is 20 °C to a metric builder', (text) => {
    expect(valueOf(parseTemperature(text, 'metric'))).toBeCloseTo(20, 12)
  })

  test('one below zero keeps its minus', () => {
    expect(valueOf(parseTemperature('-40', 'feet-inches'))).toBeCloseTo(-40, 12)
  })
})

test.each(['3', '3 %', '3%', '3 percent', '3 per cent', '3.0'])('%s is a share of 0.03', (text) => {
  expect(valueOf(parseShare(text))).toBe(0.03)
})

describe('what is no such measure is refused', () => {
  test.each([
    [parseFlow('', 'metric'), 'Nothing is typed. Write it like 15 L/h, 120 L/min or 4 gph.'],
    [parseFlow('plenty', 'feet-inches'), '“plenty” is not a flow. Write it like 4 gph, 32 gpm or 15 L/h.'],
    [parseFlow('4 °F', 'feet-inches'), '“4 °F” is not a flow. Write it like 4 gph, 32 gpm or 15 L/h.'],
    [parseFlow('gph', 'feet-inches'), '“gph” is not a flow. Write it like 4 gph, 32 gpm or 15 L/h.'],
    [parseFlow('4 5 gph', 'feet-inches'), '“4 5 gph” is not a flow. Write it like 4 gph, 32 gpm or 15 L/h.'],
    [
      parseTemperature('68 gph', 'feet-inches'),
      '“68 gph” is not a temperature. Write it like 68 °F or 20 °C.',
    ],
    [parseTemperature('warm', 'metric'), '“warm” is not a temperature. Write it like 20 °C or 68 °F.'],
    [parseShare('most'), '“most” is not a share. Write it like 3 % or 31.6 %.'],
    [parseShare('3,5'), '“3,5” has a comma. Write thousands without one, and decimals with a point.'],
  ])('%j', (parsed, sentence) => {
    expect(parsed).toEqual({ ok: false, sentence })
  })
})

test('what a field shows of a tenth that was typed is read back as it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 5000 }), (tenths) => {
      const typed = tenths / 10
      const [us, metric] = [writerFor('feet-inches').exact(), writerFor('metric').exact()]
      expect(valueOf(parseFlow(us.flow(gph(typed)), 'metric'))).toBeCloseTo(gph(typed), 9)
      expect(valueOf(parseFlow(metric.flow(typed), 'feet-inches'))).toBe(typed)
      const degrees = us.temperature(fahrenheit(typed))
      expect(valueOf(parseTemperature(degrees, 'metric'))).toBeCloseTo(fahrenheit(typed), 9)
      expect(valueOf(parseTemperature(metric.temperature(typed), 'feet-inches'))).toBe(typed)
      expect(valueOf(parseShare(us.share(typed / 100)))).toBeCloseTo(typed / 100, 12)
    }),
    { seed },
  )
})
