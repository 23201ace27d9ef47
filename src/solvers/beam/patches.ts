import type { BeamLoad } from './beam'
import type { Bent } from './bent'
import { type PatchedExtreme, worstMoment } from './worstMoment'
import type { Solved } from './solve'

/** Something that is read off a bent beam and doubles with the load: a moment, a reaction, a sag somewhere. */
export type Reading = (bent: Bent) => number

/** The most or least that can be read, and which groups of load then lie on the beam, ascending. */
export interface Patched {
  readonly value: number
  readonly groups: readonly number[]
}

export interface Patches {
  /** Over every set of groups, the dead load on the beam in each. */
  readonly most: (reading: Reading) => Patched
  readonly least: (reading: Reading) => Patched
  /** The most and least moment of a stretch, wherever in it they are and whatever lies on the beam. */
  readonly mostMoment: (fromMm: number, toMm: number) => PatchedExtreme
  readonly leastMoment: (fromMm: number, toMm: number) => PatchedExtreme
  /** The beam under the dead load and these groups. */
  readonly under: (groups: readonly number[]) => Bent
}

const together = (loads: readonly BeamLoad[]): BeamLoad => ({
  points: loads.flatMap(({ points }) => points),
  lines: loads.flatMap(({ lines }) => lines),
})

/**
 * Dead load that always lies on a beam, and groups of load of which each lies on it whole or not at all, as the towers of a span hang
 * or are harvested. Each group is laid on once; as every reading adds up, the worst set is the groups that each make it worse.
 * All supports hold down as well as up.
 */
export const patchesOn = (solved: Solved, dead: BeamLoad, groups: readonly BeamLoad[]): Patches => {
  const always = solved.bend(dead)
  const alone = groups.map((group) => solved.bend(group))
  const under = (chosen: readonly number[]): Bent =>
    solved.bend(together([dead, ...chosen.flatMap((k) => groups[k] ?? [])]))
  const worst = (reading: Reading, sign: 1 | -1): Patched => {
    const each = alone.map(reading)
    const chosen = each.flatMap((value, k) => (sign * value > 0 ? [k] : []))
    return { value: chosen.reduce((sum, k) => sum + (each[k] ?? 0), reading(always)), groups: chosen }
  }
  const extreme = (fromMm: number, toMm: number, sign: 1 | -1): PatchedExtreme =>
    worstMoment(always, alone, [fromMm, toMm], sign)
  return {
    most: (reading) => worst(reading, 1),
    least: (reading) => worst(reading, -1),
    mostMoment: (fromMm, toMm) => extreme(fromMm, toMm, 1),
    leastMoment: (fromMm, toMm) => extreme(fromMm, toMm, -1),
    under,
  }
}
