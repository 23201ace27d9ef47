import { describe, expect, test } from 'vitest'
import type { BeamLoad } from '../../../src/solvers/beam/beam'
import type { Bent } from '../../../src/solvers/beam/bent'
import { ksi, poundsForce, poundsPerInch, toInchPounds, toPoundsForce } from '../../../src/units/force'
import { inches, toInches } from '../../../src/units/length'
import { beamOn, bend, both, line, points } from './drawn'

// Steel Tube Institute, "EMT Weights and Dimensions" (outside diameter, wall), sections by hand: I and S in inches; E 29,000 ksi (AISC
// 360, from memory).
const tubes = {
  threeQuarter: { i: 0.01284, s: 0.02786, lbPerFt: 0.46 },
  one: { i: 0.03036, s: 0.05222, lbPerFt: 0.67 },
  oneAndQuarter: { i: 0.07717, s: 0.10221, lbPerFt: 1.01 },
}
type Tube = keyof typeof tubes

const eiOf = (tube: Tube): number => ksi(29000) * tubes[tube].i * inches(1) ** 4
const stressKsi = (tube: Tube, nmm: number): number => toInchPounds(nmm) / tubes[tube].s / 1000
const perFoot = (plf: number): number => poundsPerInch(plf / 12)
const selfOf = (tube: Tube, lengthIn: number): BeamLoad =>
  line(0, inches(lengthIn), perFoot(tubes[tube].lbPerFt))

/** A tower of 25 lb and half of a 1.15 lb bar on each of two rails. */
const HANGER_LB = 13.075
const hangersAt = (...inchesAt: readonly number[]): BeamLoad =>
  points(...inchesAt.map((at) => [inches(at), poundsForce(HANGER_LB)] as const))
const eachFoot = (from: number, to: number): number[] =>
  Array.from({ length: (to - from) / 12 }, (_, k) => from + 6 + 12 * k)

const rail = (lengthIn: number, supportsIn: readonly number[], load: BeamLoad): Bent =>
  bend(beamOn(inches(lengthIn), supportsIn.map(inches), eiOf('one')), both(load, selfOf('one', lengthIn)))

const worstMoment = (bent: Bent, lengthIn: number): number => {
  const { most, least } = bent.moments(0, inches(lengthIn))
  return toInchPounds(Math.max(most.value, -least.value))
}
const worstSag = (bent: Bent, lengthIn: number): number => toInches(bent.sags(0, inches(lengthIn)).most.value)
const poundsUp = (bent: Bent): number[] => bent.reactionsN.map(toPoundsForce)

// Worked racks: 1 in tube, a 25 lb tower every 12 in off 1.15 lb bars on two rails; each number also from an independent beam program.
describe('the rail of the worked racks', () => {
  test('five hangers on 60 in: 535.0 lb-in, 10,247 psi, 0.223 in', () => {
    const bent = rail(60, [0, 60], hangersAt(...eachFoot(0, 60)))
    expect(worstMoment(bent, 60)).toBeCloseTo(535.0, 0)
    expect(stressKsi('one', bent.moments(0, inches(60)).most.value)).toBeCloseTo(10.247, 2)
    expect(worstSag(bent, 60)).toBeCloseTo(0.223, 3)
  })

  test('the same load smeared: 515.4 lb-in, 0.220 in, 34.4 lb: less than what really hangs', () => {
    const bent = rail(60, [0, 60], line(0, inches(60), perFoot(HANGER_LB)))
    expect(worstMoment(bent, 60)).toBeCloseTo(515.4, 0)
    expect(worstSag(bent, 60)).toBeCloseTo(0.22, 3)
    expect(poundsUp(bent)[0]).toBeCloseTo(34.4, 1)
  })

  test('120 in on its ends: 39,485 psi smeared, 3.53 in from hangers', () => {
    const bent = rail(120, [0, 120], hangersAt(...eachFoot(0, 120)))
    expect(worstMoment(bent, 120)).toBeCloseTo(2061.8, -1)
    expect(worstSag(bent, 120)).toBeCloseTo(3.53, 2)
  })

  test('120 in with a middle support: 525 lb-in, 0.092 in, 25.6, 86.2, 25.6 lb', () => {
    const bent = rail(120, [0, 60, 120], hangersAt(...eachFoot(0, 120)))
    expect(Math.abs(worstMoment(bent, 120) - 525)).toBeLessThan(1)
    expect(worstSag(bent, 120)).toBeCloseTo(0.092, 3)
    ;[25.6, 86.2, 25.6].forEach((lb, k) => expect(poundsUp(bent)[k]).toBeCloseTo(lb, 1))
  })

  test('120 in with both supports 25 in in: 357 lb-in, 0.162 in', () => {
    const bent = rail(120, [25, 95], hangersAt(...eachFoot(0, 120)))
    expect(Math.abs(worstMoment(bent, 120) - 357)).toBeLessThan(1)
    expect(worstSag(bent, 120)).toBeCloseTo(0.162, 3)
  })

  test('one of two spans harvested: 397 lb-in, 0.153 in, the far support pulled up by 2.9 lb', () => {
    const bent = rail(120, [0, 60, 120], hangersAt(...eachFoot(0, 60)))
    expect(Math.abs(worstMoment(bent, 120) - 397)).toBeLessThan(1)
    expect(worstSag(bent, 120)).toBeCloseTo(0.153, 3)
    expect(poundsUp(bent)[2]).toBeCloseTo(-2.9, 1)
  })
})

