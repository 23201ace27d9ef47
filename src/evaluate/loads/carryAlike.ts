import { carry, type Carried, type CarryingBeam, type HungPoint } from './carrying'
import type { BeamLoad } from '../../solvers/beam/beam'

/**
 * Beams that are alike but for where they lie are reckoned once: an acre has thousands of rails and bars, and few kinds of them.
 */

/** Kinds of beam that are remembered: many times what a bay has. */
const KEPT = 2000

const known = new Map<string, Carried | undefined>()

/** Beams that differ by less are one kind: mm, and N. */
const GRAIN = 1e-4

const rounded = (value: number): number => Math.round(value / GRAIN)

const keyOfLoad = ({ points, lines }: BeamLoad): string =>
  [
    points.map(({ atMm, downN }) => `${rounded(atMm)}:${rounded(downN)}`).join(),
    lines
      .map(
        ({ fromMm, toMm, downNPerMm }) => `${rounded(fromMm)}:${rounded(toMm)}:${rounded(1000 * downNPerMm)}`,
      )
      .join(),
  ].join(';')

const keyOfPoint = ({ atMm, leftN, rightN, middleN }: HungPoint): string =>
  [atMm, leftN, rightN, middleN].map(rounded).join(':')

const keyOf = (beam: CarryingBeam): string =>
  [
    rounded(beam.toMm),
    beam.sticks.map(({ toMm, conduit }) => `${rounded(toMm)}:${conduit.odMm}:${conduit.wallMm}`).join(),
    beam.supportsMm.map(rounded).join(),
    beam.hingesMm.map(rounded).join(),
    keyOfLoad(beam.dead),
    beam.groups.map((group) => group.map(keyOfPoint).join()).join('|'),
    beam.proofTimes,
  ].join('/')

const shiftedLoad = ({ points, lines }: BeamLoad, by: number): BeamLoad => ({
  points: points.map((point) => ({ ...point, atMm: point.atMm + by })),
  lines: lines.map((line) => ({ ...line, fromMm: line.fromMm + by, toMm: line.toMm + by })),
})

const fromZero = (beam: CarryingBeam): CarryingBeam => {
  const by = -beam.fromMm
  return {
    fromMm: 0,
    toMm: beam.toMm + by,
    sticks: beam.sticks.map(({ toMm, conduit }) => ({ toMm: toMm + by, conduit })),
    supportsMm: beam.supportsMm.map((mm) => mm + by),
    hingesMm: beam.hingesMm.map((mm) => mm + by),
    dead: shiftedLoad(beam.dead, by),
    groups: beam.groups.map((group) => group.map((point) => ({ ...point, atMm: point.atMm + by }))),
    proofTimes: beam.proofTimes,
  }
}

const shifted = ({ stretches, supports, curve }: Carried, by: number): Carried => ({
  stretches: stretches.map((stretch) => ({
    ...stretch,
    fromMm: stretch.fromMm + by,
    toMm: stretch.toMm + by,
    moment: { ...stretch.moment, atMm: stretch.moment.atMm + by },
    sag: { ...stretch.sag, atMm: stretch.sag.atMm + by },
  })),
  supports: supports.map((support) => ({ ...support, atMm: support.atMm + by })),
  curve: { ...curve, atMm: curve.atMm.map((mm) => mm + by) },
})

const remembered = (beam: CarryingBeam): Carried | undefined => {
  const key = keyOf(beam)
  if (known.has(key)) return known.get(key)
  const made = carry(beam)
  if (known.size >= KEPT) known.clear()
  known.set(key, made)
  return made
}

/** What comes of a beam in every state of load, as `carry` has it. */
export const carryAlike = (beam: CarryingBeam): Carried | undefined => {
  const made = remembered(fromZero(beam))
  return made && shifted(made, beam.fromMm)
}
