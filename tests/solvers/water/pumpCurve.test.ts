import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { CurvePoints } from '../../../src/solvers/water/network'
import {
  flowAt,
  headAt,
  hydraulicWatts,
  type PumpCurve,
  pumpCurveOf,
  slopeAt,
} from '../../../src/solvers/water/pumpCurve'
import { feetM, gpmM3S } from '../../support/hydraulics'

const points = (...pairs: readonly (readonly [number, number])[]): CurvePoints => ({
  flowM3S: Float64Array.from(pairs, ([flow]) => flow),
  headM: Float64Array.from(pairs, ([, head]) => head),
})

const curveOf = (given: CurvePoints): PumpCurve => {
  const curve = pumpCurveOf(given)
  if (!curve.ok) throw new Error(curve.sentence)
  return curve
}

describe('a pump curve is refused', () => {
  test.each<[string, CurvePoints, string]>([
    ['two points', points([0, 9], [2, 0]), 'needs 3 points or more; it has 2'],
    ['no point at no flow', points([1, 9], [2, 8], [3, 0]), 'must begin at no flow; it begins at 1 m3/s'],
    [
      'the same flow twice',
      points([0, 9], [2, 8], [2, 0]),
      'must rise in flow from point to point; point 3 has 2 m3/s after 2',
    ],
    [
      'a hump',
      points([0, 9], [1, 9.5], [2, 0]),
      'rises in head from 9 to 9.5 m between points 1 and 2; with a curve that rises a pump hunts between two flows',
    ],
    ['a hole', points([0, 9], [1, NaN], [2, 0]), 'has no number at point 2'],
    ['a head under none', points([0, 9], [1, 3], [2, -1]), 'has a head of -1 m, less than none, at point 3'],
    [
      'a level end',
      points([0, 9], [1, 3], [2, 3]),
      'is flat between its last two points, so that nothing says where it ends',
    ],
    [
      'flows without heads',
      { flowM3S: Float64Array.of(0, 1, 2), headM: Float64Array.of(9, 8) },
      'has 3 flows but 2 heads',
    ],
  ])('for %s, with a sentence', (_, given, what) => {
    expect(pumpCurveOf(given)).toEqual({ ok: false, sentence: `The pump curve ${what}.` })
  })
})

/** Falling curves, steep and flat in turn. */
const arbitraryCurve = fc
  .tuple(
    fc.array(
      fc.tuple(
        fc.double({ min: 1e-4, max: 1e-3, noNaN: true }),
        fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 5, noNaN: true })),
      ),
      { minLength: 1, maxLength: 8 },
    ),
    fc.double({ min: 0.1, max: 3, noNaN: true }),
    fc.double({ min: 0, max: 5, noNaN: true }),
  )
  .map(([steps, lastDrop, lastHead]) => {
    const drops = [...steps, [5e-4, lastDrop] as const]
    let [flow, head] = [0, lastHead + drops.reduce((sum, [, drop]) => sum + drop, 0)]
    return points([0, head], ...drops.map(([more, drop]) => [(flow += more), (head -= drop)] as const))
  })
  .map(({ flowM3S, headM }) => ({ flowM3S, headM: headM.map((head) => Math.max(0, head)) }))

const arbitraryShare = fc.double({ min: 0, max: 1.5, noNaN: true })

