import { expect, test } from 'vitest'
import { inches } from '../../src/units/length'
import { asTyped, inTrench } from '../../src/units/precision'
import { type LevelReading, plainReading, unitsOfLevels, writeLevel } from '../../src/units/writeLevel'
import { writerFor } from '../../src/units/writer'

/** The sample bay's benchmark: a nail in the sill of the south-east door, called 100.00 ft, 3 in under the file's zero. */
const fromNail = (unit: LevelReading['in']): LevelReading => ({ zeroMm: inches(1200 + 3), in: unit })

test('a level is written like a length unless the crew reads it otherwise', () => {
  expect(writeLevel(inches(-8.25), 'feet-inches', inTrench)).toBe(`-8-1/4"`)
  expect(writeLevel(inches(-8.25), 'metric', inTrench)).toBe('-210 mm')
})

test('from the value of the benchmark nothing is negative', () => {
  // By hand: 1203 - 8.25 = 1194.75 in = 99 ft 6-3/4 in = 99.5625 ft = 30346.65 mm.
  expect(writeLevel(inches(-8.25), 'feet-inches', inTrench, fromNail('tape'))).toBe(`99' 6-3/4"`)
  expect(writeLevel(inches(-8.25), 'feet-inches', inTrench, fromNail('inches'))).toBe('1194.75"')
  expect(writeLevel(inches(-8.25), 'feet-inches', inTrench, fromNail('feet'))).toBe('99.56 ft')
  expect(writeLevel(inches(-8.25), 'feet-inches', inTrench, fromNail('mm'))).toBe('30347 mm')
  expect(writeLevel(inches(-8.25), 'metric', inTrench, fromNail('feet'))).toBe('99.56 ft')
  expect(writeLevel(inches(-8.25), 'feet-inches', asTyped, fromNail('feet'))).toBe('99.5625 ft')
})

test('a scale of levels has its marks in the units that levels are read in', () => {
  expect(unitsOfLevels('metric', plainReading)).toBe('metric')
  expect(unitsOfLevels('metric', fromNail('feet'))).toBe('feet-inches')
  expect(unitsOfLevels('feet-inches', fromNail('mm'))).toBe('metric')
})

test('what is no number has no level, and nothing has no sign', () => {
  expect(writeLevel(NaN, 'metric')).toBe('—')
  expect(writeLevel(-0.001, 'feet-inches', inTrench, { zeroMm: 0, in: 'inches' })).toBe('0.00"')
})

test('what says where levels are counted from is not counted from there', () => {
  const { plainLevel } = writerFor('feet-inches', inTrench, fromNail('feet'))
  expect([plainLevel(inches(1200)), plainLevel(inches(-3))]).toEqual(['100.00 ft', '-0.25 ft'])
})

test('a writer takes the reading along when it writes what is typed', () => {
  const writer = writerFor('feet-inches', inTrench, fromNail('feet'))
  expect([writer.level(0), writer.exact().level(0), writer.length(0)]).toEqual([
    '100.25 ft',
    '100.25 ft',
    '0"',
  ])
})
