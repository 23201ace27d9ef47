import type { Beam, BeamLoad } from './beam'
import { bendStrips } from './bend'
import { type Bent, readBent } from './bent'
import { looseStretch } from './mechanism'
import { piecesOf } from './pieces'
import { bender } from './stiffness'

/**
 * Continuous beams by direct stiffness: two unknowns a place, the slope twice at a hinge, in a band, so that the work grows with the
 * length alone. Between places everything is exact: statics, and the moment integrated twice.
 *
 * - `beamOf(beam)` factors once; its `bend(load)` lays any load on it (bent.ts: reactions, moment, shear, sag, extremes). Every support
 *   holds up and down.
 * - `restOn(beam, load)` (rest.ts) lets go of the supports marked `up` that would have to pull, and says how far the beam lifts off them.
 * - `patchesOn(solved, dead, groups)` (patches.ts) finds the worst set of groups of load for whatever is read off the beam.
 *
 * Euler and Bernoulli's beam: shear does not bend it, sags are small. Source: any textbook of structural analysis, such as
 * Timoshenko and Young, *Theory of Structures*, 2nd edition (1965), from memory.
 */
export interface Solved {
  readonly ok: true
  readonly beam: Beam
  readonly bend: (load: BeamLoad) => Bent
}

/** A beam that nothing keeps in its place, and why, as a sentence. */
export interface Loose {
  readonly ok: false
  readonly why: string
  /** Where the stretch starts that swings, mm; undefined where the beam itself makes no sense. */
  readonly fromMm: number | undefined
}

const faultIn = ({ fromMm, toMm, sections, supports }: Beam): string | undefined => {
  if (!(Number.isFinite(fromMm) && Number.isFinite(toMm) && toMm - fromMm > 1))
    return 'The beam has no length.'
  if (!sections.every(({ eiNmm2 }) => eiNmm2 > 0 && Number.isFinite(eiNmm2)) || sections.length === 0)
    return 'A section of the beam has no stiffness.'
  if (!supports.every(({ atMm }) => atMm >= fromMm && atMm <= toMm)) return 'A support stands off the beam.'
  return undefined
}

/** A beam ready for any load, or why it can't bear one. */
export const beamOf = (beam: Beam): Solved | Loose => {
  const fault = faultIn(beam)
  if (fault !== undefined) return { ok: false, why: fault, fromMm: undefined }
  const pieces = piecesOf(beam)
  const loose = looseStretch(pieces)
  if (loose !== undefined)
    return {
      ok: false,
      why: 'A stretch of the beam is free to swing: it rests on too little for its hinges.',
      fromMm: pieces.atMm[loose],
    }
  const solve = bender(pieces)
  return { ok: true, beam, bend: (load) => readBent(pieces, bendStrips(pieces, solve, load)) }
}
