import { toM } from './metres'
import type { PlacedRow } from './plan'
import { meanOf, type RowPiece, SHORTEST_M } from './rowPiece'
import type { Cause, WhatIf } from './whatIf'

/** Over all tubes of the bay: what each is taken to be where its differences are switched off. */
export interface TubeMeans {
  /** Site level of the open end, m. */
  readonly levelM: number
  readonly lengthM: number
  readonly boreM: number
}

export const tubeMeans = (rows: readonly PlacedRow[]): TubeMeans => {
  let [tubes, level, length, bore] = [0, 0, 0, 0]
  for (const { piece, datumM } of rows) {
    const { mouths } = piece
    const count = mouths.from.length
    tubes += count
    level += count * (piece.outletM + datumM)
    length += count * meanOf(mouths.lengthM)
    bore += count * meanOf(mouths.boreM)
  }
  const all = Math.max(1, tubes)
  return { levelM: level / all, lengthM: length / all, boreM: bore / all }
}

const same = (like: Float64Array, value: number): Float64Array => new Float64Array(like.length).fill(value)

const scaled = (values: Float64Array, factors: Float64Array | undefined): Float64Array =>
  factors ? values.map((value, i) => value * (factors[i] ?? 1)) : values

const shifted = (valuesM: Float64Array, shiftMm: Float64Array | undefined): Float64Array =>
  shiftMm ? valuesM.map((value, i) => value + toM(shiftMm[i] ?? 0)) : valuesM

type Off = (cause: Cause) => boolean

const pipesWithout = ({ pipes, isLateral }: RowPiece, off: Off): RowPiece['pipes'] => {
  if (!off('lateral') && !off('header')) return pipes
  const lossless = (i: number) => off(isLateral[i] ? 'lateral' : 'header')
  return {
    ...pipes,
    lengthM: pipes.lengthM.map((length, i) => (lossless(i) ? SHORTEST_M : length)),
    lossK: pipes.lossK.map((loss, i) => (lossless(i) ? 0 : loss)),
  }
}

const mouthsFor = (row: PlacedRow, off: Off, whatIf: WhatIf, means: TubeMeans): RowPiece['mouths'] => {
  const { mouths } = row.piece
  const part = row.built.part
  const levelM = off('level') ? same(mouths.levelM, means.levelM - row.datumM) : mouths.levelM
  const boreM = off('bore') ? same(mouths.boreM, means.boreM) : mouths.boreM
  return {
    ...mouths,
    lengthM: off('length') ? same(mouths.lengthM, means.lengthM) : mouths.lengthM,
    levelM: shifted(levelM, whatIf.outletShiftMm?.get(part)),
    boreM: scaled(boreM, whatIf.boreFactor?.get(part)),
  }
}

/** A row's piece as a what-if has it; the very same piece where that asks nothing of rows. */
export const alteredPiece = (row: PlacedRow, whatIf: WhatIf, means: () => TubeMeans): RowPiece => {
  const { without, outletShiftMm, boreFactor } = whatIf
  if (!without && !outletShiftMm && !boreFactor) return row.piece
  const off: Off = (cause) => without?.has(cause) ?? false
  return { ...row.piece, pipes: pipesWithout(row.piece, off), mouths: mouthsFor(row, off, whatIf, means()) }
}
