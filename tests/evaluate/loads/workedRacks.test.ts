import { describe, expect, test } from 'vitest'
import { judgeSag, judgeStress } from '../../../src/evaluate/loads/allowed'
import type { StretchWorst } from '../../../src/evaluate/loads/carrying'
import { toInchPounds, toPoundsForce, toPsi } from '../../../src/units/force'
import { toInches } from '../../../src/units/length'
import { assumed, byHand, everyFoot, type HandRail } from './handRail'

/*
 * Worked racks of the trade notes, hand arithmetic on the closed forms of the AISC Steel Construction Manual, Table 3-23 (from memory),
 * with sections worked from Steel Tube Institute, "EMT Weights and Dimensions"; where a frame is continuous the numbers come from
 * a direct-stiffness model made apart from this one. E = 29,000 ksi.
 */

const worst = (rail: HandRail): StretchWorst => {
  const all = byHand(rail).stretches
  return all.reduce((a, b) => (b.stressMpa > a.stressMpa ? b : a))
}

const numbers = (rail: HandRail) => {
  const { moment, stressMpa } = worst(rail)
  const sagMm = Math.max(...byHand(rail).stretches.map(({ sag }) => sag.value))
  return {
    moment: Math.abs(toInchPounds(moment.value)),
    psi: toPsi(stressMpa),
    sag: toInches(sagMm),
  }
}

const states = (rail: HandRail): readonly string[] => [
  judgeStress(worst(rail), assumed).state,
  judgeSag(worst(rail), assumed).state,
]

const near = (value: number, expected: number, share: number): void => {
  expect(Math.abs(value / expected - 1), `${value} for ${expected}`).toBeLessThan(share)
}

/** A closed form, to the digits that a hand keeps: half a thousandth, and the last digit of a short number. */
const expectByHand = (rail: HandRail, moment: number, psi: number, sag: number): void => {
  const found = numbers(rail)
  near(found.moment, moment, 5e-4)
  near(found.psi, psi, 5e-4)
  expect(Math.abs(found.sag - sag)).toBeLessThan(Math.max(0.00051, sag * 5e-3))
}

const simple = (trade: string, feet: number, plf: number): HandRail => ({
  trade,
  length: 12 * feet,
  supports: [0, 12 * feet],
  plf,
})

// w = (25 + 1.15) / 2 + 0.67 = 13.745 lb/ft = 1.1454 lb/in on one rail.
describe('rack A: 1 in conduit, one 25 lb tower a foot from 30 in bars of 3/4 in conduit', () => {
  const hanger = (25 + 1.15) / 2

  test('5 ft: 515.4 in-lb, 9,871 psi, 0.220 in; within', () => {
    expectByHand(simple('1', 5, 13.745), 515.4, 9871, 0.22)
    expect(states(simple('1', 5, 13.745))).toEqual(['Within', 'Within'])
  })

  // An odd number of hangers puts one at mid span, where an even load is kinder than they are: 3.8 % more.
  test('5 ft with its five hangers where they are: 535.0 in-lb, 10,247 psi, 0.223 in', () => {
    const rail = { ...simple('1', 5, 0.67), hung: [everyFoot(0, 60, hanger)] }
    expectByHand(rail, 535, 10_247, 0.223)
  })

  test('10 ft: 2,061.8 in-lb, 39,485 psi, 3.51 in; too long', () => {
    expectByHand(simple('1', 10, 13.745), 2061.8, 39_485, 3.51)
    expect(states(simple('1', 10, 13.745))).toEqual(['Too long', 'Too long'])
  })

  test('10 ft with its ten hangers: 3.53 in', () => {
    const rail = { ...simple('1', 10, 0.67), hung: [everyFoot(0, 120, hanger)] }
    near(numbers(rail).sag, 3.53, 3e-3)
  })

  const twoSpans: HandRail = {
    trade: '1',
    length: 120,
    supports: [0, 60, 120],
    plf: 0.67,
    hung: [everyFoot(0, 60, hanger), everyFoot(60, 120, hanger)],
  }

  // Stiffness model made apart: 525 in-lb, 10,059 psi, 0.092 in, reactions 25.6 / 86.2 / 25.6 lb.
  test('10 ft with a middle riser: 525 in-lb, 10,059 psi; the middle carries 86.2 lb', () => {
    const found = numbers(twoSpans)
    near(found.moment, 525, 1e-3)
    near(found.psi, 10_059, 1e-3)
    expect(states(twoSpans)).toEqual(['Within', 'Within'])
    const carried = byHand(twoSpans).supports.map(({ fullN }) => toPoundsForce(fullN))
    expect(carried[0]).toBeCloseTo(25.6, 1)
    expect(carried[1]).toBeCloseTo(86.2, 1)
    expect(carried[2]).toBeCloseTo(25.6, 1)
    expect(toInches(Math.max(...byHand(twoSpans).curve.sagMm))).toBeCloseTo(0.092, 3)
  })

  // The same with one span harvested: 0.153 in in the loaded one, and 2.9 lb of uplift at the far riser.
  test('one span harvested: 0.153 in, and the far riser is lifted by 2.9 lb', () => {
    const { stretches, supports } = byHand(twoSpans)
    expect(toInches(stretches[0]!.sag.value)).toBeCloseTo(0.153, 3)
    expect(stretches[0]!.sag.under).toBe('harvested')
    expect(toPoundsForce(supports[2]!.leastN)).toBeCloseTo(-2.9, 1)
    expect(supports[2]!.leastUnder).toBe('harvested')
  })

  // Stiffness model made apart: 357 in-lb, 6,845 psi, 0.162 in, with the same parts.
  test('10 ft on the same two risers moved 25 in in: 357 in-lb, 6,845 psi, 0.162 in when all hangs', () => {
    const rail: HandRail = {
      trade: '1',
      length: 120,
      supports: [25, 95],
      plf: 0.67,
      hung: [everyFoot(0, 120, hanger)],
    }
    const found = numbers(rail)
    near(found.moment, 357, 2e-3)
    near(found.psi, 6845, 2e-3)
    expect(toInches(Math.max(...byHand(rail).curve.sagMm))).toBeCloseTo(0.162, 2)
  })
})

