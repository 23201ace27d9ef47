import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  campRatio,
  flowForVelocityLph,
  fullLph,
  halfFullLph,
  manningLph,
  normalDepthMm,
  velocityMS,
} from '../../../src/solvers/gravity/manning'
import {
  areaMm2,
  heightMm,
  hydraulicRadiusMm,
  type Section,
  wettedMm,
} from '../../../src/solvers/gravity/section'
import { gpm, toGpm } from '../../../src/units/flow'
import { feet, inches, toInches } from '../../../src/units/length'
import { inchesPerFoot, perCent } from '../../../src/units/slope'
import { feetPerSecond, toFeetPerSecond } from '../../../src/units/velocity'

const pipe = (bore: number): Section => ({ shape: 'circle', diameterMm: inches(bore) })

/** Cubic feet a second, at 448.831 gpm (7.48052 gal a cubic foot, 60 s a minute). */
const cfs = (lph: number): number => toGpm(lph) / 448.831

describe('partial flow in a round pipe', () => {
  /**
   * Share of the bore; area, hydraulic radius over those of a full pipe: United States Environmental Protection Agency, SWMM 5.2,
   * table of a circular section, four decimals. Flow and velocity over those of a full pipe: exact geometry, n constant.
   */
  const rows = [
    [0.05, 0.0187, 0.1302, 0.0048, 0.257],
    [0.1, 0.0521, 0.254, 0.0209, 0.401],
    [0.15, 0.0941, 0.3715, 0.0486, 0.517],
    [0.2, 0.1423, 0.4824, 0.0876, 0.615],
    [0.25, 0.1955, 0.5865, 0.137, 0.701],
    [0.3, 0.2524, 0.6836, 0.1958, 0.776],
    [0.4, 0.3736, 0.8568, 0.337, 0.902],
    [0.5, 0.5, 1, 0.5, 1],
    [0.6, 0.6264, 1.11, 0.6718, 1.072],
    [0.7, 0.7476, 1.1848, 0.8372, 1.12],
    [0.8, 0.8576, 1.217, 0.9775, 1.14],
    [0.9, 0.9479, 1.192, 1.0658, 1.124],
    [0.938, 0.9743, 1.1601, 1.0757, 1.104],
    [0.94, 0.9756, 1.1584, 1.0757, 1.103],
    [1, 1, 1, 1, 1],
  ] as const

  test.each(rows)('%f of the bore', (share, area, radius, flow, velocity) => {
    const section = pipe(4)
    const [depth, full] = [inches(4) * share, inches(4)]
    const slope = inchesPerFoot(1 / 8)
    const lph = manningLph(section, depth, slope, 0.011)
    expect(areaMm2(section, depth) / areaMm2(section, full)).toBeCloseTo(area, 3)
    expect(
      Math.abs(hydraulicRadiusMm(section, depth) / hydraulicRadiusMm(section, full) - radius),
    ).toBeLessThan(0.0012)
    expect(Math.abs(lph / fullLph(full, slope, 0.011) - flow)).toBeLessThan(2e-4)
    const fullMS = velocityMS(section, full, fullLph(full, slope, 0.011))
    expect(velocityMS(section, depth, lph) / fullMS).toBeCloseTo(velocity, 3)
  })
})

