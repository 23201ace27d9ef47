import type { BeamLoad } from './beam'
import type { Bent, Extreme } from './bent'
import type { Solved } from './solve'

/** Something that is read off a bent beam and doubles with the load: a moment, a reaction, a sag somewhere. */
export type Reading = (bent: Bent) => number

/** The most or least that can be read, and which groups of load then lie on the beam. */
export interface Patched {
  readonly value: number
  readonly groups: readonly number[]
}

export interface PatchedExtreme extends Extreme, Patched {}

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

/** Places where the moment of a group can be worst, for a start: supports, hinges and every point load. */
const startsIn = (
  { beam }: Solved,
  loads: readonly BeamLoad[],
  fromMm: number,
  toMm: number,
): readonly number[] => {
  const places = [
    ...beam.supports.map(({ atMm }) => atMm),
    ...loads.flatMap(({ points, lines }) => [
      ...points.map(({ atMm }) => atMm),
      ...lines.flatMap((line) => [line.fromMm, line.toMm]),
    ]),
  ]
  const within = places.filter((mm) => mm > fromMm && mm < toMm)
  const thirds = [1, 2, 3, 4, 5].map((k) => fromMm + ((toMm - fromMm) * k) / 6)
  return [...new Set([fromMm, ...thirds, ...within, toMm])]
}

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
    climb({ worst, under }, startsIn(solved, [dead, ...groups], fromMm, toMm), fromMm, toMm, sign)
  return {
    most: (reading) => worst(reading, 1),
    least: (reading) => worst(reading, -1),
    mostMoment: (fromMm, toMm) => extreme(fromMm, toMm, 1),
    leastMoment: (fromMm, toMm) => extreme(fromMm, toMm, -1),
    under,
  }
}

interface Climbing {
  readonly worst: (reading: Reading, sign: 1 | -1) => Patched
  readonly under: (groups: readonly number[]) => Bent
}

/**
 * From the worst of the starts: the set that is worst there, the place where the moment is worst under that set, the set that is worst
 * there, and so on until neither moves. Each step is worse than the last, so it ends.
 */
const climb = (
  { worst, under }: Climbing,
  starts: readonly number[],
  fromMm: number,
  toMm: number,
  sign: 1 | -1,
): PatchedExtreme => {
  const at = (atMm: number): PatchedExtreme => ({ atMm, ...worst((bent) => bent.momentAt(atMm), sign) })
  const worse = (a: PatchedExtreme, b: PatchedExtreme): PatchedExtreme =>
    sign * b.value > sign * a.value ? b : a
  let top = starts.map(at).reduce(worse)
  for (;;) {
    const range = under(top.groups).moments(fromMm, toMm)
    const next = worse(top, at((sign > 0 ? range.most : range.least).atMm))
    if (Math.abs(next.value - top.value) <= 1e-9 * Math.abs(top.value)) return next
    top = next
  }
}