// w = (50 + 1.15) / 2 + 0.67 = 26.245 lb/ft; with 1-1/4 in 26.585.
describe('rack B: 1 in conduit, two 25 lb towers a bar at 12 in', () => {
  test('5 ft: 984 in-lb, 18,848 psi, 0.419 in (L/143): to be proof-loaded by stress and by sag', () => {
    const rail = { ...simple('1', 5, 26.245) }
    expectByHand(rail, 984, 18_848, 0.419)
    expect(60 / numbers(rail).sag).toBeCloseTo(143, 0)
    expect(states(rail)).toEqual(['Proof-load', 'Proof-load'])
  })

  test('10 ft: 3,937 in-lb, 75,394 psi, 6.71 in by elastic bending that never comes to be', () => {
    expectByHand(simple('1', 10, 26.245), 3937, 75_394, 6.71)
    expect(states(simple('1', 10, 26.245))).toEqual(['Too long', 'Too long'])
  })

  test('1-1/4 in: 39,014 psi and 2.67 in at 10 ft, 9,753 psi and 0.167 in at 5 ft', () => {
    const [long, short] = [numbers(simple('1-1/4', 10, 26.585)), numbers(simple('1-1/4', 5, 26.585))]
    near(long.psi, 39_014, 5e-4)
    near(long.sag, 2.67, 2e-3)
    near(short.psi, 9753, 5e-4)
    near(short.sag, 0.167, 3e-3)
    expect(states(simple('1-1/4', 10, 26.585))).toEqual(['Too long', 'Too long'])
    expect(states(simple('1-1/4', 5, 26.585))).toEqual(['Within', 'Within'])
  })
})

// w = (20 + 1.15) / 2 + 0.46 = 11.035 lb/ft; at 25 lb 13.535.
describe('rack C: 3/4 in conduit, one 20 lb tower a foot', () => {
  test('5 ft: 413.8 in-lb, 14,854 psi, 0.417 in (L/144): within by stress, to be proof-loaded by sag', () => {
    expectByHand(simple('3/4', 5, 11.035), 413.8, 14_854, 0.417)
    expect(states(simple('3/4', 5, 11.035))).toEqual(['Within', 'Proof-load'])
  })

  test('5 ft at 25 lb: 18,219 psi, 0.511 in, L/117: too long by sag', () => {
    const found = numbers(simple('3/4', 5, 13.535))
    near(found.psi, 18_219, 5e-4)
    near(found.sag, 0.511, 2e-3)
    expect(states(simple('3/4', 5, 13.535))).toEqual(['Proof-load', 'Too long'])
  })

  test('10 ft: 1,655 in-lb, 59,416 psi, 6.67 in: too long', () => {
    expectByHand(simple('3/4', 10, 11.035), 1655, 59_416, 6.67)
  })

  test('under one load it sags 2.36 times as much as 1 in', () => {
    near(numbers(simple('3/4', 5, 11)).sag / numbers(simple('1', 5, 11)).sag, 2.364, 2e-3)
  })
})

