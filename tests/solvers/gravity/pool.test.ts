import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pooledDepthMm } from '../../../src/solvers/gravity/pool'
import { type Channel, type Drips, troughProfile } from '../../../src/solvers/gravity/profile'
import { gpm } from '../../../src/units/flow'
import { feet, inches, toInches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'
import { gallons } from '../../../src/units/volume'

const box = (fall: number, run = feet(30)): Channel => ({
  section: { shape: 'trapezoid', bottomMm: inches(4), topMm: inches(4), heightMm: inches(3) },
  slopeMmPerM: inchesPerFoot(fall),
  runMm: run,
  outletFromHighMm: run,
  boreMm: inches(2),
  n: 0.01,
})

const drips = (run: number, flow: number, count = 24): Drips => ({
  alongMm: Array.from({ length: count }, (_, k) => (run * (k + 0.5)) / count),
  lph: Array<number>(count).fill(flow / count),
})

const pooled = (channel: Channel, flow: number, litres: number): number =>
  toInches(pooledDepthMm(channel, troughProfile(channel, drips(channel.runMm, flow)), litres))

describe('a box of a gutter with its outlet shut', () => {
  // Hand arithmetic: 1 US gallon is 231 in3. 1/16 in a foot is 1 in 192: a wedge d deep reaches 192 d and holds 4 x d x 192 d / 2 =
  // 384 d^2 in3, so a gallon stands (231 / 384)^(1/2) = 0.776 in deep.
  test('a gallon in a dry one at 1/16 in a foot stands 0.776 in deep at the low end', () => {
    expect(pooled(box(1 / 16), 0, gallons(1))).toBeCloseTo(0.776, 2)
  })

  // Level, 30 ft by 4 in: 1,440 in2, so a gallon is 0.160 in.
  test('a gallon in a dry level one stands 0.16 in', () => {
    expect(pooled(box(0), 0, gallons(1))).toBeCloseTo(231 / 1440, 3)
  })

  // Both: once the wedge has reached the high end, 4 x 360 x (d - 1.875 / 2) = 231 x 6.
  test('six gallons at 1/16 in a foot reach its high end: 0.9625 + 0.9375 in', () => {
    expect(pooled(box(1 / 16), 0, gallons(6))).toBeCloseTo((231 * 6) / 1440 + 1.875 / 2, 2)
  })
})

// Its outlet at the upper end now, it stands full to it: 1.875 in at the other end, and a gallon over 1,440 in2 is 0.160 in more.
test('a gutter that has come to fall the other way fills from its other end', () => {
  expect(pooled(box(-1 / 16), 0, gallons(1))).toBeCloseTo(1.875 + 0.16, 2)
})

test('more water stands deeper, and none as deep as before', () => {
  const any = fc.record({
    fall: fc.constantFrom(0, 1 / 32, 1 / 16, 1 / 4),
    flow: fc.double({ min: 0, max: gpm(4), noNaN: true }),
    litres: fc.double({ min: 0.001, max: 60, noNaN: true }),
  })
  fc.assert(
    fc.property(any, ({ fall, flow, litres }) => {
      const channel = box(fall)
      const profile = troughProfile(channel, drips(channel.runMm, flow))
      expect(pooledDepthMm(channel, profile, 0)).toBe(profile.deepestMm)
      const less = pooledDepthMm(channel, profile, litres)
      const more = pooledDepthMm(channel, profile, 1.1 * litres)
      expect(less).toBeGreaterThanOrEqual(profile.deepestMm)
      expect(more).toBeGreaterThanOrEqual(less)
      // On a fall the low end is deepest, and what no film holds tells.
      if (fall > 0 && litres > 1) expect(more).toBeGreaterThan(less)
    }),
    { seed: 51 },
  )
})
