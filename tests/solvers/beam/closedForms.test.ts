import { describe, expect, test } from 'vitest'
import { beamOn, bend, bracketOf, line, points } from './drawn'

const L = 1524
const EI = 2.5e9
const w = 0.2
const P = 150

/** Within a millionth: the closed forms are exact, and so is the program but for rounding. */
const close = (found: number, known: number): void => {
  expect(Math.abs(found - known)).toBeLessThanOrEqual(1e-6 * Math.abs(known) + 1e-9)
}

// AISC, Steel Construction Manual, Table 3-23 (shears, moments and deflections), cases by number; from memory.
describe('beams of AISC Table 3-23', () => {
  test('1: simple, even load', () => {
    const bent = bend(beamOn(L, [0, L], EI), line(0, L, w))
    const { most } = bent.moments(0, L)
    close(most.value, (w * L ** 2) / 8)
    close(most.atMm, L / 2)
    close(bent.sags(0, L).most.value, (5 * w * L ** 4) / (384 * EI))
    bent.reactionsN.forEach((r) => close(r, (w * L) / 2))
    close(bent.shearAt(L / 4), (w * L) / 4)
  })

  test('7: simple, one load in the middle', () => {
    const bent = bend(beamOn(L, [0, L], EI), points([L / 2, P]))
    close(bent.moments(0, L).most.value, (P * L) / 4)
    close(bent.sags(0, L).most.value, (P * L ** 3) / (48 * EI))
    bent.reactionsN.forEach((r) => close(r, P / 2))
  })

  test('9: simple, two equal loads as far from the ends', () => {
    const a = 400
    const bent = bend(beamOn(L, [0, L], EI), points([a, P], [L - a, P]))
    close(bent.moments(0, L).most.value, P * a)
    close(bent.momentAt(L / 2), P * a)
    close(bent.sags(0, L).most.value, ((P * a) / (24 * EI)) * (3 * L ** 2 - 4 * a ** 2))
    bent.reactionsN.forEach((r) => close(r, P))
  })

  test('19: cantilever, even load', () => {
    const bent = bend(bracketOf(L, EI), line(0, L, w))
    close(bent.momentAt(0), (-w * L ** 2) / 2)
    close(bent.sagAt(L), (w * L ** 4) / (8 * EI))
    close(bent.reactionsN[0]!, w * L)
  })

  test('22: cantilever, load at its tip', () => {
    const bent = bend(bracketOf(L, EI), points([L, P]))
    close(bent.moments(0, L).least.value, -P * L)
    close(bent.sagAt(L), (P * L ** 3) / (3 * EI))
    close(bent.reactionsN[0]!, P)
  })

  test('24: overhang at one end, even load', () => {
    const a = 500
    const bent = bend(beamOn(L + a, [0, L], EI), line(0, L + a, w))
    const { most, least } = bent.moments(0, L + a)
    close(most.value, (w * (L + a) ** 2 * (L - a) ** 2) / (8 * L ** 2))
    close(least.value, (-w * a ** 2) / 2)
    close(least.atMm, L)
    close(bent.reactionsN[0]!, (w * (L ** 2 - a ** 2)) / (2 * L))
    close(bent.reactionsN[1]!, (w * (L + a) ** 2) / (2 * L))
  })
})