describe('full pipes', () => {
  /**
   * gpm and ft/s by Manning's equation in its US form, V = 1.486 R^(2/3) S^(1/2) / n, worked apart from this program (1.486 for
   * 3.28084^(1/3) = 1.4859). Hand: 4 in at 1/8 in a foot, n 0.011: R 1/12 ft, R^(2/3) 0.19079, S^(1/2) 0.10206, V 2.631 ft/s,
   * x 0.087266 ft2 x 448.83 = 103.0 gpm.
   */
  test.each([
    [3, 1 / 16, 0.009, 41.3, 1.88],
    [3, 1 / 8, 0.011, 47.8, 2.17],
    [3, 1 / 4, 0.013, 57.2, 2.6],
    [4, 1 / 16, 0.011, 72.9, 1.86],
    [4, 1 / 8, 0.009, 125.9, 3.22],
    [4, 1 / 8, 0.011, 103.0, 2.63],
    [4, 1 / 8, 0.013, 87.2, 2.23],
    [4, 1 / 4, 0.011, 145.7, 3.72],
    [4, 1 / 2, 0.013, 174.4, 4.45],
    [6, 1 / 8, 0.011, 303.8, 3.45],
    [6, 1 / 2, 0.009, 742.5, 8.43],
    [3.975, 1 / 8, 0.011, 101.3, undefined],
    [4.026, 1 / 8, 0.011, 104.8, undefined],
    [4.065, 1 / 8, 0.011, 107.6, undefined],
  ])('%f in at %f in a foot, n %f: %f gpm', (bore, fall, n, flow, speed) => {
    const lph = fullLph(inches(bore), inchesPerFoot(fall), n)
    expect(Math.abs(toGpm(lph) / flow - 1)).toBeLessThan(0.002)
    if (speed === undefined) return
    expect(Math.abs(toFeetPerSecond(velocityMS(pipe(bore), inches(bore), lph)) / speed - 1)).toBeLessThan(
      0.003,
    )
  })

  /** Slope at which a full pipe runs 2 ft/s, per cent: worked apart, the same equation turned round. */
  test.each([
    [4, 0.013, 0.841],
    [4, 0.011, 0.602],
    [4, 0.009, 0.403],
    [6, 0.013, 0.49],
    [6, 0.011, 0.351],
  ])('a full %i in pipe of n %f scours at %f per cent', (bore, n, per100) => {
    const lph = fullLph(inches(bore), perCent(per100), n)
    expect(toFeetPerSecond(velocityMS(pipe(bore), inches(bore), lph))).toBeCloseTo(2, 2)
  })
})

describe('what codes say of full pipes, as plausibility', () => {
  /** The n with which Manning gives what a code prints: n goes with 1 over the flow. */
  const impliedN = (bore: number, fall: number, flow: number): number =>
    (toGpm(fullLph(inches(bore), inchesPerFoot(fall), 0.01)) / flow) * 0.01

  // International Plumbing Code 2012, table 1106.3, 4 in at 1/8: 7,520 ft2 at 1 in an hour, x 0.0104 = 78.2 gpm (quoted by others).
  test('IPC 2012 lets a 4 in storm drain at 1/8 in a foot carry 78.2 gpm: n 0.0145', () => {
    expect(impliedN(4, 1 / 8, 78.2)).toBeCloseTo(0.0145, 4)
  })

  // International Plumbing Code 2021, table 1106.2, 4 in at 1/8: 115 gpm (quoted by others): the same pipe, 47 % more.
  test('IPC 2021 lets the same drain carry 115 gpm: n 0.0099', () => {
    expect(impliedN(4, 1 / 8, 115)).toBeCloseTo(0.0099, 4)
    expect(115 / 78.2).toBeCloseTo(1.47, 2)
  })

  // Rows of both tables from memory: the n that they imply hardly changes with size and slope, as Manning's should not.
  test.each([
    ['2021', 3, 1 / 16, 39],
    ['2021', 3, 1 / 4, 79],
    ['2021', 4, 1 / 2, 231],
    ['2021', 6, 1 / 8, 344],
  ])('IPC %s, %i in at %f', (_edition, bore, fall, flow) => {
    expect(Math.abs(impliedN(bore, fall, flow) - 0.0097)).toBeLessThan(0.0004)
  })

  // Uniform Plumbing Code, appendix D, worked example: a 6 in drain at 1/8 in a foot serves 21,400 ft2 at 1 in an hour, and
  // 21,400 / 3.2 = 6,688 ft2 at 3.2. By 0.0104 gpm a square foot that is 222 gpm in the pipe, either way.
  test('UPC 6 in example: 21,400 ft2 at 1 in an hour are 6,688 at 3.2, and n is near 0.015', () => {
    const flow = 21_400 * 0.0103896
    expect(6688 * 3.2 * 0.0103896).toBeCloseTo(flow, 0)
    expect(impliedN(6, 1 / 8, flow)).toBeCloseTo(0.015, 3)
  })

  // International Plumbing Code, table 704.1: 1/4, 1/8, 1/16 in a foot up to 2-1/2, from 3 to 6, from 8 in: half full they all
  // run at the 2 ft/s that keeps a sewer clean (municipal sewer codes) or faster, which is why bigger pipe may lie flatter.
  test.each([
    [2.5, 1 / 4],
    [3, 1 / 8],
    [4, 1 / 8],
    [6, 1 / 8],
    [8, 1 / 16],
  ])('at its least code slope a half full %f in pipe runs 2 to 4 ft/s', (bore, fall) => {
    const half = halfFullLph(inches(bore), inchesPerFoot(fall), 0.011)
    const speed = toFeetPerSecond(velocityMS(pipe(bore), inches(bore / 2), half))
    expect(speed).toBeGreaterThan(2)
    expect(speed).toBeLessThan(4)
  })
})

