import { describe, expect, test } from 'vitest'
import { lumberOf } from '../../src/catalogue/lumber'
import { timberOf, timbers } from '../../src/catalogue/timber'
import { DURATION, FLAT_USE, valuesOf } from '../../src/catalogue/timberFactors'
import { toPsi } from '../../src/units/force'
import { inches, MM_PER_M } from '../../src/units/length'
import { toPoundsPerFoot } from '../../src/units/mass'

const WIDE_MM = inches(3.5)

// NDS Supplement, Table 4A, No. 2 (as a public finite-element library's table prints it, page 35 to 37), psi.
describe('reference values of No. 2', () => {
  test.each([
    ['spf', 875, 450, 135, 425, 1150, 1.4e6, 510e3, 0.42],
    ['hem-fir', 850, 525, 150, 405, 1300, 1.3e6, 470e3, 0.43],
    ['douglas-fir', 900, 575, 180, 625, 1350, 1.6e6, 580e3, 0.5],
  ])('%s', (species, fb, ft, fv, fcPerp, fc, e, eMin, gravity) => {
    const timber = timberOf(species)
    expect(toPsi(timber.bendingMpa)).toBeCloseTo(fb, 6)
    expect(toPsi(timber.tensionMpa)).toBeCloseTo(ft, 6)
    expect(toPsi(timber.shearMpa)).toBeCloseTo(fv, 6)
    expect(toPsi(timber.acrossMpa)).toBeCloseTo(fcPerp, 6)
    expect(toPsi(timber.alongMpa)).toBeCloseTo(fc, 6)
    expect(toPsi(timber.eMpa)).toBeCloseTo(e, 3)
    expect(toPsi(timber.eMinMpa)).toBeCloseTo(eMin, 3)
    expect(timber.gravity).toBe(gravity)
  })

  // Southern Pine Use Guide, after 1 June 2013, in MPa and GPa to the digits that it prints.
  test('southern pine in MPa', () => {
    const pine = timberOf('southern-pine')
    expect(pine.bendingMpa).toBeCloseTo(7.6, 1)
    expect(pine.tensionMpa).toBeCloseTo(4.7, 1)
    expect(pine.shearMpa).toBeCloseTo(1.2, 1)
    expect(pine.acrossMpa).toBeCloseTo(3.9, 1)
    expect(pine.alongMpa).toBeCloseTo(10, 1)
    expect(pine.eMpa / 1000).toBeCloseTo(9.7, 1)
    expect(pine.eMinMpa / 1000).toBeCloseTo(3.5, 1)
  })

  test('every row has a source, and no species stands twice', () => {
    expect(new Set(timbers.map(({ species }) => species)).size).toBe(timbers.length)
    for (const { source } of timbers) expect(source).toMatch(/NDS Supplement/)
  })

  test('an unknown species is named', () => {
    expect(() => timberOf('oak')).toThrow('The catalogue has no timber "oak"; it has spf, hem-fir')
  })
})

// AWC Wood Structural Design Data, 1992 revisions: 28.5, 29.2 and 36.7 lb/ft3; a 2x4 has 5.25 in2, so 5.25 / 144 ft2.
test.each([
  ['spf', 1.04],
  ['hem-fir', 1.065],
  ['southern-pine', 1.338],
])('a foot of 2x4 in %s weighs %d lb', (species, pounds) => {
  const { thickMm, wideMm } = lumberOf('lumber-2x4')
  const kgPerM = (timberOf(species).kgPerM3 * thickMm * wideMm) / MM_PER_M ** 2
  expect(toPoundsPerFoot(kgPerM)).toBeCloseTo(pounds, 2)
})

// NDS Supplement Table 4A adjustment factors (Merritt, Building Design and Construction Handbook, Table 10.6, with its
// footnotes); size factors NELMA section 8 Table A. Products of the printed values by hand, psi.
describe('values of a 2x4, dry and wet, without load duration', () => {
  test.each([
    // 875 x 1.5; x 0.85; 1150 x 1.15; x 0.80; 425 x 0.67; 1.4e6 x 0.90; 510e3 x 0.90
    ['spf', 1312.5, 1115.6, 1322.5, 1058, 284.8, 1.26e6, 459e3],
    ['hem-fir', 1275, 1083.8, 1495, 1196, 271.4, 1.17e6, 423e3],
    // No size factor, and 1100 is not over 1150: no loss in bending.
    ['southern-pine', 1100, 1100, 1450, 1160, 378.6, 1.26e6, 459e3],
  ])('%s', (species, bendDry, bendWet, alongDry, alongWet, acrossWet, eWet, eMinWet) => {
    const dry = valuesOf(timberOf(species), WIDE_MM, false)
    const wet = valuesOf(timberOf(species), WIDE_MM, true)
    expect(toPsi(dry.bendingMpa)).toBeCloseTo(bendDry, 1)
    expect(Math.abs(toPsi(wet.bendingMpa) - bendWet)).toBeLessThan(0.1)
    expect(toPsi(dry.alongMpa)).toBeCloseTo(alongDry, 1)
    expect(toPsi(wet.alongMpa)).toBeCloseTo(alongWet, 1)
    expect(Math.abs(toPsi(wet.acrossMpa) - acrossWet)).toBeLessThan(0.1)
    expect(Math.abs(toPsi(wet.eMpa) - eWet)).toBeLessThan(1)
    expect(Math.abs(toPsi(wet.eMinMpa) - eMinWet)).toBeLessThan(1)
  })

  test('a 2x6 has lesser size factors, 1.3 and 1.1', () => {
    const { bendingMpa, alongMpa } = valuesOf(timberOf('spf'), inches(5.5), false)
    expect(toPsi(bendingMpa)).toBeCloseTo(1137.5, 6)
    expect(toPsi(alongMpa)).toBeCloseTo(1265, 6)
  })

  test('the exception looks at the value with its size factor on: a wet 2x6 of 1137.5 psi loses nothing', () => {
    expect(toPsi(valuesOf(timberOf('spf'), inches(5.5), true).bendingMpa)).toBeCloseTo(1137.5, 6)
  })
})

// 875 x 1.5 x 1.6 = 2100 psi on edge and x 1.1 = 2310 psi on the flat, by hand.
test('against a push spruce bears 2100 psi on edge and 2310 psi on the flat', () => {
  const edgeMpa = valuesOf(timberOf('spf'), WIDE_MM, false).bendingMpa * DURATION.push
  expect(toPsi(edgeMpa)).toBeCloseTo(2100, 6)
  expect(toPsi(edgeMpa * FLAT_USE)).toBeCloseTo(2310, 6)
})
