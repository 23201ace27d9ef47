import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { criticalDepthMm } from '../../../src/solvers/gravity/critical'
import { manningLph, normalDepthMm } from '../../../src/solvers/gravity/manning'
import { outletDepthMm } from '../../../src/solvers/gravity/outlet'
import { type Channel, type Drips, type Profile, troughProfile } from '../../../src/solvers/gravity/profile'
import { areaMm2, type Section, topWidthMm } from '../../../src/solvers/gravity/section'
import { gpm, toGpm, toM3PerS } from '../../../src/units/flow'
import { feet, inches, toInches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'
import { fastDepths, slowDepths } from './slowGutter'

const FIVE: Section = {
  shape: 'trapezoid',
  bottomMm: inches(3.25),
  topMm: inches(5),
  heightMm: inches(3.375),
}
const HALF_ROUND: Section = { shape: 'half-round', diameterMm: inches(4) }

/** Drips at equal distances, half a distance from either end of the stretch to the outlet. */
const evenly = (runMm: number, count: number, flowLph: number): Drips => ({
  alongMm: Array.from({ length: count }, (_, k) => (runMm * (k + 0.5)) / count),
  lph: Array<number>(count).fill(flowLph / count),
})

const channel = (more: Partial<Channel> = {}): Channel => ({
  section: FIVE,
  slopeMmPerM: inchesPerFoot(1 / 16),
  runMm: feet(30),
  outletFromHighMm: feet(30),
  boreMm: inches(2),
  n: 0.01,
  ...more,
})

/** An outlet so wide that it asks for nothing: a free end. */
const FREE = { boreMm: feet(3) }

const depthNear = ({ alongMm, depthMm }: Profile, mm: number): number => {
  const i = alongMm.findIndex((at) => at >= mm - 1e-6)
  return depthMm[i] ?? NaN
}

describe('a level gutter without friction that falls over its free end', () => {
  // Beij, Flow in roof gutters, Journal of Research of the National Bureau of Standards 12 (1934) 193; Chow (1959), article 12-3:
  // in a box thrust alone balances, y^2 / 2 = c^2 / 2 + c^2, so that the far end stands 3^(1/2) times critical depth.
  test('a box stands 1.732 of its critical depth at the far end', () => {
    const box: Section = { shape: 'trapezoid', bottomMm: 100, topMm: 100, heightMm: 100 }
    const level = channel({ section: box, slopeMmPerM: 0, n: 1e-7, ...FREE })
    const { depthMm } = troughProfile(level, evenly(feet(30), 24, gpm(3)))
    expect((depthMm[0] ?? NaN) / criticalDepthMm(box, gpm(3))).toBeCloseTo(Math.sqrt(3), 3)
  })

  const level = channel({ section: HALF_ROUND, slopeMmPerM: 0, n: 1e-7, ...FREE })

  // Worked apart from this program, exact geometry: 0.833 gpm in a 4 in half-round.
  test('0.833 gpm in a 4 in half-round: 0.41 in upstream, 0.28 in critical', () => {
    const { depthMm } = troughProfile(level, evenly(feet(30), 20, gpm(0.833)))
    expect(toInches(depthMm[0] ?? NaN)).toBeCloseTo(0.41, 2)
    expect(toInches(criticalDepthMm(HALF_ROUND, gpm(0.833)))).toBeCloseTo(0.28, 2)
  })

  // Two standards that do not know of each other, both from memory: EN 12056-3, half-round gutter, 0.9 x 2.78e-5 A^1.25, A 3,927
  // mm2: 0.778 L/s or 12.3 gpm; Approved Document H (England), table 2, 100 mm gutter: 37 m2, at 75 mm an hour 0.771 L/s. Both
  // allow 69 % of what stands brim full without friction, 17.8 gpm.
  test('a 4 in half-round is brim full at 17.8 gpm, of which two standards allow 69 %', () => {
    const { depthMm } = troughProfile(level, evenly(feet(30), 20, gpm(17.8)))
    expect(toInches(depthMm[0] ?? NaN)).toBeCloseTo(2, 1)
    const byEn = 0.9 * 2.78e-5 * ((Math.PI * 100 ** 2) / 8) ** 1.25
    const byDocumentH = (37 * 75) / 3600
    expect(byEn).toBeCloseTo(0.778, 2)
    expect(byDocumentH).toBeCloseTo(0.771, 3)
    expect((byEn * 60) / 3.785 / 17.8).toBeCloseTo(0.69, 1)
  })
})

// Half-round gutters by code, gpm: International and Uniform Plumbing Code to 2012, semicircular gutters at 1/16 in a foot, from
// memory. They take a gutter to stand far short of full; so does the profile of one that falls 1/16 in a foot, n 0.012.
test.each([
  [3, 7.1],
  [4, 15.0],
  [5, 26.0],
  [6, 39.9],
])('a %i in half-round at 1/16 in a foot takes the %f gpm of the code without running over', (inch, flow) => {
  const section: Section = { shape: 'half-round', diameterMm: inches(inch) }
  const profile = troughProfile(channel({ section, n: 0.012, ...FREE }), evenly(feet(30), 30, gpm(flow)))
  const share = profile.deepestMm / inches(inch / 2)
  expect(share).toBeGreaterThan(0.5)
  expect(share).toBeLessThan(0.85)
})

describe('against the slow way', () => {
  // All slow: level or 1/32 in a foot, and an outlet that backs the water up.
  const cases = [
    ['level, 2 in outlet', channel({ slopeMmPerM: 0 }), 1.6],
    ['level, rough', channel({ slopeMmPerM: 0, n: 0.015 }), 3.2],
    [
      '1/32 in a foot, 3/4 in outlet',
      channel({ slopeMmPerM: inchesPerFoot(1 / 32), boreMm: inches(0.75) }),
      1.6,
    ],
    ['1/16 in a foot, 1 in outlet', channel({ boreMm: inches(1) }), 4],
    ['a short one', channel({ runMm: feet(8), outletFromHighMm: feet(8), slopeMmPerM: 0 }), 0.5],
  ] as const

  test.each(cases)('%s', (_name, gutter, flow) => {
    const drips = evenly(gutter.outletFromHighMm, 24, gpm(flow))
    const profile = troughProfile(gutter, drips)
    const firstMm = Math.max(profile.outletDepthMm, criticalDepthMm(gutter.section, gpm(flow)) * 1.0001)
    const out = profile.alongMm.map((mm) => gutter.outletFromHighMm - mm).reverse()
    const slow = slowDepths(gutter, gpm(flow), firstMm, out)
    const deepest = Math.max(...slow)
    profile.depthMm.toReversed().forEach((mm, i) => {
      expect(Math.abs(mm - (slow[i] ?? NaN)), `at ${out[i] ?? 0}`).toBeLessThan(0.02 * deepest)
    })
    expect(Math.abs(profile.deepestMm / deepest - 1)).toBeLessThan(0.005)
  })
})

test.each([
  [1 / 8, 1.6],
  [1 / 4, 1.6],
  [1 / 2, 1.6],
  [1 / 4, 4],
])('against the slow way, fast: at %f in a foot, %f gpm', (fall, flow) => {
  const gutter = channel({ slopeMmPerM: inchesPerFoot(fall), ...FREE })
  const profile = troughProfile(gutter, evenly(gutter.outletFromHighMm, 24, gpm(flow)))
  // From a third of the way on; what it began with is soon forgotten, so it begins a tenth too shallow.
  const [from, until] = [feet(10), feet(29.5)]
  const places = profile.alongMm.filter((mm) => mm > feet(18) && mm < until)
  const slow = fastDepths(gutter, gpm(flow), from, 0.9 * depthNear(profile, from), places)
  places.forEach((mm, i) => {
    expect(Math.abs(depthNear(profile, mm) / (slow[i] ?? NaN) - 1), `at ${mm}`).toBeLessThan(0.02)
  })
})

describe('a long fall', () => {
  // All water comes in at the high end: what then runs is normal flow, whatever the slope.
  test.each([
    [1 / 32, 1.6],
    [1 / 16, 1.6],
    [1 / 8, 1.6],
    [1 / 2, 1.6],
    [1 / 2, 0.1],
  ])('at %f in a foot %f gpm run at normal depth', (fall, flow) => {
    const slopeMmPerM = inchesPerFoot(fall)
    const long = channel({ slopeMmPerM, runMm: feet(200), outletFromHighMm: feet(200), ...FREE })
    const steps = Array.from({ length: 200 }, (_, k) => feet(0.5 + k))
    const drips: Drips = { alongMm: steps, lph: steps.map((_, k) => (k < 4 ? gpm(flow) / 4 : 0)) }
    const normal = normalDepthMm(FIVE, gpm(flow), slopeMmPerM, 0.01) ?? NaN
    expect(Math.abs(depthNear(troughProfile(long, drips), feet(100)) / normal - 1)).toBeLessThan(0.01)
  })

  test('fast water is fast and slow water slow', () => {
    for (const fall of [1 / 32, 1 / 2]) {
      const slopeMmPerM = inchesPerFoot(fall)
      const profile = troughProfile(channel({ slopeMmPerM, ...FREE }), evenly(feet(30), 24, gpm(1.6)))
      const mm = depthNear(profile, feet(20))
      const froude =
        (toM3PerS(gpm((1.6 * 20) / 30)) ** 2 * topWidthMm(FIVE, mm)) / (9.80665 * areaMm2(FIVE, mm) ** 3)
      expect(froude * 1e15 > 1).toBe(fall === 1 / 2)
    }
  })
})

describe('the trough of the trade notes', () => {
  // Three racks: 360 in of gutter from 3-1/2, outlet 341-1/2 on, 24 stations 15 in apart from 4 in on. 1.6 gpm run 0.23 in deep
  // (worked example of the trade notes, hand arithmetic), and the tail behind the outlet holds 18-1/2 in of fall more.
  const gutter = channel({ runMm: inches(360), outletFromHighMm: inches(341.5) })
  const drips = (flow: number): Drips => ({
    alongMm: Array.from({ length: 24 }, (_, k) => inches(4 + 15 * k)),
    lph: Array<number>(24).fill(gpm(flow) / 24),
  })

  test('1.6 gpm come to the outlet 0.2 in deep and stand 0.3 at the low end', () => {
    const profile = troughProfile(gutter, drips(1.6))
    expect(toInches(profile.outletDepthMm)).toBeGreaterThan(0.19)
    expect(toInches(profile.outletDepthMm)).toBeLessThan(0.23)
    expect(toInches(profile.deepestMm - profile.outletDepthMm)).toBeCloseTo(18.5 / 12 / 16, 2)
    expect(profile.deepestAtMm).toBeCloseTo(inches(360), 6)
    expect(toGpm(profile.flowLph)).toBeCloseTo(1.6, 9)
  })

  test('when nothing runs 0.1 in of film stands in the tail, and nothing elsewhere', () => {
    const profile = troughProfile(gutter, drips(0))
    expect(toInches(profile.deepestMm)).toBeCloseTo(0.0964, 4)
    expect(depthNear(profile, inches(340))).toBe(0)
    // Half of 0.0964 in by 18-1/2 in by 3-1/4 in is 2.9 in3, 16.387 mL each.
    expect(profile.standingL).toBeCloseTo(2.9 * 0.016387, 3)
  })

  test('an outlet in the high end leaves all the water in the tail', () => {
    const profile = troughProfile({ ...gutter, outletFromHighMm: 0 }, drips(1.6))
    expect(profile.depthMm.every((mm) => mm > 0)).toBe(true)
    // 360 in fall 1.875 in.
    expect(toInches(profile.deepestMm)).toBeGreaterThan(1.875)
  })
})

const anyGutter: fc.Arbitrary<readonly [Channel, Drips]> = fc
  .record({
    isRound: fc.boolean(),
    fall: fc.constantFrom(0, 1 / 32, 1 / 16, 1 / 8, 1 / 2),
    run: fc.integer({ min: 12, max: 600 }),
    outlet: fc.double({ min: 0, max: 1, noNaN: true }),
    bore: fc.constantFrom(0.5, 0.75, 1, 2),
    n: fc.double({ min: 0.007, max: 0.02, noNaN: true }),
    count: fc.integer({ min: 0, max: 40 }),
    flow: fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 6, noNaN: true })),
  })
  .map(({ isRound, fall, run, outlet, bore, n, count, flow }) => [
    {
      section: isRound ? HALF_ROUND : FIVE,
      slopeMmPerM: inchesPerFoot(fall),
      runMm: inches(run),
      outletFromHighMm: inches(run) * outlet,
      boreMm: inches(bore),
      n,
    },
    evenly(inches(run), count, gpm(flow)),
  ])