describe('drains of the trade notes', () => {
  // Worked example of the trade notes, hand arithmetic: 4.06 in bore, 1/8 in a foot, n 0.010.
  const [bore, slope, n] = [inches(4.06), inchesPerFoot(1 / 8), 0.01]

  test('a 4 in line half full carries 58.8 gpm at 2.92 ft/s', () => {
    const half = halfFullLph(bore, slope, n)
    expect(toGpm(half)).toBeCloseTo(58.8, 0)
    expect(toFeetPerSecond(velocityMS(pipe(4.06), bore / 2, half))).toBeCloseTo(2.92, 1)
  })

  test('19.2 gpm stand 0.273 of the bore deep', () => {
    expect((normalDepthMm(pipe(4.06), gpm(19.2), slope, n) ?? NaN) / bore).toBeCloseTo(0.273, 3)
  })

  // The same notes, half full at n 0.010: gpm of nominal sizes, to the digits printed.
  test.each([
    [2.067, 1 / 8, 9.7, 0.12],
    [3.11, 1 / 8, 27, 0.09],
    [4.06, 1 / 16, 42, 0.02],
    [4.06, 1 / 4, 83, 0.02],
    [6.08, 1 / 8, 167, 0.06],
  ])('%f in at %f in a foot half full: about %f gpm', (inch, fall, flow, close) => {
    const half = toGpm(halfFullLph(inches(inch), inchesPerFoot(fall), n))
    expect(Math.abs(half / flow - 1)).toBeLessThan(close)
  })

  // 4.065 in, n 0.011, worked apart from this program: depth and speed of 5 gpm, and the flow that runs 2 ft/s.
  test.each([
    [1 / 16, 0.71, 1.06, 49],
    [1 / 8, 0.6, 1.36, 18.9],
    [1 / 4, 0.5, 1.73, 8.2],
  ])('5 gpm at %f in a foot: slow, not full', (fall, depth, speed, scour) => {
    const own = inchesPerFoot(fall)
    const mm = normalDepthMm(pipe(4.065), gpm(5), own, 0.011) ?? NaN
    expect(Math.abs(toInches(mm) - depth)).toBeLessThan(0.006)
    expect(Math.abs(toFeetPerSecond(velocityMS(pipe(4.065), mm, gpm(5))) - speed)).toBeLessThan(0.012)
    const wants = flowForVelocityLph(inches(4.065), own, 0.011, feetPerSecond(2))
    expect(Math.abs(toGpm(wants ?? NaN) / scour - 1)).toBeLessThan(0.02)
  })

  test('a line so flat that it never runs 2 ft/s says so', () => {
    expect(flowForVelocityLph(inches(4.065), inchesPerFoot(1 / 32), 0.011, feetPerSecond(2))).toBeUndefined()
  })
})

