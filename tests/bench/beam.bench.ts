import { bench, describe } from 'vitest'
import { beamOf, type Solved } from '../../src/solvers/beam/solve'

const SPAN = 762

/** Spans of 30 in with two hangers each, a hinge and another section at every fourth support. */
const railOf = (spans: number): Parameters<typeof beamOf>[0] => ({
  fromMm: 0,
  toMm: spans * SPAN,
  sections: Array.from({ length: spans }, (_, k) => ({
    toMm: (k + 1) * SPAN,
    eiNmm2: k % 8 < 4 ? 1.07e9 : 2.53e9,
  })),
  supports: Array.from({ length: spans + 1 }, (_, k) => ({ atMm: k * SPAN, holds: 'both' })),
  hinges: Array.from({ length: Math.floor((spans - 1) / 4) }, (_, k) => (k + 1) * 4 * SPAN),
})

const hung = (spans: number): Parameters<Solved['bend']>[0] => ({
  points: Array.from({ length: 2 * spans }, (_, k) => ({ atMm: (k + 0.5) * (SPAN / 2), downN: 223 })),
  lines: [{ fromMm: 0, toMm: spans * SPAN, downNPerMm: 0.007 }],
})

// Goal: ten times the spans in ten times the time, and a row of ten spans in well under a millisecond.
describe.each([10, 100, 1000])('a rail of %d spans', (spans) => {
  const rail = railOf(spans)
  const load = hung(spans)
  const solved = beamOf(rail)
  if (!solved.ok) throw new RangeError(solved.why)
  bench('factored', () => {
    beamOf(rail)
  })
  bench('one load, every reaction', () => {
    solved.bend(load)
  })
})
