import { describe, expect, test } from 'vitest'
import { fullPipeNPerMm, loadsOf } from '../../../src/evaluate/loads/rowLoads'
import type { Built, Stick } from '../../../src/model/built'
import { toPoundsForce, toPoundsPerInch } from '../../../src/units/force'
import { toInches } from '../../../src/units/length'
import { pounds } from '../../../src/units/mass'
import { build, fromShelf, row } from '../../support/rackRows'
import { frameOfBuilt, settingsWith } from './rowOf'

const loads = (built: Built, more = {}) => loadsOf(frameOfBuilt(built), settingsWith(more))

// Steel Tube Institute, "EMT Weights and Dimensions": pounds a foot. AWC Wood Structural Design Data (1992): pounds a cubic foot.
const PLF: Readonly<Record<string, number>> = {
  'conduit-1/2': 0.3,
  'conduit-3/4': 0.46,
  'conduit-1': 0.67,
  'conduit-1-1/4': 1.01,
}
const PCF: Readonly<Record<string, number>> = {
  spf: 28.5,
  'hem-fir': 29.2,
  'southern-pine': 36.7,
  'douglas-fir': 33.6,
}

/** Pounds of one stick, as one adds a bill of materials up: feet times pounds a foot. */
const poundsOf = ({ stock, lengthMm, widthMm, heightMm }: Stick, species: string): number => {
  const feet = toInches(lengthMm) / 12
  if (stock in PLF) return feet * PLF[stock]!
  if (!stock.startsWith('lumber')) return 0
  return (feet * toInches(widthMm) * toInches(heightMm) * PCF[species]!) / 144
}

describe('weights', () => {
  // AWC Wood Structural Design Data (1992), 1.5 x 3.5 in: 1.04, 1.07, 1.34 lb a foot, worked by hand from pounds a cubic foot.
  test.each([
    ['spf', 1.04],
    ['hem-fir', 1.06],
    ['southern-pine', 1.34],
    ['douglas-fir', 1.22],
  ] as const)('2x4 of %s weighs %d lb a foot', (species, plf) => {
    const built = build(row())
    const feet = built.sticks
      .filter(({ mark }) => mark === 'BX')
      .reduce((sum, { lengthMm }) => sum + toInches(lengthMm) / 12, 0)
    expect(Math.abs(toPoundsForce(loads(built, { species }).byMark.get('BX')!) / feet - plf)).toBeLessThan(
      0.01,
    )
  })

  test.each(['J1', 'J2', 'J3', 'J4', 'J5'] as const)(
    '%s: every stick but the troughs is weighed once',
    (joint) => {
      for (const species of ['spf', 'southern-pine'] as const) {
        const built = build(row({ joint }))
        const { byMark } = loads(built, { species })
        const marks = new Set(built.sticks.map(({ mark }) => mark))
        for (const mark of marks) {
          const sticks = built.sticks.filter((stick) => stick.mark === mark)
          const byBill = sticks.reduce((sum, stick) => sum + poundsOf(stick, species), 0)
          expect(toPoundsForce(byMark.get(mark) ?? 0), mark).toBeCloseTo(byBill, 6)
        }
      }
    },
  )

  test('what is weighed is what there is: marks of sticks, laterals and headers, and their sum', () => {
    const built = fromShelfBuilt('low-rack')
    const { byMark, ownN, fullN, towerN, towers } = loads(built)
    const marks = new Set(built.sticks.filter(({ mark }) => mark !== 'GT').map(({ mark }) => mark))
    expect(new Set(byMark.keys())).toEqual(new Set([...marks, 'lateral', 'header']))
    expect([...byMark.values()].reduce((a, b) => a + b, 0)).toBeCloseTo(ownN, 6)
    expect(fullN).toBeCloseTo(ownN + towers * towerN, 6)
  })
})

const fromShelfBuilt = (preset: string): Built => build(fromShelf(preset))

describe('towers', () => {
  test('25 lb each as the bay assumes, until the row weighed its own', () => {
    const bayLoads = loads(build(row()))
    expect(toPoundsForce(bayLoads.towerN)).toBeCloseTo(25, 9)
    expect(bayLoads.isWeighed).toBe(false)
    const own = loads(build(row({ weighedKg: pounds(18) })))
    expect(toPoundsForce(own.towerN)).toBeCloseTo(18, 9)
    expect(own.isWeighed).toBe(true)
  })

  test('what is taken out hangs nowhere', () => {
    expect(loads(build(row())).towers).toBe(96)
    expect(loads(build(row({ takenOut: [0, 5, 17] }))).towers).toBe(93)
  })
})

// By hand: 0.824 in bore holds 0.5333 in2 of water at 62.43 lb/ft3, 0.2312 lb a foot; the wall of 0.06 in adds 0.0686 at 59.3 lb/ft3.
test('3/4 in poly pipe full of water weighs 0.30 lb a foot', () => {
  expect(toPoundsPerInch(fullPipeNPerMm('pe-3/4')) * 12).toBeCloseTo(0.2998, 3)
})
