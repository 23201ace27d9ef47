import { describe, expect, test } from 'vitest'
import { levelStep, onStep, stepped } from '../../../src/canvas/pole/levelSteps'
import { inches } from '../../../src/units/length'
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