describe('any gutter', () => {
  test('has a depth of at least nothing everywhere, from its high end to its low end', () => {
    fc.assert(
      fc.property(anyGutter, ([gutter, drips]) => {
        const { alongMm, depthMm, outletDepthMm: at, standingL } = troughProfile(gutter, drips)
        expect(alongMm[0]).toBeCloseTo(0, 6)
        expect(alongMm.at(-1)).toBeCloseTo(gutter.runMm, 6)
        expect(depthMm.every((mm) => mm >= 0 && mm < feet(20))).toBe(true)
        alongMm.forEach((mm, i) => expect(i === 0 || mm > (alongMm[i - 1] ?? NaN)).toBe(true))
        expect(at).toBeGreaterThanOrEqual(
          outletDepthMm(
            gutter.boreMm,
            drips.lph.reduce((a, b) => a + b, 0),
          ).depthMm,
        )
        expect(standingL).toBeGreaterThanOrEqual(0)
      }),
      { seed: 41, numRuns: 300 },
    )
  })

  test('stands no shallower with more flow', () => {
    fc.assert(
      fc.property(anyGutter, ([gutter, drips]) => {
        const more = troughProfile(gutter, { ...drips, lph: drips.lph.map((lph) => lph * 1.3) })
        const less = troughProfile(gutter, drips)
        expect(more.outletDepthMm).toBeGreaterThanOrEqual(less.outletDepthMm)
        expect(more.deepestMm).toBeGreaterThanOrEqual(less.deepestMm * (1 - 1e-6))
        expect(more.standingL).toBeGreaterThanOrEqual(less.standingL * (1 - 1e-3))
      }),
      { seed: 42, numRuns: 300 },
    )
  })

  /** Between two places what flows through changes its momentum by just what weight, friction and pressure do: by parts, apart. */
  test('the water in a level one is pushed by its surface and held by its bottom', () => {
    fc.assert(
      fc.property(anyGutter, ([given, drips]) => {
        const gutter = { ...given, slopeMmPerM: 0, n: 1e-6 }
        const { alongMm, depthMm } = troughProfile(gutter, drips)
        const outlet = alongMm.findIndex((mm) => mm >= gutter.outletFromHighMm - 1e-6)
        const flow = drips.lph
          .filter((_, k) => (drips.alongMm[k] ?? 0) <= gutter.outletFromHighMm)
          .reduce((sum, lph) => sum + lph, 0)
        const push = (mm: number): number => pressure(gutter.section, mm)
        const momentum =
          flow === 0
            ? 0
            : (toM3PerS(flow) ** 2 * 1e15) / 9.80665 / areaMm2(gutter.section, depthMm[outlet] ?? NaN)
        const high = push(depthMm[0] ?? NaN)
        expect(Math.abs(high - push(depthMm[outlet] ?? NaN) - momentum)).toBeLessThan(0.002 * high + 1e-3)
      }),
      { seed: 43, numRuns: 200 },
    )
  })

  test('a gutter that is as long again below its outlet stands as deep above it', () => {
    const short = troughProfile(channel(), evenly(feet(30), 24, gpm(1.6)))
    const long = troughProfile(channel({ runMm: feet(40) }), evenly(feet(30), 24, gpm(1.6)))
    expect(long.depthMm.slice(0, short.depthMm.length)).toEqual(short.depthMm)
  })
})

/** First moment of the area under the surface, mm3: its width summed up over the depth, from Manning's own capacity of none. */
function pressure(section: Section, depthMm: number): number {
  const steps = 400
  let sum = 0
  for (let k = 0; k < steps; k += 1) {
    const mm = ((k + 0.5) / steps) * depthMm
    sum += topWidthMm(section, mm) * (depthMm - mm)
  }
  return (sum * depthMm) / steps
}

test('a gutter carries along its slope what Manning says, no more: 3.2 gpm are 0.35 in deep', () => {
  // Worked example of the trade notes, hand arithmetic.
  expect(toGpm(manningLph(FIVE, inches(0.35), inchesPerFoot(1 / 16), 0.01))).toBeCloseTo(3.2, 0)
})
