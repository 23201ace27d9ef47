import { addAt, bandOf, factor, fixRow, substitute } from './band'
import { clamped, free, type Pieces, slopeRow } from './pieces'

/** Rows of a piece's four unknowns: sag and slope at its start, sag and slope at its end. */
export const rowsOfPiece = (pieces: Pieces, k: number): readonly [number, number, number, number] => {
  const end = pieces.row[k + 1] ?? 0
  return [pieces.row[k] ?? 0, slopeRow(pieces, k), end, end + 1]
}

export const lengthOfPiece = (pieces: Pieces, k: number): number =>
  (pieces.atMm[k + 1] ?? 0) - (pieces.atMm[k] ?? 0)

/** What holds both ends of a piece of length l at unit sags and slopes, in EI: Euler and Bernoulli's beam, lower half. */
const pieceStiffness = (l: number): readonly (readonly number[])[] => [
  [12 / l ** 3],
  [6 / l ** 2, 4 / l],
  [-12 / l ** 3, -6 / l ** 2, 12 / l ** 3],
  [6 / l ** 2, 2 / l, -6 / l ** 2, 4 / l],
]

const addPiece = (band: Float64Array, pieces: Pieces, k: number): void => {
  const rows = rowsOfPiece(pieces, k)
  const ei = pieces.eiNmm2[k] ?? 0
  pieceStiffness(lengthOfPiece(pieces, k)).forEach((line, a) => {
    line.forEach((value, b) => addAt(band, rows[a] ?? 0, rows[b] ?? 0, ei * value))
  })
}

const heldRows = ({ hold, row }: Pieces): number[] =>
  [...hold].flatMap((how, place) => {
    const sag = row[place] ?? 0
    if (how === free) return []
    return how === clamped ? [sag, sag + 1] : [sag]
  })

/** Sags and slopes under what presses on the rows, N and N·mm; the beam must be no mechanism. */
export const bender = (pieces: Pieces): ((pressed: Float64Array) => Float64Array) => {
  const band = bandOf(pieces.rows)
  for (let k = 0; k < pieces.eiNmm2.length; k += 1) addPiece(band, pieces, k)
  const fixed = heldRows(pieces)
  for (const row of fixed) fixRow(band, pieces.rows, row)
  factor(band, pieces.rows)
  return (pressed) => {
    const bent = pressed.slice()
    for (const row of fixed) bent[row] = 0
    substitute(band, bent)
    return bent
  }
}