// Twice the span: four times the moment and sixteen times the sag, whatever the conduit.
test('twice the span: 4 times the moment, 16 times the sag', () => {
  const [short, long] = [numbers(simple('1', 4, 10)), numbers(simple('1', 8, 10))]
  expect(long.moment / short.moment).toBeCloseTo(4, 9)
  expect(long.sag / short.sag).toBeCloseTo(16, 9)
})

// w = 3.45 lb/in over 40 in: 3.45 x 40² / 8 = 690 in-lb over 0.02786 in3; 5 w L4 / 384 E I with 29,000 ksi and 0.01284 in4.
test('3/4 in over 40 in at 3.45 lb/in: 24.77 ksi and 0.309 in: too long', () => {
  const rail: HandRail = { trade: '3/4', length: 40, supports: [0, 40], plf: 3.45 * 12 }
  const found = numbers(rail)
  near(found.psi, 24_770, 1e-3)
  near(found.sag, 0.309, 2e-3)
  const { stressMpa } = worst(rail)
  expect(judgeStress({ stressMpa, proofStressMpa: 1.5 * stressMpa }, assumed).state).toBe('Too long')
})

// w = (4 x 25 / 2 + 1) / 15 + 0.04 = 3.44 lb/in: 387 in-lb, 13.9 ksi, 0.0974 in.
test('3/4 in over 30 in at 3.44 lb/in: 13.9 ksi and 0.10 in, L/307', () => {
  const found = numbers({ trade: '3/4', length: 30, supports: [0, 30], plf: 3.44 * 12 })
  near(found.psi, 13_900, 2e-3)
  near(found.sag, 30 / 307, 5e-3)
})

describe('longest riser spacing by 18 ksi and L/180, simple span', () => {
  const fits = (trade: string, span: number, w: number): boolean =>
    states({ trade, length: span, supports: [0, span], plf: 12 * w }).every((state) => state === 'Within')

  /** In whole inches, the nearest to the very limit. */
  const longest = (trade: string, w: number): number => {
    let [low, high] = [10, 240]
    for (let halving = 0; halving < 12; halving += 1) {
      const span = (low + high) / 2
      if (fits(trade, span, w)) low = span
      else high = span
    }
    return low
  }

  // Worked table of the trade notes, hand arithmetic, pitch 15 in: load lb/in, longest spacing in for 3/4, 1 and 1-1/4 in.
  test.each([
    [0.91, 56, 75, 102],
    [1.31, 50, 66, 90],
    [1.77, 45, 60, 81],
    [1.71, 45, 60, 82],
    [2.51, 40, 53, 72],
    [3.44, 34, 47, 65],
  ])('%d lb/in: %d, %d and %d in', (w, small, middle, big) => {
    expect(Math.abs(longest('3/4', w) - small)).toBeLessThan(1)
    expect(Math.abs(longest('1', w) - middle)).toBeLessThan(1)
    expect(Math.abs(longest('1-1/4', w) - big)).toBeLessThan(1)
  })
})

describe('rails of common practice, simple span, their own weight on top', () => {
  // Hand arithmetic: span ft, then psi and in for 3/4 in at 12.5 lb/ft, 3/4 at 25, 1 in at 12.5, 1 in at 25, 1-1/4 in at 25.
  test.each([
    [2.5, 4361, 0.031, 8568, 0.06, 2365, 0.013, 4609, 0.026, 2386, 0.01],
    [4, 11_165, 0.2, 21_933, 0.394, 6053, 0.086, 11_799, 0.168, 6107, 0.067],
    [5, 17_445, 0.489, 34_271, 0.961, 9458, 0.21, 18_435, 0.41, 9543, 0.163],
    [6, 25_121, 1.015, 49_350, 1.993, 13_620, 0.436, 26_547, 0.85, 13_741, 0.339],
    [8, 44_659, 3.207, 87_734, 6.3, 24_213, 1.378, 47_195, 2.687, 24_429, 1.071],
    [10, 69_780, 7.829, 137_084, 15.4, 37_833, 3.365, 73_742, 6.559, 38_170, 2.615],
  ])('%d ft', (feet, ...expected) => {
    const cases = [
      ['3/4', 12.5 + 0.46],
      ['3/4', 25 + 0.46],
      ['1', 12.5 + 0.67],
      ['1', 25 + 0.67],
      ['1-1/4', 25 + 1.01],
    ] as const
    cases.forEach(([trade, plf], index) => {
      const { psi, sag } = numbers(simple(trade, feet, plf))
      near(psi, expected[2 * index]!, 5e-4)
      expect(Math.abs(sag - expected[2 * index + 1]!)).toBeLessThan(Math.max(0.0006, sag * 4e-3))
    })
  })
})
