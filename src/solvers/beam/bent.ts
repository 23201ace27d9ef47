import type { BentStrips } from './bend'
import { type Pieces, placeBefore } from './pieces'
import { cubicRoots } from './roots'
import { advance, type Carried, type Strips } from './strips'

/** The most or the least of something along a stretch, and where. */
export interface Extreme {
  readonly atMm: number
  readonly value: number
}

export interface Extremes {
  readonly most: Extreme
  readonly least: Extreme
}

/** A beam under one load. Between its ends every answer is exact; beyond them it is that of the end. */
export interface Bent {
  /** Upward, of each support in their order, N; under 0 where it holds the beam down. */
  readonly reactionsN: readonly number[]
  /** N·mm, positive where the beam sags. */
  readonly momentAt: (mm: number) => number
  /** Just to the right of a place, N: what stands upward to the left of it less what presses there. */
  readonly shearAt: (mm: number) => number
  /** mm downward. */
  readonly sagAt: (mm: number) => number
  /** Downward to the right, mm per mm; just to the right of a hinge. */
  readonly slopeAt: (mm: number) => number
  /** Within a stretch: where a load or a piece of the beam starts, and where the moment changes its sign. In no order. */
  readonly breaks: (fromMm: number, toMm: number) => readonly number[]
  readonly moments: (fromMm: number, toMm: number) => Extremes
  readonly sags: (fromMm: number, toMm: number) => Extremes
  /** Sags below the straight line between the beam at both ends of the stretch, as between two supports. */
  readonly chordSags: (fromMm: number, toMm: number) => Extremes
}

interface Read {
  readonly pieces: Pieces
  readonly strips: Strips
}

const stiffnessOf = ({ pieces, strips }: Read, strip: number): number =>
  pieces.eiNmm2[strips.piece[strip] ?? 0] ?? 1

const stripAt = ({ strips }: Read, mm: number): number =>
  Math.min(placeBefore(strips.atMm, mm), strips.atMm.length - 2)

const lengthOf = ({ atMm }: Strips, strip: number): number => (atMm[strip + 1] ?? 0) - (atMm[strip] ?? 0)

const carriedIn = (read: Read, strip: number, s: number): Carried => {
  const { shearN, momentNmm, slopeEi, sagEi, lineNPerMm } = read.strips
  const at = {
    shearN: shearN[strip] ?? 0,
    momentNmm: momentNmm[strip] ?? 0,
    slopeEi: slopeEi[strip] ?? 0,
    sagEi: sagEi[strip] ?? 0,
  }
  advance(at, lineNPerMm[strip] ?? 0, Math.min(Math.max(s, 0), lengthOf(read.strips, strip)))
  return at
}

const carriedAt = (read: Read, mm: number): Carried => {
  const strip = stripAt(read, mm)
  return carriedIn(read, strip, mm - (read.strips.atMm[strip] ?? 0))
}

/** Where the shear of a strip is nothing, from its start. */
const shearRoots = ({ strips }: Read, strip: number): number[] =>
  cubicRoots([strips.shearN[strip] ?? 0, -(strips.lineNPerMm[strip] ?? 0), 0, 0], lengthOf(strips, strip))

/** Where the moment of a strip is nothing, from its start. */
const momentRoots = ({ strips }: Read, strip: number): number[] => {
  const { momentNmm, shearN, lineNPerMm } = strips
  return cubicRoots(
    [momentNmm[strip] ?? 0, shearN[strip] ?? 0, -(lineNPerMm[strip] ?? 0) / 2, 0],
    lengthOf(strips, strip),
  )
}

/** Where a strip's slope is that of the chord, from its start. */
const slopeRoots = (read: Read, strip: number, chordSlope: number): number[] => {
  const { slopeEi, momentNmm, shearN, lineNPerMm } = read.strips
  return cubicRoots(
    [
      (slopeEi[strip] ?? 0) - chordSlope * stiffnessOf(read, strip),
      -(momentNmm[strip] ?? 0),
      -(shearN[strip] ?? 0) / 2,
      (lineNPerMm[strip] ?? 0) / 6,
    ],
    lengthOf(read.strips, strip),
  )
}

/** Both ends of a stretch, the strips' ends within it, and where a strip turns in it. */
const turnsIn = (
  read: Read,
  fromMm: number,
  toMm: number,
  roots: (strip: number) => readonly number[],
): number[] => {
  const turns = [fromMm, toMm]
  for (let strip = stripAt(read, fromMm); strip <= stripAt(read, toMm); strip += 1) {
    const start = read.strips.atMm[strip] ?? 0
    for (const s of [0, ...roots(strip)]) if (start + s > fromMm && start + s < toMm) turns.push(start + s)
  }
  return turns
}

const extremesAt = (turns: readonly number[], valueOf: (mm: number) => number): Extremes => {
  const [first = 0, ...rest] = turns
  const start = { atMm: first, value: valueOf(first) }
  let [most, least] = [start, start]
  for (const atMm of rest) {
    const value = valueOf(atMm)
    if (value > most.value) most = { atMm, value }
    if (value < least.value) least = { atMm, value }
  }
  return { most, least }
}

/** Reads a bent beam. */
export const readBent = (pieces: Pieces, { strips, upwardN }: BentStrips): Bent => {
  const read: Read = { pieces, strips }
  const momentAt = (mm: number): number => carriedAt(read, mm).momentNmm
  const sagAt = (mm: number): number => carriedAt(read, mm).sagEi / stiffnessOf(read, stripAt(read, mm))
  const sagsFrom = (fromMm: number, toMm: number, chord: number, zero: number): Extremes =>
    extremesAt(
      turnsIn(read, fromMm, toMm, (strip) => slopeRoots(read, strip, chord)),
      (mm) => sagAt(mm) - zero - chord * (mm - fromMm),
    )
  return {
    reactionsN: Array.from(pieces.supportPlace, (place, k) =>
      place !== pieces.supportPlace[k - 1] ? (upwardN[place] ?? 0) : 0,
    ),
    momentAt,
    shearAt: (mm) => carriedAt(read, mm).shearN,
    sagAt,
    slopeAt: (mm) => carriedAt(read, mm).slopeEi / stiffnessOf(read, stripAt(read, mm)),
    breaks: (fromMm, toMm) => turnsIn(read, fromMm, toMm, (strip) => momentRoots(read, strip)),
    moments: (fromMm, toMm) =>
      extremesAt(
        turnsIn(read, fromMm, toMm, (strip) => shearRoots(read, strip)),
        momentAt,
      ),
    sags: (fromMm, toMm) => sagsFrom(fromMm, toMm, 0, 0),
    chordSags: (fromMm, toMm) => {
      const zero = sagAt(fromMm)
      return sagsFrom(fromMm, toMm, toMm > fromMm ? (sagAt(toMm) - zero) / (toMm - fromMm) : 0, zero)
    },
  }
}
