import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { feet, fromTicks, inches, toInches, type Units } from '../../src/units/length'
import { parseLevel } from '../../src/units/parseLevel'
import { asTyped } from '../../src/units/precision'
import { type LevelReading, type LevelUnits, plainReading, writeLevel } from '../../src/units/writeLevel'

const typed = (text: string, reading: LevelReading = plainReading, units: Units = 'feet-inches') => {
  const read = parseLevel(text, units, reading)
  return read.ok ? toInches(read.mm) : read.sentence
}

describe('a typed level', () => {
  test('is read as lengths are where levels are read so', () => {
    expect(typed('-22-1/2')).toBeCloseTo(-22.5, 9)
    expect(typed(`-1' 10-1/2"`)).toBeCloseTo(-22.5, 9)
    expect(typed('-571.5', plainReading, 'metric')).toBeCloseTo(-22.5, 9)
  })

  test('is a bare number in the unit of the rod, from the benchmark’s value', () => {
    // The zero of the file is called 100 ft: 99.5 on a rod in feet lies 6 in under it.
    expect(typed('99.5', { zeroMm: feet(100), in: 'feet' })).toBeCloseTo(-6, 9)
    expect(typed('99.5', { zeroMm: feet(100), in: 'feet' }, 'metric')).toBeCloseTo(-6, 9)
    expect(typed('-254', { zeroMm: 0, in: 'mm' })).toBeCloseTo(-10, 9)
    expect(typed('94.25', { zeroMm: inches(100), in: 'inches' })).toBeCloseTo(-5.75, 9)
    expect(typed('94-1/4', { zeroMm: inches(100), in: 'inches' })).toBeCloseTo(-5.75, 9)
    expect(typed('99 1/2', { zeroMm: feet(100), in: 'feet' })).toBeCloseTo(-6, 9)
  })

  test('has its minus in any spelling', () => {
    expect(typed('\u22120.5', { zeroMm: 0, in: 'feet' })).toBeCloseTo(-6, 9)
  })

  test('keeps its own unit where it has one, and feet and inches where it is written so', () => {
    const rod: LevelReading = { zeroMm: feet(100), in: 'feet' }
    expect(typed(`1194"`, rod)).toBeCloseTo(-6, 9)
    expect(typed(`99' 6"`, rod)).toBeCloseTo(-6, 9)
    expect(typed('99-6', rod)).toBeCloseTo(-6, 9)
    expect(typed('99-6-1/2', rod)).toBeCloseTo(-5.5, 9)
    expect(typed('30327.6 mm', rod)).toBeCloseTo(-6, 9)
  })

  test('that is none comes back as a sentence', () => {
    expect(typed('deep')).toMatch(/deep/)
    expect(typed('.', { zeroMm: 0, in: 'feet' })).toMatch(/not a length/)
    expect(typed('1/2', { zeroMm: 0, in: 'mm' })).toMatch(/not a length/)
  })
})

describe('a level typed as it is written is the same level', () => {
  /** Whole ticks, about 30 m up and down: a bay on a slope. */
  const levels = fc.integer({ min: -10_000_000, max: 10_000_000 }).map(fromTicks)
  const units = fc.constantFrom<Units>('feet-inches', 'metric')

  const again = (mm: number, in_: Units, reading: LevelReading): number => {
    const read = parseLevel(writeLevel(mm, in_, asTyped, reading), in_, reading)
    return read.ok ? read.mm : NaN
  }

  const holds = (unit: LevelUnits, mostOffMm: number) =>
    fc.assert(
      fc.property(levels, levels, units, (mm, zeroMm, in_) => {
        expect(Math.abs(again(mm, in_, { zeroMm, in: unit }) - mm)).toBeLessThanOrEqual(mostOffMm)
      }),
      { seed: 9031 },
    )

  test('to the tick in inches and in feet', () => {
    holds('inches', 0)
    holds('feet', 0)
  })

  test('to the tenth of a millimetre in millimetres, and on the tape to 1/64 in', () => {
    // Half a tenth of a millimetre, half of 1/64 in, and half a tick that either is rounded to.
    holds('mm', 0.05 + fromTicks(1))
    holds('tape', inches(1 / 128) + fromTicks(1))
  })

  test('on a tape too, where level and benchmark lie on 1/64 in', () => {
    const sixtyFourths = fc.integer({ min: -50_000, max: 50_000 }).map((parts) => inches(parts / 64))
    fc.assert(
      fc.property(sixtyFourths, sixtyFourths, (mm, zeroMm) => {
        expect(again(mm, 'feet-inches', { zeroMm, in: 'tape' })).toBeCloseTo(mm, 6)
      }),
      { seed: 9032 },
    )
  })
})
