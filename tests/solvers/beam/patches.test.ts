import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Reading } from '../../../src/solvers/beam/patches'
import { patchesOn } from '../../../src/solvers/beam/patches'
import { anyLoaded } from './anyBeam'
import { beamOn, line, points, solved } from './drawn'

const L = 1500
const w = 0.2
const spans = (count: number) => Array.from({ length: count }, (_, k) => line(k * L, (k + 1) * L, w))
const fiveSupports = [0, L, 2 * L, 3 * L, 4 * L]
const none = { points: [], lines: [] }

// Which spans to load for the worst: every other span for what sags in one, both neighbours and then every other for a support. Hibbeler,
// Structural Analysis, chapter on influence lines (Müller-Breslau 1886), from memory.
describe('the worst spans to load of four', () => {
  const worst = patchesOn(solved(beamOn(4 * L, fiveSupports)), none, spans(4))
  test.each<[string, Reading, readonly number[], readonly number[]]>([
    ['moment within the first', (bent) => bent.momentAt(0.4 * L), [0, 2], [1, 3]],
    ['moment within the second', (bent) => bent.momentAt(1.5 * L), [1, 3], [0, 2]],
    ['moment over the second support', (bent) => bent.momentAt(L), [2], [0, 1, 3]],
    ['load of the second support', (bent) => bent.reactionsN[1] ?? 0, [0, 1, 3], [2]],
    ['load of the last support', (bent) => bent.reactionsN[4] ?? 0, [1, 3], [0, 2]],
  ])('%s', (_what, reading, most, least) => {
    expect(worst.most(reading).groups).toEqual(most)
    expect(worst.least(reading).groups).toEqual(least)
  })
})

test('three spans, the outer two loaded: 0.101 w l² (AISC Table 3-22c, from memory)', () => {
  const worst = patchesOn(solved(beamOn(3 * L, [0, L, 2 * L, 3 * L])), none, spans(3))
  const most = worst.mostMoment(0, L)
  expect(most.groups).toEqual([0, 2])
  expect(most.value / (w * L ** 2)).toBeCloseTo(0.1013, 4)
  const over = worst.leastMoment(0, 3 * L)
  expect(over.value / (w * L ** 2)).toBeCloseTo(-0.1167, 4)
})

test('no set of groups is worse than the one found, by trying all of them', () => {
  fc.assert(
    fc.property(anyLoaded, ({ beam, load }) => {
      const groups = load.points.slice(0, 5).map(({ atMm, downN }) => points([atMm, downN]))
      const beamSolved = solved(beam)
      const dead = line(0, beam.toMm, 0.02)
      const patches = patchesOn(beamSolved, dead, groups)
      const sets = Array.from({ length: 2 ** groups.length }, (_, bits) =>
        groups.flatMap((_group, k) => ((bits >> k) & 1 ? [k] : [])),
      )
      const [from, to] = [beam.toMm * 0.2, beam.toMm * 0.7]
      const all = sets.map((set) => patches.under(set))
      const moment = Math.max(...all.map((bent) => bent.moments(from, to).most.value))
      const found = patches.mostMoment(from, to)
      expect(found.value).toBeGreaterThanOrEqual(moment - 1e-6 * Math.abs(moment) - 1e-6)
      expect(patches.under(found.groups).momentAt(found.atMm)).toBeCloseTo(found.value, 3)
      const reaction: Reading = ({ reactionsN }) => reactionsN[1] ?? 0
      const least = Math.min(...all.map(reaction))
      expect(Math.abs(patches.least(reaction).value - least)).toBeLessThanOrEqual(
        1e-6 * Math.abs(least) + 1e-6,
      )
    }),
    { seed: 20261126, numRuns: 100 },
  )
})
