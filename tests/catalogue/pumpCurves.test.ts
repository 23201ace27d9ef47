import { expect, test } from 'vitest'
import { pumpCurves } from '../../src/catalogue/pumpCurves'
import { pumpCurveOf } from '../../src/solvers/water/pumpCurve'
import { toGpm, toM3PerS } from '../../src/units/flow'
import { toHeadFeet, toHeadM } from '../../src/units/head'

test.each(pumpCurves.map((pump) => [pump.key, pump] as const))(
  '%s is a curve that the solver takes',
  (_, { curve }) => {
    const flowM3S = Float64Array.from(curve, ({ flowLph }) => toM3PerS(flowLph))
    const headM = Float64Array.from(curve, ({ headMm }) => toHeadM(headMm))
    expect(pumpCurveOf({ flowM3S, headM }).ok).toBe(true)
  },
)

test('each falls the steeper the more it gives, as centrifugal pumps do', () => {
  for (const { curve } of pumpCurves) {
    const slopes = curve
      .slice(1)
      .map(({ flowLph, headMm }, k) => (headMm - curve[k]!.headMm) / (flowLph - curve[k]!.flowLph))
    expect(slopes).toEqual([...slopes].sort((a, b) => b - a))
  }
})

test('they lift 10 to 40 ft and give 20 to 150 gpm at most, each more than the one before', () => {
  const ends = pumpCurves.map(
    ({ curve }) => [toHeadFeet(curve[0]!.headMm), toGpm(curve.at(-1)!.flowLph)] as const,
  )
  for (const [head, flow] of ends) {
    expect(head).toBeGreaterThanOrEqual(10)
    expect(head).toBeLessThanOrEqual(40 + 1e-9)
    expect(flow).toBeGreaterThanOrEqual(20)
    expect(flow).toBeLessThanOrEqual(150 + 1e-9)
  }
  ends.slice(1).forEach(([head, flow], k) => {
    expect(head).toBeGreaterThan(ends[k]![0])
    expect(flow).toBeGreaterThan(ends[k]![1])
  })
})
