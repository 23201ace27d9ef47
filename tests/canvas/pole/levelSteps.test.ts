import { describe, expect, test } from 'vitest'
import { levelStep, onStep, readLevel, stepped } from '../../../src/canvas/pole/levelSteps'
import { feet, inches } from '../../../src/units/length'
import { plainReading, type LevelReading } from '../../../src/units/writeLevel'

const inchesOf = (mm: number) => mm / inches(1)
const eighths = levelStep('feet-inches', plainReading)

describe('levels step', () => {
  test('by an eighth of an inch, and an inch with Shift', () => {
    const from = (levelIn: number, up: 1 | -1, isLarge = false) =>
      inchesOf(stepped(inches(levelIn), up, isLarge, eighths, plainReading))
    expect(from(-22.5, 1)).toBeCloseTo(-22.375, 9)
    expect(from(-22.5, -1)).toBeCloseTo(-22.625, 9)
    expect(from(-22.5, -1, true)).toBeCloseTo(-23.5, 9)
    // From between two steps to the one that lies there: 10.3 in lies between 10-1/4 and 10-3/8.
    expect(from(10.3, 1)).toBeCloseTo(10.375, 9)
    expect(from(10.3, -1)).toBeCloseTo(10.25, 9)
  })

  test('by a millimetre where levels are read in millimetres', () => {
    expect(levelStep('metric', plainReading).smallMm).toBe(1)
    expect(levelStep('feet-inches', { zeroMm: 0, in: 'mm' }).smallMm).toBe(1)
    expect(levelStep('metric', { zeroMm: 0, in: 'inches' }).smallMm).toBe(inches(1 / 8))
  })

  test('on the scale that the crew reads, whose zero may lie anywhere', () => {
    // The benchmark is called 100.03 in: a level at 0 is read 100.03, and the nearest eighth is 100.00.
    const reading: LevelReading = { zeroMm: inches(100.03), in: 'inches' }
    expect(inchesOf(onStep(0, eighths, reading))).toBeCloseTo(-0.03, 9)
    expect(inchesOf(stepped(0, 1, false, eighths, reading))).toBeCloseTo(0.095, 9)
  })
})

describe('a typed level', () => {
  const typed = (text: string, reading: LevelReading = plainReading) => {
    const read = readLevel(text, 'feet-inches', reading)
    return read.ok ? inchesOf(read.mm) : read.sentence
  }

  test('is read as lengths are where levels are read so', () => {
    expect(typed('-22-1/2')).toBeCloseTo(-22.5, 2)
    expect(typed(`-1' 10-1/2"`)).toBeCloseTo(-22.5, 2)
  })

  test('is a bare number in the unit of the rod, from the benchmark’s value', () => {
    // The zero of the file is called 100 ft: 99.5 on a rod in feet lies 6 in under it.
    expect(typed('99.5', { zeroMm: feet(100), in: 'feet' })).toBeCloseTo(-6, 2)
    expect(typed('-254', { zeroMm: 0, in: 'mm' })).toBeCloseTo(-10, 2)
    expect(typed('94.25', { zeroMm: inches(100), in: 'inches' })).toBeCloseTo(-5.75, 2)
  })

  test('that is none comes back as a sentence', () => {
    expect(typed('deep')).toMatch(/deep/)
  })
})