// Civil Engineering Formulas, Table 2.1, p. 96-97 (uniformly loaded continuous beams over equal spans).
describe('equal spans under an even load', () => {
  test('two spans: 1/8 over the middle support, 9/128 at 3/8 of a span, 3/8, 10/8, 3/8', () => {
    const bent = bend(beamOn(2 * L, [0, L, 2 * L], EI), line(0, 2 * L, w))
    close(bent.momentAt(L), (-w * L ** 2) / 8)
    const { most } = bent.moments(0, L)
    expect(most.value / (w * L ** 2)).toBeCloseTo(0.0703, 4)
    close(most.atMm, 0.375 * L)
    ;[3 / 8, 10 / 8, 3 / 8].forEach((c, k) => close(bent.reactionsN[k]!, c * w * L))
    // 0.0054 and w L^4 / 185 are printed; 0.005416 by an independent direct-stiffness solution.
    expect((bent.sags(0, L).most.value * EI) / (w * L ** 4)).toBeCloseTo(0.005416, 6)
  })

  test('three spans: 0.100 over the supports, 0.080 and 0.025 between, 0.4, 1.1, 1.1, 0.4', () => {
    const bent = bend(beamOn(3 * L, [0, L, 2 * L, 3 * L], EI), line(0, 3 * L, w))
    const whole = w * L ** 2
    close(bent.momentAt(L), -0.1 * whole)
    close(bent.moments(0, L).most.value, 0.08 * whole)
    close(bent.moments(L, 2 * L).most.value, 0.025 * whole)
    ;[0.4, 1.1, 1.1, 0.4].forEach((c, k) => close(bent.reactionsN[k]!, c * w * L))
    expect((bent.sags(0, 3 * L).most.value * EI) / (w * L ** 4)).toBeCloseTo(0.0069, 4)
  })

  test('three spans, two neighbours loaded: 0.0735, 0.383, 1.200, 0.450, -0.033, 0.0059', () => {
    // Tables of continuous beams as printed by piping-designer.com (2404), three spans, load on two adjacent spans.
    const bent = bend(beamOn(3 * L, [0, L, 2 * L, 3 * L], EI), line(0, 2 * L, w))
    expect(bent.moments(0, 3 * L).most.value / (w * L ** 2)).toBeCloseTo(0.0735, 3)
    ;[0.383, 1.2, 0.45, -0.033].forEach((c, k) => expect(bent.reactionsN[k]! / (w * L)).toBeCloseTo(c, 3))
    expect((bent.sags(0, 3 * L).most.value * EI) / (w * L ** 4)).toBeCloseTo(0.0059, 4)
  })

  test('overhangs of 0.2071 of the whole make what hogs as much as what sags', () => {
    // Equal overhangs under an even load: a = (sqrt(2) - 1) / 2 of the whole length; from memory.
    const a = 0.2071 * L
    const { most, least } = bend(beamOn(L, [a, L - a], EI), line(0, L, w)).moments(0, L)
    expect(-least.value / most.value).toBeCloseTo(1, 3)
  })

  test('a clamp at both ends takes 1/12, and the middle 1/24', () => {
    const clampedBeam = {
      ...beamOn(L, [], EI),
      supports: [0, L].map((atMm) => ({ atMm, holds: 'both', isClamped: true }) as const),
    }
    const bent = bend(clampedBeam, line(0, L, w))
    close(bent.momentAt(0), (-w * L ** 2) / 12)
    close(bent.momentAt(L / 2), (w * L ** 2) / 24)
    close(bent.sagAt(L / 2), (w * L ** 4) / (384 * EI))
  })
})

describe('a hinge', () => {
  test('a beam hung from the overhang of its neighbour is statics', () => {
    // Hand arithmetic: the 600 mm from the hinge carries 150 N in its middle, 75 N at each end; those 75 N on an overhang of 200 mm
    // past supports 1000 mm apart: 15,000 N·mm over the support, 15 N up at the far one, 90 N at the near one.
    const beam = { ...beamOn(1800, [0, 1000, 1800], EI), hinges: [1200] }
    const bent = bend(beam, points([1500, 150]))
    close(bent.momentAt(1000), -15000)
    close(bent.momentAt(1500), 22500)
    expect(bent.momentAt(1200)).toBeCloseTo(0, 6)
    ;[-15, 90, 75].forEach((r, k) => close(bent.reactionsN[k]!, r))
    // Overhang tip: F a² (l + a) / 3EI.
    close(bent.sagAt(1200), (75 * 200 ** 2 * 1200) / (3 * EI))
  })

  test('a hinge over a support parts the beam in two', () => {
    const joined = bend({ ...beamOn(2 * L, [0, L, 2 * L], EI), hinges: [L] }, line(0, 2 * L, w))
    const alone = bend(beamOn(L, [0, L], EI), line(0, L, w))
    close(joined.moments(0, L).most.value, alone.moments(0, L).most.value)
    close(joined.sags(L, 2 * L).most.value, alone.sags(0, L).most.value)
    close(joined.reactionsN[1]!, w * L)
  })
})
