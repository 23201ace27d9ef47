import type { BeamLoad } from './beam'
import { clamped, type Pieces, placeBefore } from './pieces'
import { lengthOfPiece, rowsOfPiece } from './stiffness'
import { type Carried, march, type Strips, stripsOf } from './strips'

/** A piece with both its ends held level: what it carries at its start and at its end, sags and slopes nothing. */
interface HeldPiece {
  readonly startN: number
  readonly startNmm: number
  readonly endN: number
  readonly endNmm: number
}

const nothing: Carried = { shearN: 0, momentNmm: 0, slopeEi: 0, sagEi: 0 }

/** From a piece that sticks out of nothing, its end brought back to where it was, level. */
const heldPiece = (strips: Strips, [from, to]: readonly [number, number], l: number): HeldPiece => {
  const loose = march(strips, from, to, nothing)
  const startN = (12 / l ** 3) * ((loose.slopeEi * l) / 2 - loose.sagEi)
  const startNmm = loose.slopeEi / l - (startN * l) / 2
  return {
    startN,
    startNmm,
    endN: startN + loose.shearN,
    endNmm: startNmm + startN * l + loose.momentNmm,
  }
}

/** First strip of each piece and, last, that of the end of the beam, whose point load is added to the last piece by itself. */
const firstStrips = (pieces: Pieces, strips: Strips): Int32Array =>
  Int32Array.from(pieces.atMm, (mm) => placeBefore(strips.atMm, mm))

const press = (pressed: Float64Array, row: number, by: number): void => {
  pressed[row] = (pressed[row] ?? 0) + by
}

const pressedBy = (pieces: Pieces, strips: Strips, held: readonly HeldPiece[]): Float64Array => {
  const pressed = new Float64Array(pieces.rows)
  held.forEach(({ startN, startNmm, endN, endNmm }, k) => {
    const [sag, slope, endSag, endSlope] = rowsOfPiece(pieces, k)
    press(pressed, sag, startN)
    press(pressed, slope, -startNmm)
    press(pressed, endSag, -endN)
    press(pressed, endSlope, endNmm)
  })
  press(pressed, pieces.row[pieces.atMm.length - 1] ?? 0, strips.pointN.at(-1) ?? 0)
  return pressed
}

/** What the start of a piece carries: as held, and what the sags and slopes of its ends add. */
const startOf = (pieces: Pieces, k: number, held: HeldPiece, bent: Float64Array): Carried => {
  const l = lengthOfPiece(pieces, k)
  const ei = pieces.eiNmm2[k] ?? 0
  const [sag = 0, slope = 0, endSag = 0, endSlope = 0] = rowsOfPiece(pieces, k).map((row) => bent[row] ?? 0)
  const chord = (endSag - sag) / l
  const startNmm = held.startNmm + ((2 * ei) / l) * (2 * slope + endSlope - 3 * chord)
  const turnedN = ((6 * ei) / l ** 2) * (slope + endSlope - 2 * chord)
  return { shearN: held.startN - turnedN, momentNmm: startNmm, slopeEi: slope * ei, sagEi: sag * ei }
}

const withoutMomentAtHinge = (pieces: Pieces, k: number, start: Carried): Carried =>
  pieces.isHinge[k] === 1 || (k === 0 && pieces.hold[0] !== clamped) ? { ...start, momentNmm: 0 } : start

/** What stands at each place upward, N: shear to its right less that to its left. Only at supports is it not nothing. */
const upwardAt = (
  pieces: Pieces,
  strips: Strips,
  starts: readonly Carried[],
  ends: readonly Carried[],
): Float64Array =>
  Float64Array.from(pieces.atMm, (_, place) => {
    const right = starts[place]?.shearN ?? strips.pointN.at(-1) ?? 0
    return right - (ends[place - 1]?.shearN ?? 0)
  })

export interface BentStrips {
  readonly strips: Strips
  /** Upward, by place, N. */
  readonly upwardN: Float64Array
}

/** A load laid on a beam whose stiffness is known: every strip knows what it carries and how it lies. */
export const bendStrips = (
  pieces: Pieces,
  solve: (pressed: Float64Array) => Float64Array,
  load: BeamLoad,
): BentStrips => {
  const strips = stripsOf(pieces, load)
  const first = firstStrips(pieces, strips)
  const range = (k: number): readonly [number, number] => [first[k] ?? 0, first[k + 1] ?? 0]
  const held = Array.from(pieces.eiNmm2, (_, k) => heldPiece(strips, range(k), lengthOfPiece(pieces, k)))
  const bent = solve(pressedBy(pieces, strips, held))
  const starts = held.map((piece, k) => withoutMomentAtHinge(pieces, k, startOf(pieces, k, piece, bent)))
  const ends = starts.map((start, k) => march(strips, ...range(k), start))
  return { strips, upwardN: upwardAt(pieces, strips, starts, ends) }
}