describe('a pump curve', () => {
  test('goes through its points and nowhere rises', () => {
    fc.assert(
      fc.property(arbitraryCurve, (given) => {
        const curve = curveOf(given)
        given.flowM3S.forEach((flow, i) => expect(headAt(curve, flow, 1)).toBeCloseTo(given.headM[i]!, 9))
        const end = given.flowM3S.at(-1)!
        for (let step = 1; step <= 300; step += 1) {
          const [before, here] = [(step - 1) / 200, step / 200].map((share) => headAt(curve, share * end, 1))
          expect(here).toBeLessThanOrEqual(before! + 1e-12)
        }
      }),
      { seed: 11 },
    )
  })

  test('has the slope that it says, also where two stretches meet', () => {
    fc.assert(
      fc.property(arbitraryCurve, arbitraryShare, (given, share) => {
        const curve = curveOf(given)
        for (const flow of [share * given.flowM3S.at(-1)!, given.flowM3S[1]!]) {
          const step = 1e-8
          const rise = headAt(curve, flow + step, 1) - headAt(curve, Math.max(0, flow - step), 1)
          const run = flow + step - Math.max(0, flow - step)
          // The sharpest bend here is 12 x 5 m over (1e-4 m3/s)^2; half a step of it is 30 s/m2.
          expect(Math.abs(rise / run - slopeAt(curve, flow, 1))).toBeLessThan(40)
        }
      }),
      { seed: 12 },
    )
  })

  // Catalogues draw a centrifugal pump as H = H0 - c Q^2. From 0, 4, 8 gpm at 20 ft and 20 - Q^2/4 ft, three points
  // must give back what lies between: at 2 gpm 19 ft, at 6 gpm 11 ft.
  test('through three points of a parabola is the parabola', () => {
    const [a, b, c] = [0, 4, 8].map(gpmM3S)
    const curve = curveOf(points([a!, feetM(20)], [b!, feetM(16)], [c!, feetM(4)]))
    expect(headAt(curve, gpmM3S(2), 1)).toBeCloseTo(feetM(19), 9)
    expect(headAt(curve, gpmM3S(6), 1)).toBeCloseTo(feetM(11), 9)
    // dH/dQ = -Q/2 ft a gpm: -4 at the end, so that no head is left one gpm beyond.
    expect(headAt(curve, gpmM3S(9), 1)).toBeCloseTo(0, 9)
    expect(flowAt(curve, 0, 1)).toBeCloseTo(gpmM3S(9), 12)
  })

  test('read by head gives the flow that it gives the head for', () => {
    fc.assert(
      fc.property(
        arbitraryCurve,
        arbitraryShare,
        fc.double({ min: 0.3, max: 1.2, noNaN: true }),
        (given, share, speed) => {
          const curve = curveOf(given)
          const head = headAt(curve, share * given.flowM3S.at(-1)!, speed)
          expect(headAt(curve, flowAt(curve, head, speed), speed)).toBeCloseTo(head, 9)
        },
      ),
      { seed: 13 },
    )
  })

  test('lifts nothing over its shut-off head, and that head against backwards flow', () => {
    const curve = curveOf(points([0, 6], [1e-3, 5], [2e-3, 2]))
    expect(flowAt(curve, 6.001, 1)).toBe(0)
    expect(headAt(curve, -1e-3, 1)).toBe(6)
    expect(slopeAt(curve, -1e-3, 1)).toBe(0)
  })

  test('may be level at its start', () => {
    const curve = curveOf(points([0, 6], [1e-3, 6], [2e-3, 2]))
    expect(headAt(curve, 5e-4, 1)).toBe(6)
    expect(flowAt(curve, 6, 1)).toBeCloseTo(1e-3, 9)
  })
})

describe('the affinity laws (from memory of any text: flow as the speed, head as its square, power as its cube)', () => {
  const curve = curveOf(points([0, 6], [1e-3, 5], [2e-3, 2]))

  test('at half the speed half the flow meets a quarter of the head', () => {
    expect(headAt(curve, 0.5e-3, 0.5)).toBeCloseTo(1.25, 12)
    expect(headAt(curve, 1e-3, 0.5)).toBeCloseTo(0.5, 12)
    expect(headAt(curve, 0, 0.5)).toBeCloseTo(1.5, 12)
    const watts = (speed: number) => hydraulicWatts(1e-3 * speed, headAt(curve, 1e-3 * speed, speed), 1000)
    expect(watts(0.5) / watts(1)).toBeCloseTo(1 / 8, 12)
  })

  test('a pump that stands lifts nothing', () => {
    expect(headAt(curve, 0, 0)).toBe(0)
    expect(slopeAt(curve, 0, 0)).toBe(0)
    expect(flowAt(curve, 1, 0)).toBe(0)
  })

  test('a pump that turns faster lifts more at every flow', () => {
    fc.assert(
      fc.property(arbitraryCurve, arbitraryShare, (given, share) => {
        const any = curveOf(given)
        const flow = share * given.flowM3S.at(-1)!
        expect(headAt(any, flow, 1.1)).toBeGreaterThan(headAt(any, flow, 1))
      }),
      { seed: 14 },
    )
  })
})

// Water horsepower is gpm x ft / 3960 (from memory of any pump catalogue); 1 hp = 745.7 W. 32 gpm x 12 ft / 3960 =
// 0.09697 hp = 72.3 W.
test('32 gpm lifted 12 ft take 72 W', () => {
  expect(hydraulicWatts(gpmM3S(32), feetM(12), 998.2)).toBeCloseTo(72.3, 0)
})

// 1 m3/s lifted 1 m at 1,000 kg/m3 is 9,806.65 W, by the definition of the watt.
test('a tonne lifted a metre a second is 9.8 kW', () => {
  expect(hydraulicWatts(1, 1, 1000)).toBeCloseTo(9806.65, 9)
})
