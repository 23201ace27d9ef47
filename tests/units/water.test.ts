import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  fromM3PerS,
  gph,
  gpm,
  litresPerMinute,
  toGph,
  toGpm,
  toLitresPerMinute,
  toM3PerS,
} from '../../src/units/flow'
import { headM, toHeadFeet, toHeadM } from '../../src/units/head'
import { fahrenheit, toFahrenheit } from '../../src/units/temperature'
import { feetPerSecond, toFeetPerSecond } from '../../src/units/velocity'
import { cubicMetres, gallons, toCubicMetres, toGallons } from '../../src/units/volume'

// NIST Special Publication 811 (2008), appendix B.8, to the digits printed there unless said otherwise.
describe('published factors', () => {
  test('a US gallon is 3.785412 L, 231 cubic inches', () => {
    expect(gallons(1)).toBeCloseTo(3.785412, 6)
    expect(gallons(1)).toBeCloseTo((231 * 2.54 ** 3) / 1000, 12)
    expect(toGallons(3.785411784)).toBe(1)
  })

  test('a gallon a minute is 6.309020e-05 cubic metres a second and 3.785412 L a minute', () => {
    expect(toM3PerS(gpm(1)) * 1e5).toBeCloseTo(6.30902, 5)
    expect(toLitresPerMinute(gpm(1))).toBeCloseTo(3.785412, 6)
  })

  test('a litre is 0.001 cubic metre', () => {
    expect(toCubicMetres(1)).toBe(0.001)
    expect(cubicMetres(1)).toBe(1000)
  })

  test('a foot a second is 0.3048 m/s', () => {
    expect(feetPerSecond(1)).toBeCloseTo(0.3048, 12)
    expect(toFeetPerSecond(0.3048)).toBeCloseTo(1, 12)
  })

  test.each([
    [0, 32],
    [100, 212],
    [-40, -40],
    [20, 68],
    [37, 98.6],
  ])('%d °C is %d °F', (c, f) => {
    expect(toFahrenheit(c)).toBeCloseTo(f, 12)
    expect(fahrenheit(f)).toBeCloseTo(c, 12)
  })
})

// Worked example of the trade notes, hand arithmetic: 480 towers at 4 gph are 1920 gph, 32 gpm.
test('480 towers at 4 gph take 32 gpm', () => {
  expect(toGpm(480 * gph(4))).toBeCloseTo(32, 12)
})

// 250 mL in 59 s: 0.25 L x 3600 / 59 = 15.254 L/h, over 3.785 is 4.03 gph.
test('a cup of 250 mL in 59 s is 4.0 gph', () => {
  expect(toGph((0.25 * 3600) / 59)).toBeCloseTo(4.03, 2)
})

test('10 ft of head are 3.048 m', () => {
  expect(toHeadFeet(3048)).toBeCloseTo(10, 12)
  expect(toHeadM(3048)).toBe(3.048)
  expect(headM(3.048)).toBe(3048)
})

test('every conversion comes back', () => {
  const pairs: readonly (readonly [(n: number) => number, (n: number) => number])[] = [
    [gallons, toGallons],
    [cubicMetres, toCubicMetres],
    [gph, toGph],
    [gpm, toGpm],
    [litresPerMinute, toLitresPerMinute],
    [fromM3PerS, toM3PerS],
    [fahrenheit, toFahrenheit],
    [feetPerSecond, toFeetPerSecond],
    [headM, toHeadM],
  ]
  fc.assert(
    fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (value) => {
      for (const [there, back] of pairs) expect(back(there(value))).toBeCloseTo(value, 9)
    }),
    { seed: 4017 },
  )
})
