import type { BeamLoad } from './beam'
import { type Pieces, placeBefore } from './pieces'

/**
 * A beam under a load cut once more, at every point load and at both ends of every line load: within a strip the load is even.
 * At a strip's start falls its point load; then come shear and moment, and slope and sag times stiffness, just to the right of it.
 */
export interface Strips {
  /** Starts of the strips and, last, the end of the beam. */
  readonly atMm: Float64Array
  readonly pointN: Float64Array
  readonly lineNPerMm: Float64Array
  readonly piece: Int32Array
  readonly shearN: Float64Array
  readonly momentNmm: Float64Array
  readonly slopeEi: Float64Array
  readonly sagEi: Float64Array
}

const clampTo = (pieces: Pieces, mm: number): number =>
  Math.min(Math.max(mm, pieces.atMm[0] ?? 0), pieces.atMm.at(-1) ?? 0)

const startsOf = (pieces: Pieces, { points, lines }: BeamLoad): Float64Array => {
  const all = Float64Array.from([
    ...pieces.atMm,
    ...points.map(({ atMm }) => clampTo(pieces, atMm)),
    ...lines.flatMap(({ fromMm, toMm }) => [clampTo(pieces, fromMm), clampTo(pieces, toMm)]),
  ]).toSorted()
  return all.filter((mm, i) => i === 0 || mm !== all[i - 1])
}

/** Loads of the points at their strips, the last of which stands at the end of the beam and has no length. */
const pointLoads = (pieces: Pieces, starts: Float64Array, { points }: BeamLoad): Float64Array => {
  const at = new Float64Array(starts.length)
  const from = starts[0] ?? 0
  const to = starts.at(-1) ?? 0
  for (const { atMm, downN } of points) {
    if (atMm < from || atMm > to) continue
    const strip = placeBefore(starts, clampTo(pieces, atMm))
    at[strip] = (at[strip] ?? 0) + downN
  }
  return at
}

const lineLoads = (pieces: Pieces, starts: Float64Array, { lines }: BeamLoad): Float64Array => {
  const even = new Float64Array(starts.length)
  for (const { fromMm, toMm, downNPerMm } of lines) {
    const end = placeBefore(starts, clampTo(pieces, toMm))
    for (let strip = placeBefore(starts, clampTo(pieces, fromMm)); strip < end; strip += 1)
      even[strip] = (even[strip] ?? 0) + downNPerMm
  }
  return even
}

const pieceOfEach = (pieces: Pieces, starts: Float64Array): Int32Array =>
  Int32Array.from(starts, (mm) => Math.min(placeBefore(pieces.atMm, mm), pieces.eiNmm2.length - 1))

/** A load on a beam, nothing bent yet. What lies beyond the ends of the beam is not on it. */
export const stripsOf = (pieces: Pieces, load: BeamLoad): Strips => {
  const atMm = startsOf(pieces, load)
  const room = (): Float64Array => new Float64Array(atMm.length)
  return {
    atMm,
    pointN: pointLoads(pieces, atMm, load),
    lineNPerMm: lineLoads(pieces, atMm, load),
    piece: pieceOfEach(pieces, atMm),
    shearN: room(),
    momentNmm: room(),
    slopeEi: room(),
    sagEi: room(),
  }
}

/** What a section carries and how it lies; slope and sag times stiffness. */
export interface Carried {
  shearN: number
  momentNmm: number
  slopeEi: number
  sagEi: number
}

/** Along an even load of length s, in place: statics, and the moment integrated twice. */
export const advance = (at: Carried, lineNPerMm: number, s: number): void => {
  const { shearN, momentNmm } = at
  at.sagEi += s * (at.slopeEi - s * (momentNmm / 2 + s * (shearN / 6 - (s * lineNPerMm) / 24)))
  at.slopeEi -= s * (momentNmm + s * (shearN / 2 - (s * lineNPerMm) / 6))
  at.momentNmm += s * (shearN - (s * lineNPerMm) / 2)
  at.shearN -= s * lineNPerMm
}

const keep = (strips: Strips, strip: number, at: Carried): void => {
  strips.shearN[strip] = at.shearN
  strips.momentNmm[strip] = at.momentNmm
  strips.slopeEi[strip] = at.slopeEi
  strips.sagEi[strip] = at.sagEi
}

/** Over strips `from` to `to` of one piece, from what its start carries to what its end does, kept in the strips on the way. */
export const march = (strips: Strips, from: number, to: number, start: Carried): Carried => {
  const at = { ...start }
  for (let strip = from; strip < to; strip += 1) {
    at.shearN -= strips.pointN[strip] ?? 0
    keep(strips, strip, at)
    advance(at, strips.lineNPerMm[strip] ?? 0, (strips.atMm[strip + 1] ?? 0) - (strips.atMm[strip] ?? 0))
  }
  return at
}
