import { describe, expect, test } from 'vitest'
import { conduitOf } from '../../src/catalogue/conduit'
import { STEEL_E_MPA, tubeSection } from '../../src/catalogue/section'
import { toKsi } from '../../src/units/force'
import { MM_PER_INCH } from '../../src/units/length'

const inInches = (value: number, power: number): number => value / MM_PER_INCH ** power

describe('section of conduit', () => {
  // Worked by hand from the diameters and walls of Steel Tube Institute, "EMT Weights and Dimensions" (as ANSI C80.3 and UL 797):
  // area in2, second moment in4, elastic and plastic modulus in3, radius of gyration in, outside over wall.
  test.each([
    ['1/2', 0.0876, 0.00485, 0.01373, 0.01854, 0.2352, 16.8],
    ['3/4', 0.1344, 0.01284, 0.02786, 0.03738, 0.3091, 18.8],
    ['1', 0.1981, 0.03036, 0.05222, 0.06979, 0.3916, 20.4],
    ['1-1/4', 0.2951, 0.07717, 0.10221, 0.13581, 0.5114, 23.2],
  ])('%s in: area %d, I %d, S %d, Z %d, r %d, D/t %d', (trade, area, i, s, z, r, over) => {
    const section = tubeSection(conduitOf(trade))
    expect(inInches(section.areaMm2, 2)).toBeCloseTo(area, 4)
    expect(inInches(section.inertiaMm4, 4)).toBeCloseTo(i, 5)
    expect(inInches(section.sectionMm3, 3)).toBeCloseTo(s, 5)
    expect(inInches(section.plasticMm3, 3)).toBeCloseTo(z, 5)
    // The last digit as a hand rounds it.
    expect(Math.abs(inInches(section.gyrationMm, 1) - r)).toBeLessThan(1e-4)
    expect(section.odOverWall).toBeCloseTo(over, 1)
  })

  // The same by hand in millimetres: 127.8 mm2, 12,638 mm4, 856 mm3; 86.7, 5,346, 457; 1-1/4 in 32,121 and 1,675.
  test.each([
    ['1', 127.8, 12_638, 856],
    ['3/4', 86.7, 5346, 457],
    ['1-1/4', 190.4, 32_121, 1675],
  ])('%s in: %d mm², %d mm4, %d mm³', (trade, area, i, s) => {
    const section = tubeSection(conduitOf(trade))
    expect(section.areaMm2).toBeCloseTo(area, 1)
    expect(Math.abs(section.inertiaMm4 / i - 1)).toBeLessThan(5e-4)
    expect(Math.abs(section.sectionMm3 / s - 1)).toBeLessThan(1.5e-3)
  })

  // Worked example of the trade notes, hand arithmetic: 0.03036 / 0.01284 and 0.05222 / 0.02786.
  test('1 in is 2.364 times as stiff as 3/4 in and 1.874 times as strong', () => {
    const [big, small] = [tubeSection(conduitOf('1')), tubeSection(conduitOf('3/4'))]
    expect(big.inertiaMm4 / small.inertiaMm4).toBeCloseTo(2.364, 2)
    expect(big.sectionMm3 / small.sectionMm3).toBeCloseTo(1.874, 2)
  })

  // A thin ring, by another way: radius cubed times wall times pi, for a wall that is next to nothing.
  test('a thin ring has pi times radius cubed times wall', () => {
    const [odMm, wallMm] = [100, 0.01]
    const radiusMm = (odMm - wallMm) / 2
    expect(tubeSection({ odMm, wallMm }).inertiaMm4 / (Math.PI * radiusMm ** 3 * wallMm)).toBeCloseTo(1, 6)
  })
})

test('steel: 29,000 ksi, AISC, from memory; 200 GPa as rounded in metric tables', () => {
  expect(toKsi(STEEL_E_MPA)).toBeCloseTo(29_000, 6)
  expect(Math.abs(STEEL_E_MPA / 200_000 - 1)).toBeLessThan(0.001)
})
