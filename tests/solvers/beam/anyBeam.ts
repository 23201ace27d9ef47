import fc from 'fast-check'
import type { Beam, BeamLoad } from '../../../src/solvers/beam/beam'
import { beamOf } from '../../../src/solvers/beam/solve'

/** Whole places of a grid of 50 mm, each once, ascending. */
const placesWithin = (toMm: number, least: number, most: number): fc.Arbitrary<number[]> =>
  fc
    .uniqueArray(fc.integer({ min: 1, max: toMm / 50 - 1 }), { minLength: least, maxLength: most })
    .map((all) => all.toSorted((a, b) => a - b).map((step) => step * 50))

/** EI of 1/2 in to 2 in tube and more, N·mm². */
const anyStiffness = fc.double({ min: 4e8, max: 3e10, noNaN: true })

/** Beams of 2 to 10 m with 2 to 7 supports, up to 3 hinges and up to 4 sections; some are mechanisms. */
const anyBeam: fc.Arbitrary<Beam> = fc.integer({ min: 40, max: 200 }).chain((steps) => {
  const toMm = steps * 50
  return fc
    .record({
      supports: placesWithin(toMm, 2, 7),
      hinges: placesWithin(toMm, 0, 3),
      changes: placesWithin(toMm, 0, 3),
      stiffnesses: fc.array(anyStiffness, { minLength: 4, maxLength: 4 }),
      isClamped: fc.boolean(),
    })
    .map(({ supports, hinges, changes, stiffnesses, isClamped }): Beam => {
      const first = isClamped ? [{ atMm: 0, holds: 'both', isClamped: true } as const] : []
      return {
        fromMm: 0,
        toMm,
        sections: [...changes, toMm].map((end, k) => ({ toMm: end, eiNmm2: stiffnesses[k]! })),
        supports: [...first, ...supports.map((atMm) => ({ atMm, holds: 'both' }) as const)],
        hinges,
      }
    })
})

const anyForce = fc.integer({ min: -5, max: 20 }).map((tens) => tens * 10 + 5)

/** Up to eight point loads anywhere and up to three line loads, most of them downward. */
const anyLoad = (toMm: number): fc.Arbitrary<BeamLoad> => {
  const place = fc.integer({ min: 0, max: toMm * 8 }).map((eighths) => eighths / 8)
  return fc.record({
    points: fc.array(fc.record({ atMm: place, downN: anyForce }), { minLength: 1, maxLength: 8 }),
    lines: fc.array(
      fc
        .record({ a: place, b: place, downNPerMm: fc.integer({ min: 1, max: 100 }).map((c) => c / 100) })
        .map(({ a, b, downNPerMm }) => ({ fromMm: Math.min(a, b), toMm: Math.max(a, b), downNPerMm })),
      { maxLength: 3 },
    ),
  })
}

/** A beam that stands, and a load on it. */
export const anyLoaded: fc.Arbitrary<{ readonly beam: Beam; readonly load: BeamLoad }> = anyBeam
  .filter((beam) => beamOf(beam).ok)
  .chain((beam) => anyLoad(beam.toMm).map((load) => ({ beam, load })))

export const totalOf = ({ points, lines }: BeamLoad): number =>
  points.reduce((sum, { downN }) => sum + downN, 0) +
  lines.reduce((sum, { fromMm, toMm, downNPerMm }) => sum + (toMm - fromMm) * downNPerMm, 0)

/** About the zero of the beam, N·mm. */
export const momentOf = ({ points, lines }: BeamLoad): number =>
  points.reduce((sum, { atMm, downN }) => sum + atMm * downN, 0) +
  lines.reduce((sum, { fromMm, toMm, downNPerMm }) => sum + ((toMm ** 2 - fromMm ** 2) / 2) * downNPerMm, 0)
