import { describe, expect, test } from 'vitest'
import { fieldText, fieldWriter, readField } from '../../src/sidebar/fieldText'
import { parseWarming } from '../../src/units/parseWater'
import { fahrenheitWarmer } from '../../src/units/temperature'
import { writerFor } from '../../src/units/writer'

const valueOf = (text: string, units: 'feet-inches' | 'metric'): number => {
  const read = parseWarming(text, units)
  return read.ok ? read.value : NaN
}

// A degree Celsius is 1.8 degrees Fahrenheit; where their scales begin counts for nothing.
describe('degrees warmer', () => {
  test.each(['60', '60°', '60 F', '60 °F'])('%s are 33.3 degrees Celsius', (text) => {
    expect(valueOf(text, 'feet-inches')).toBeCloseTo(33.333, 3)
  })

  test('are read in the letter that is typed, whatever the reader has', () => {
    expect(valueOf('33 °C', 'feet-inches')).toBe(33)
    expect(valueOf('18 f', 'metric')).toBe(10)
    expect(valueOf('33', 'metric')).toBe(33)
    expect(parseWarming('hot', 'metric')).toEqual({
      ok: false,
      sentence: '“hot” is not a number of degrees. Write it like 33 °C or 60 °F.',
    })
  })

  test('are written without an ice point', () => {
    expect(writerFor('feet-inches').warming(fahrenheitWarmer(60))).toBe('60 °F')
    expect(writerFor('metric').warming(33)).toBe('33 °C')
    expect(fieldText('warming', fahrenheitWarmer(60), fieldWriter('feet-inches'))).toBe('60.0 °F')
    expect(readField('warming', '18', 'feet-inches')).toEqual({ ok: true, value: 10 })
  })
})
