import type { CutRule, Hole, Stick } from '../../model/built'
import { numberOf, placeAt, type Frame } from './frame'

/** What a stick is, before it is laid anywhere; lengths in mm. */
export interface Piece {
  readonly mark: string
  readonly stock: string
  readonly lengthMm: number
  readonly widthMm: number
  readonly heightMm: number
  readonly cut: CutRule
  readonly minusMm: number
  readonly holes: readonly Hole[]
}

/** A place in the row's own axes, mm. */
export interface RowPlace {
  readonly u: number
  readonly v: number
  readonly z: number
}

/** A direction in the row's own axes, of length 1. */
export type Direction = RowPlace

export const ALONG: Direction = { u: 1, v: 0, z: 0 }
export const ACROSS: Direction = { u: 0, v: 1, z: 0 }
export const UP: Direction = { u: 0, v: 0, z: 1 }

/**
 * The stick of a piece laid from a place in a direction, so that it is drawn as long as it is cut; `rack` counts from 0
 * at the high end. Fields are copied one by one, since spreading a piece costs more than all else in a derivation.
 */
export const layFrom = (frame: Frame, piece: Piece, from: RowPlace, to: Direction, rack: number): Stick => {
  const { u, v, z } = from
  const { mark, stock, lengthMm, widthMm, heightMm, cut, minusMm, holes } = piece
  return {
    mark,
    stock,
    lengthMm,
    from: placeAt(frame, u, v, z),
    to: placeAt(frame, u + to.u * lengthMm, v + to.v * lengthMm, z + to.z * lengthMm),
    widthMm,
    heightMm,
    cut,
    minusMm,
    holes,
    rack: numberOf(frame.isFromStart, rack, frame.racks),
  }
}

/** The same, laid with its middle at a place. */
export const layMiddle = (
  frame: Frame,
  piece: Piece,
  middle: RowPlace,
  to: Direction,
  rack: number,
): Stick => {
  const half = piece.lengthMm / 2
  const from = { u: middle.u - to.u * half, v: middle.v - to.v * half, z: middle.z - to.z * half }
  return layFrom(frame, piece, from, to, rack)
}
