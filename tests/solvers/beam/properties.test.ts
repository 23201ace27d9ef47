import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Beam, BeamLoad } from '../../../src/solvers/beam/beam'
import type { Solved } from '../../../src/solvers/beam/solve'
import { anyLoaded, momentOf, totalOf } from './anyBeam'
import { both, points, solved } from './drawn'
import { macaulay } from './macaulay'

const run = { seed: 20261126, numRuns: 300 }

/** Beams that stand, with a load on each. */
const property = (holds: (beam: Beam, load: BeamLoad, solved: Solved) => void): void => {
  fc.assert(
    fc.property(anyLoaded, ({ beam, load }) => holds(beam, load, solved(beam))),
    run,
  )
}

/** Alike within a share of the largest of what is compared. */
const alike = (found: number, known: number, scale: number, share = 1e-6): void => {
  expect(Math.abs(found - known)).toBeLessThanOrEqual(share * scale + 1e-9)
}

const places = (beam: Beam, count = 37): number[] =>
  Array.from({ length: count }, (_, k) => beam.fromMm + ((beam.toMm - beam.fromMm) * (k + 0.37)) / count)

const largest = (values: readonly number[]): number => Math.max(...values.map(Math.abs))

describe('any beam', () => {
  test('is in balance: forces and moments', () => {
    property((beam, load, { bend }) => {
      const bent = bend(load)
      const { reactionsN } = bent
      const scale = largest([...reactionsN, totalOf(load)])
      alike(
        reactionsN.reduce((sum, r) => sum + r, 0),
        totalOf(load),
        scale,
      )
      // What a clamp at the start holds is the moment there.
      const turned = reactionsN.reduce((sum, r, k) => sum + r * beam.supports[k]!.atMm, 0)
      alike(turned - bent.momentAt(0), momentOf(load), scale * beam.toMm)
    })
  })

  test('lies on its supports, carries nothing at its hinges and ends', () => {
    property((beam, load, { bend }) => {
      const bent = bend(load)
      const sag = largest(places(beam).map(bent.sagAt))
      beam.supports.forEach(({ atMm }) => alike(bent.sagAt(atMm), 0, sag))
      const moment = largest(places(beam).map(bent.momentAt))
      ;[...beam.hinges, beam.toMm].forEach((at) => alike(bent.momentAt(at), 0, moment))
    })
  })

  test('two loads together are the sum of both', () => {
    property((beam, load, { bend }) => {
      const other = points([beam.toMm * 0.41, 77])
      const [a, b, sum] = [bend(load), bend(other), bend(both(load, other))]
      const scale = largest(places(beam).map(sum.momentAt)) + largest(places(beam).map(a.momentAt))
      const sag = largest(places(beam).flatMap((at) => [sum.sagAt(at), a.sagAt(at)]))
      for (const at of places(beam)) {
        alike(sum.momentAt(at), a.momentAt(at) + b.momentAt(at), scale)
        alike(sum.sagAt(at), a.sagAt(at) + b.sagAt(at), sag)
      }
    })
  })

  test('sags as far at A under a load at B as at B under the same load at A (Maxwell 1864)', () => {
    property((beam, _load, { bend }) => {
      const [a, b] = [beam.toMm * 0.237, beam.toMm * 0.771]
      const [under, over] = [bend(points([b, 100])), bend(points([a, 100]))]
      alike(under.sagAt(a), over.sagAt(b), largest([...places(beam).map(under.sagAt), under.sagAt(b)]))
    })
  })

  test('mirrored, does the same the other way round', () => {
    property((beam, load, { bend }) => {
      const flip = (mm: number): number => beam.toMm - mm
      const sections = beam.sections.map(({ eiNmm2 }, k) => ({
        eiNmm2,
        toMm: flip(k === 0 ? 0 : beam.sections[k - 1]!.toMm),
      }))
      const mirrored = solved({
        ...beam,
        sections: sections.toReversed(),
        supports: beam.supports.map((s) => ({ ...s, atMm: flip(s.atMm) })).toReversed(),
        hinges: beam.hinges.map(flip).toReversed(),
      }).bend({
        points: load.points.map(({ atMm, downN }) => ({ atMm: flip(atMm), downN })),
        lines: load.lines.map((l) => ({ ...l, fromMm: flip(l.toMm), toMm: flip(l.fromMm) })),
      })
      const bent = bend(load)
      const moment = largest(places(beam).map(bent.momentAt))
      const sag = largest(places(beam).map(bent.sagAt))
      for (const at of places(beam)) {
        alike(mirrored.momentAt(flip(at)), bent.momentAt(at), moment)
        alike(mirrored.sagAt(flip(at)), bent.sagAt(at), sag)
      }
    })
  })

  test('its extremes are no less than anything between them, and are found where they are said to be', () => {
    property((beam, load, { bend }) => {
      const bent = bend(load)
      const [from, to] = [beam.toMm * 0.1, beam.toMm * 0.85]
      const within = places(beam, 101).filter((at) => at > from && at < to)
      const moments = bent.moments(from, to)
      const sags = bent.sags(from, to)
      const chords = bent.chordSags(from, to)
      const chord = (at: number): number =>
        bent.sagAt(from) + ((bent.sagAt(to) - bent.sagAt(from)) * (at - from)) / (to - from)
      const slack = 1e-9 * largest([sags.most.value, sags.least.value, bent.sagAt(from)])
      expect(moments.most.value).toBe(bent.momentAt(moments.most.atMm))
      for (const at of within) {
        expect(bent.momentAt(at)).toBeLessThanOrEqual(moments.most.value)
        expect(bent.momentAt(at)).toBeGreaterThanOrEqual(moments.least.value)
        expect(bent.sagAt(at)).toBeLessThanOrEqual(sags.most.value + slack)
        expect(bent.sagAt(at) - chord(at)).toBeLessThanOrEqual(chords.most.value + slack)
        expect(bent.sagAt(at) - chord(at)).toBeGreaterThanOrEqual(chords.least.value - slack)
      }
    })
  })
})

test("a dense matrix of Macaulay's brackets finds the same reactions, moments and sags", () => {
  property((beam, load, { bend }) => {
    const bent = bend(load)
    const other = macaulay(beam, load)
    const force = largest(other.reactionsN)
    other.reactionsN.forEach((r, k) => alike(bent.reactionsN[k]!, r, force))
    const moment = Math.max(largest(places(beam).map(other.momentAt)), force)
    const sag = largest(places(beam).map(other.sagAt))
    for (const at of places(beam)) {
      alike(bent.momentAt(at), other.momentAt(at), moment)
      alike(bent.sagAt(at), other.sagAt(at), sag)
    }
  })
})
