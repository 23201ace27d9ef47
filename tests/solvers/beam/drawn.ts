import type { Beam, BeamLoad } from '../../../src/solvers/beam/beam'
import type { Bent } from '../../../src/solvers/beam/bent'
import { beamOf, type Solved } from '../../../src/solvers/beam/solve'

/** A straight beam of one stiffness on supports that hold both ways. */
export const beamOn = (toMm: number, supports: readonly number[], eiNmm2 = 1e9): Beam => ({
  fromMm: 0,
  toMm,
  sections: [{ toMm, eiNmm2 }],
  supports: supports.map((atMm) => ({ atMm, holds: 'both' })),
  hinges: [],
})

/** Clamped at its left end, free at its right. */
export const bracketOf = (toMm: number, eiNmm2 = 1e9): Beam => ({
  ...beamOn(toMm, [], eiNmm2),
  supports: [{ atMm: 0, holds: 'both', isClamped: true }],
})

export const points = (...all: readonly (readonly [atMm: number, downN: number])[]): BeamLoad => ({
  points: all.map(([atMm, downN]) => ({ atMm, downN })),
  lines: [],
})

export const line = (fromMm: number, toMm: number, downNPerMm: number): BeamLoad => ({
  points: [],
  lines: [{ fromMm, toMm, downNPerMm }],
})

export const both = (...loads: readonly BeamLoad[]): BeamLoad => ({
  points: loads.flatMap((load) => load.points),
  lines: loads.flatMap((load) => load.lines),
})

export const solved = (beam: Beam): Solved => {
  const result = beamOf(beam)
  if (!result.ok) throw new RangeError(result.why)
  return result
}

export const bend = (beam: Beam, load: BeamLoad): Bent => solved(beam).bend(load)