const simple = (tube: Tube, plf: number, spanIn: number): { ksi: number; sagIn: number } => {
  const bent = bend(
    beamOn(inches(spanIn), [0, inches(spanIn)], eiOf(tube)),
    both(line(0, inches(spanIn), perFoot(plf)), selfOf(tube, spanIn)),
  )
  return {
    ksi: stressKsi(tube, bent.moments(0, inches(spanIn)).most.value),
    sagIn: toInches(bent.sags(0, inches(spanIn)).most.value),
  }
}

describe('simple spans', () => {
  // Worked racks B and C by hand: w = (50 + 1.15)/2 = 25.575 plf on 1 in, (20 + 1.15)/2 = 10.575 plf on 3/4 in, each with its own weight.
  test.each([
    ['one', 25.575, 60, 18.848, 0.419],
    ['one', 25.575, 120, 75.394, 6.71],
    ['oneAndQuarter', 25.575, 60, 9.753, 0.167],
    ['threeQuarter', 10.575, 60, 14.854, 0.417],
    ['threeQuarter', 13.075, 60, 18.219, 0.511],
  ] as const)('%s at %d plf over %d in: %d ksi, %d in', (tube, plf, spanIn, stress, sagIn) => {
    const found = simple(tube, plf, spanIn)
    expect(Math.abs(found.ksi / stress - 1)).toBeLessThan(0.002)
    expect(Math.abs(found.sagIn / sagIn - 1)).toBeLessThan(0.003)
  })

  const longest = (fits: (spanIn: number) => boolean): number => {
    let [low, high] = [1, 240]
    while (high - low > 0.001) {
      const middle = (low + high) / 2
      if (fits(middle)) low = middle
      else high = middle
    }
    return low / 12
  }

  // Longest simple spans in ft at 18 ksi (assumed), L/120, L/180, by hand.
  test.each([
    ['threeQuarter', 12.5, 5.08, 5.04, 4.4],
    ['one', 12.5, 6.9, 6.67, 5.83],
    ['one', 25, 4.94, 5.34, 4.67],
    ['oneAndQuarter', 25, 6.87, 7.26, 6.34],
  ] as const)('%s at %d plf reaches %d ft, %d ft, %d ft', (tube, plf, byStress, by120, by180) => {
    expect(Math.abs(longest((span) => simple(tube, plf, span).ksi <= 18) - byStress)).toBeLessThan(0.02)
    expect(Math.abs(longest((span) => simple(tube, plf, span).sagIn <= span / 120) - by120)).toBeLessThan(
      0.02,
    )
    expect(Math.abs(longest((span) => simple(tube, plf, span).sagIn <= span / 180) - by180)).toBeLessThan(
      0.02,
    )
  })

  test('twice the span is four times the moment and sixteen times the sag', () => {
    const [short, long] = [simple('one', 12.5, 60), simple('one', 12.5, 120)]
    expect(long.ksi / short.ksi).toBeCloseTo(4, 6)
    expect(long.sagIn / short.sagIn).toBeCloseTo(16, 6)
  })

  test('a hanger bar of 30 in: 187.5 lb-in in its middle, 250 lb-in from two towers 10 in in', () => {
    // P L / 4 = 25 x 30 / 4; P a = 25 x 10.
    const bar = beamOn(inches(30), [0, inches(30)], eiOf('threeQuarter'))
    const tower = poundsForce(25)
    const middle = bend(bar, points([inches(15), tower])).moments(0, inches(30)).most.value
    expect(toInchPounds(middle)).toBeCloseTo(187.5, 6)
    expect(stressKsi('threeQuarter', middle)).toBeCloseTo(6.73, 2)
    const two = bend(bar, points([inches(10), tower], [inches(20), tower])).moments(0, inches(30)).most.value
    expect(toInchPounds(two)).toBeCloseTo(250, 6)
    expect(stressKsi('threeQuarter', two)).toBeCloseTo(8.97, 2)
  })
})
