import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Beam } from '../../../src/solvers/beam/beam'
import { beamOf } from '../../../src/solvers/beam/solve'
import { restOn } from '../../../src/solvers/beam/rest'
import { anyLoaded } from './anyBeam'
import { beamOn, bend, both, line, points } from './drawn'

const laid = (beam: Beam): Beam => ({
  ...beam,
  supports: beam.supports.map((support) => (support.isClamped ? support : { ...support, holds: 'up' })),
})

const rested = (beam: Beam, load: Parameters<typeof restOn>[1]) => {
  const result = restOn(beam, load)
  if (!result.ok) throw new RangeError(result.why)
  return result
}

describe('a beam laid in notches', () => {
  test('lifts off the end of two spans of which one is loaded', () => {
    // Hand arithmetic: with the far support let go, 100 N in the middle of the first 1000 mm is a simple beam, slope at its end
    // P l² / 16 EI = 100 x 1e6 / 16e9; the loose 1000 mm lie along it, 6.25 mm up at their end.
    const beam = laid(beamOn(2000, [0, 1000, 2000], 1e9))
    const { reactionsN, gapsMm, bent } = rested(beam, points([500, 100]))
    ;[50, 50, 0].forEach((r, k) => expect(reactionsN[k]).toBeCloseTo(r, 9))
    ;[0, 0, 6.25].forEach((gap, k) => expect(gapsMm[k]).toBeCloseTo(gap, 9))
    expect(bent.sagAt(2000)).toBeCloseTo(-6.25, 9)
  })

  test('comes down again under enough of its own weight', () => {
    const beam = laid(beamOn(2000, [0, 1000, 2000], 1e9))
    const load = both(points([500, 100]), line(0, 2000, 0.1))
    expect(rested(beam, load).gapsMm).toEqual([0, 0, 0])
    bend(beam, load).reactionsN.forEach((r, k) => expect(rested(beam, load).reactionsN[k]).toBeCloseTo(r, 9))
  })

  test('tips off where nothing is left to hold it', () => {
    const result = restOn(laid(beamOn(2000, [500, 1000])), points([100, 50]))
    expect(result).toMatchObject({ ok: false, why: expect.stringMatching(/tips off/) as string })
  })

  test('holes hold what notches let go', () => {
    const result = restOn(beamOn(2000, [500, 1000]), points([100, 50]))
    expect(result).toMatchObject({ ok: true, gapsMm: [0, 0] })
  })
})

test('never pulls, never sinks below a support, and bears or gapes at each', () => {
  let settled = 0
  let lifted = 0
  fc.assert(
    fc.property(anyLoaded, ({ beam, load }) => {
      const result = restOn(laid(beam), load)
      if (!result.ok) return
      settled += 1
      if (result.gapsMm.some((gap) => gap > 0)) lifted += 1
      const force = Math.max(...result.reactionsN.map(Math.abs))
      const sag = Math.max(...beam.supports.map(({ atMm }) => Math.abs(result.bent.sagAt(atMm))))
      beam.supports.forEach(({ isClamped }, k) => {
        if (isClamped) return
        expect(result.reactionsN[k]).toBeGreaterThanOrEqual(-1e-6 * force)
        expect(result.gapsMm[k]).toBeGreaterThanOrEqual(-1e-6 * sag)
        expect(result.reactionsN[k]! === 0 || result.gapsMm[k]! === 0).toBe(true)
      })
    }),
    { seed: 20261126, numRuns: 300 },
  )
  // Enough of the draws stand, and enough of those lift.
  expect(settled).toBeGreaterThan(100)
  expect(lifted).toBeGreaterThan(50)
})

// What can swing is told from what stands before anything is solved.
describe('a mechanism', () => {
  const swings = (supports: readonly number[], hinges: readonly number[]): boolean =>
    !beamOf({ ...beamOn(4000, supports), hinges }).ok

  test.each<[string, readonly number[], readonly number[], boolean]>([
    ['on one support', [1000], [], true],
    ['on two', [1000, 2000], [], false],
    ['on two in one place', [1000, 1000.1], [], true],
    ['a hinge between two supports', [0, 4000], [2000], true],
    ['a hinge with a third support beyond it', [0, 4000, 3000], [2000], false],
    ['two hinges in one span', [0, 1000, 3000, 4000], [1500, 2500], false],
    ['three hinges in one span', [0, 1000, 3000, 4000], [1500, 2000, 2500], true],
    ['a hinge over a middle support', [0, 2000, 4000], [2000], false],
    ['an end past a hinge that rests on nothing', [0, 1000], [2000], true],
    ['an end past a hinge over a support', [0, 1000, 2000], [2000], true],
  ])('%s', (_what, supports, hinges, isLoose) => {
    expect(swings(supports, hinges)).toBe(isLoose)
  })

  test('and a beam that makes no sense are told as sentences', () => {
    expect(beamOf(beamOn(0, [0]))).toMatchObject({ ok: false, why: 'The beam has no length.' })
    expect(beamOf(beamOn(1000, [0, 2000]))).toMatchObject({
      ok: false,
      why: 'A support stands off the beam.',
    })
    expect(beamOf(beamOn(1000, [0, 1000], 0))).toMatchObject({
      ok: false,
      why: 'A section of the beam has no stiffness.',
    })
  })
})
