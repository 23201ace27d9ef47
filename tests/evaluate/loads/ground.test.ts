import { describe, expect, test } from 'vitest'
import { groundScreens } from '../../../src/evaluate/loads/ground'
import type { RowInput } from '../../../src/evaluate/loads/rowInput'
import { kilopascals, poundsForce, psf, psi, toPoundsForce, toPsf, toPsi } from '../../../src/units/force'
import { loadsOf, standing } from '../../support/standing'
import { workedRack } from '../../support/workedRack'

// Hand arithmetic: 299.3 lb on two runners of 60 in: / (2 x 60 x 3.5 / 144 ft2) = 103 psf flat, / (2 x 60 x 1.5 / 144) = 239 on edge.
describe('runners on the ground', () => {
  test.each([
    ['flat', 103],
    ['on-edge', 239],
  ] as const)('%s press with %d psf of a presumed 1500', (lies, pounds) => {
    const [screen] = groundScreens(workedRack({ base: 60, ownLb: 49.3, lies }))
    expect(Math.abs(toPsf(screen!.measured.value) - pounds)).toBeLessThan(1)
    expect(toPsf(screen!.limit.value)).toBeCloseTo(1500, 6)
    expect(screen).toMatchObject({ mark: 'BR', state: 'Within' })
  })
})

// 105 lb and a share of the base on a block of 8 x 16 in: 105 / 128 = 0.82 psi, about 1 psi with the base.
test('a block of 8 x 16 in under a riser with 105 lb presses with about 1 psi', () => {
  const [screen] = groundScreens(standing({}, { ownLb: 300, towerLb: 0, riserLb: 105 }))
  // All that the rails hand down, 26 x 105 lb, is more than this row weighs: nothing is left to share.
  expect(toPsi(screen!.measured.value / kilopascals(1))).toBeCloseTo(105 / 128, 6)
  expect(screen!.measured.value).toBeLessThan(kilopascals(psi(1)))
  expect(screen).toMatchObject({ mark: 'FP', state: 'Within' })
})

test('what rails do not carry is shared among the feet', () => {
  const input = standing({}, { riserLb: 100 })
  const [alone] = groundScreens({ ...input, loads: loadsOf(26 * 100, 0, 0) })
  const [shared] = groundScreens({ ...input, loads: loadsOf(26 * 150, 0, 0) })
  expect(shared!.measured.value / alone!.measured.value).toBeCloseTo(1.5, 9)
})

test('without foot plates the runners lie on the ground', () => {
  expect(groundScreens(standing({ footPlateMm: 0 }))[0]!.mark).toBe('BR')
})

test('ground that bears less than feet press is over its limit', () => {
  const [screen] = groundScreens(standing({}, { settings: { soilKpa: psf(100) } }))
  expect(screen).toMatchObject({ id: 'ground-bearing', state: 'Too long' })
})

describe('a row that hangs from the house', () => {
  /** A rack of 120 in with 66 in of leaves and 32 towers of 25 lb: 55 ft2 with 800 lb. */
  const hanging = (houseKpa: number | null, hangerLb = 50): RowInput => {
    const input = standing({ carriedBy: 'house', racks: 1 }, { settings: { houseKpa } })
    const reaction = { u: 0, fullN: 0, leastN: 0, mostN: poundsForce(hangerLb) }
    return {
      ...input,
      loads: loadsOf(0, 32, 25),
      rails: input.rails.map((rail) => ({ ...rail, reactions: [reaction] })),
    }
  }

  // By hand: 800 lb / (10 ft x 5.5 ft) = 14.5 psf; Bartok, citing the NGMA: plant loads up to 15 psf, 100 lb at mid span.
  test('presses on 55 ft2 with 14.5 psf', () => {
    const [screen] = groundScreens(hanging(psf(15)))
    expect(toPsf(screen!.measured.value)).toBeCloseTo(14.5, 1)
    expect(screen).toMatchObject({ id: 'house-load', state: 'Within' })
  })

  test('is too much for a house whose maker allows 5 psf', () => {
    expect(groundScreens(hanging(psf(5)))[0]).toMatchObject({ state: 'Too long' })
  })

  test('is too much where one hanger has more than 100 lb', () => {
    const [screen] = groundScreens(hanging(psf(15), 120))
    expect(screen).toMatchObject({ state: 'Too long' })
    expect(screen!.used).toBeCloseTo(1.2, 6)
    expect(toPoundsForce(screen!.measured.value)).toBeCloseTo(120, 6)
    expect(toPoundsForce(screen!.limit.value)).toBeCloseTo(100, 6)
  })

  test('is refused without a figure of the maker', () => {
    expect(groundScreens(hanging(null))[0]).toMatchObject({ state: 'Too long', used: Infinity })
  })
})