describe('gutters', () => {
  // Worked examples of the trade notes, hand arithmetic: 3-1/4 in bottom, 5 in lip 3-3/8 up, 1/16 in a foot, n 0.010.
  const gutter: Section = {
    shape: 'trapezoid',
    bottomMm: inches(3.25),
    topMm: inches(5),
    heightMm: inches(3.375),
  }
  test.each([
    [0.53, 0.11],
    [1.6, 0.23],
    [3.2, 0.35],
  ])('%f gpm run %f in deep in a 5 in gutter', (flow, depth) => {
    const mm = normalDepthMm(gutter, gpm(flow), inchesPerFoot(1 / 16), 0.01)
    expect(Math.abs(toInches(mm ?? NaN) - depth)).toBeLessThan(0.0075)
  })

  // 4 in half-round, n 0.011, 0.833 gpm: worked apart from this program, exact geometry.
  test.each([
    [1 / 16, 0.3, 0.62],
    [1 / 8, 0.26, 0.79],
    [1 / 4, 0.22, 1.01],
  ])('20 towers at 2.5 gph in a 4 in half-round at %f in a foot', (fall, depth, speed) => {
    const half: Section = { shape: 'half-round', diameterMm: inches(4) }
    const mm = normalDepthMm(half, gpm(0.833), inchesPerFoot(fall), 0.011) ?? NaN
    expect(Math.abs(toInches(mm) - depth)).toBeLessThan(0.006)
    expect(Math.abs(toFeetPerSecond(velocityMS(half, mm, gpm(0.833))) - speed)).toBeLessThan(0.012)
  })

  // Brim full, n 0.012, gpm, worked apart from this program; codes allow about 45 % (International and Uniform Plumbing Code to
  // 2012, 4 in semicircular gutter, from memory: 15.0, 21.2, 30.0, 42.4), which is two thirds of the depth to 7 %.
  test.each([
    [1 / 16, 33.4, 15.0],
    [1 / 8, 47.2, 21.2],
    [1 / 4, 66.8, 30.0],
    [1 / 2, 94.4, 42.4],
  ])('a 4 in half-round at %f in a foot: %f gpm brim full, %f by code', (fall, brim, code) => {
    const half: Section = { shape: 'half-round', diameterMm: inches(4) }
    const at = (depth: number): number => toGpm(manningLph(half, inches(depth), inchesPerFoot(fall), 0.012))
    expect(Math.abs(at(2) / brim - 1)).toBeLessThan(0.003)
    expect(Math.abs(at(4 / 3) / code - 1)).toBeLessThan(0.08)
  })
})

describe('n that changes with depth', () => {
  // H. H. Bengtson, Partially full pipe flow calculations, workbook's example: 21 in pipe, 6 in deep, n full 0.022, S 0.0085:
  // n / n full 1.29, Q 1.195 ft3/s, V 2.11 ft/s.
  test('Camp: 21 in, 6 in deep, 1.195 cubic feet a second', () => {
    const section = pipe(21)
    const ratio = campRatio(6 / 21)
    expect(ratio).toBeCloseTo(1.29, 2)
    const lph = manningLph(section, inches(6), perCent(0.85), 0.022 * ratio)
    expect(Math.abs(cfs(lph) / 1.195 - 1)).toBeLessThan(0.005)
    expect(toFeetPerSecond(velocityMS(section, inches(6), lph))).toBeCloseTo(2.11, 1)
    expect(areaMm2(section, inches(6)) / feet(1) ** 2).toBeCloseTo(0.57, 1)
    expect(wettedMm(section, inches(6)) / feet(1)).toBeCloseTo(2, 1)
  })

  test('it is 1 at both ends and nowhere less', () => {
    expect(campRatio(0)).toBe(1)
    expect(campRatio(1)).toBe(1)
    for (let share = 0; share <= 1; share += 0.01) expect(campRatio(share)).toBeGreaterThanOrEqual(1)
  })
})

const anySection: fc.Arbitrary<Section> = fc.oneof(
  fc.record({
    shape: fc.constant('circle' as const),
    diameterMm: fc.double({ min: 10, max: 400, noNaN: true }),
  }),
  fc.record({
    shape: fc.constant('half-round' as const),
    diameterMm: fc.double({ min: 30, max: 400, noNaN: true }),
  }),
  fc
    .record({
      bottomMm: fc.double({ min: 10, max: 300, noNaN: true }),
      widerMm: fc.double({ min: 0, max: 200, noNaN: true }),
      heightMm: fc.double({ min: 20, max: 300, noNaN: true }),
    })
    .map(({ bottomMm, widerMm, heightMm: high }) => ({
      shape: 'trapezoid' as const,
      bottomMm,
      topMm: bottomMm + widerMm,
      heightMm: high,
    })),
)

describe('any section', () => {
  const share = fc.double({ min: 0.001, max: 0.93, noNaN: true })
  const slope = fc.double({ min: 0.1, max: 200, noNaN: true })

  test('the depth of a flow is the depth that it runs at', () => {
    fc.assert(
      fc.property(anySection, share, slope, (section, part, mmPerM) => {
        const depth = part * heightMm(section)
        const back = normalDepthMm(section, manningLph(section, depth, mmPerM, 0.01), mmPerM, 0.01)
        expect(Math.abs((back ?? NaN) / depth - 1)).toBeLessThan(1e-6)
      }),
      { seed: 31 },
    )
  })

  test('more flow stands deeper', () => {
    fc.assert(
      fc.property(anySection, share, slope, (section, part, mmPerM) => {
        const flow = manningLph(section, part * heightMm(section), mmPerM, 0.01)
        const less = normalDepthMm(section, flow * 0.9, mmPerM, 0.01) ?? NaN
        expect(less).toBeLessThan(normalDepthMm(section, flow, mmPerM, 0.01) ?? NaN)
      }),
      { seed: 32 },
    )
  })

  test('what does not fall, or does not fit, has no depth; nothing has none', () => {
    fc.assert(
      fc.property(anySection, slope, (section, mmPerM) => {
        expect(normalDepthMm(section, 100, 0, 0.01)).toBeUndefined()
        expect(normalDepthMm(section, 100, -mmPerM, 0.01)).toBeUndefined()
        expect(normalDepthMm(section, 0, mmPerM, 0.01)).toBe(0)
        const most = manningLph(section, heightMm(section), mmPerM, 0.01)
        expect(normalDepthMm(section, 1.1 * most, mmPerM, 0.01)).toBeUndefined()
      }),
      { seed: 33 },
    )
  })

  test('its area is its width summed up over the depth', () => {
    fc.assert(
      fc.property(anySection, share, (section, part) => {
        const depth = part * heightMm(section) * (section.shape === 'circle' ? 1 : 1.3)
        const steps = 2000
        let sum = 0
        for (let k = 0; k < steps; k += 1) sum += width(section, ((k + 0.5) / steps) * depth)
        expect(Math.abs((sum * depth) / steps / areaMm2(section, depth) - 1)).toBeLessThan(2e-4)
      }),
      { seed: 34 },
    )
  })
})

/** Width of a section at a height, from its outline alone. */
function width(section: Section, y: number): number {
  if (section.shape === 'trapezoid') {
    const share = Math.min(y / section.heightMm, 1)
    return section.bottomMm * (1 - share) + section.topMm * share
  }
  const radius = section.diameterMm / 2
  return section.shape === 'half-round' && y > radius
    ? 2 * radius
    : 2 * Math.sqrt(Math.max(0, radius ** 2 - (radius - y) ** 2))
}
