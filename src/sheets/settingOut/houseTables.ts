import { distance, type Point, between } from '../../geometry/point'
import { isInside } from '../../geometry/polygon'
import { counted, type Row, said, type Table } from '../../model/table'
import { fromWalls } from '../baseline'
import { fromWestSouth, lengthCell, type Pegging, squareColumns } from './rowTables'
import { squareOn } from './squares'

/** Corners of a house as they are called on this paper. */
export const houseCorner = (index: number): string => `H${index + 1}`

/** A house drawn with more corners than this has round walls; its braces would fill the paper and check nothing more. */
const MOST_CORNERS = 8

/** Places along a brace that are looked at, to see that no wall stands in its way. */
const LOOKS = 24

const isClear = (outline: readonly Point[], a: Point, b: Point): boolean =>
  Array.from({ length: LOOKS - 1 }, (_, i) => between(a, b, (i + 1) / LOOKS)).every((p) =>
    isInside(outline, p),
  )

/** Both diagonals of a house of four corners; of another all braces between corners that a tape can be pulled along. */
const bracesOf = (outline: readonly Point[]): readonly (readonly [number, number])[] => {
  const count = outline.length
  if (count > MOST_CORNERS) return []
  return outline.flatMap((a, i) =>
    outline.flatMap((b, j) => {
      const areNeighbours = j - i < 2 || (i === 0 && j === count - 1)
      return areNeighbours || !isClear(outline, a, b) ? [] : [[i, j] as const]
    }),
  )
}

const cornerRows = ({ house, write }: Pegging): readonly Row[] =>
  house.outline.map((at, i, all) => {
    const { westMm, southMm } = fromWalls(house, at)
    const next = all[(i + 1) % all.length] ?? at
    return {
      key: houseCorner(i),
      cells: [
        said(houseCorner(i)),
        ...[westMm, southMm, distance(at, next)].map((mm) => lengthCell(mm, write)),
      ],
    }
  })

/** Corners of the house with its sides. */
export const houseTable = (pegging: Pegging): Table => ({
  id: 'house-corners',
  title: 'Corners of the house, inside of the walls',
  columns: [
    { key: 'corner', title: 'Corner', unit: 'text' },
    ...fromWestSouth,
    { key: 'sideMm', title: 'To the next corner', unit: 'mm' },
  ],
  rows: cornerRows(pegging),
})

/** Both diagonals of the house. */
export const houseDiagonals = ({ house: { outline }, write }: Pegging): Table => ({
  id: 'house-diagonals',
  title: 'Diagonals of the house',
  columns: [
    { key: 'from', title: 'From', unit: 'text' },
    { key: 'to', title: 'To', unit: 'text' },
    { key: 'diagonalMm', title: 'Diagonal', unit: 'mm', isMain: true },
  ],
  rows: bracesOf(outline).flatMap(([i, j]): Row[] => {
    const [a, b] = [outline[i], outline[j]]
    if (!a || !b) return []
    const mm = distance(a, b)
    return [
      {
        key: `${houseCorner(i)} ${houseCorner(j)}`,
        cells: [said(houseCorner(i)), said(houseCorner(j)), counted(mm, write.length(mm))],
      },
    ]
  }),
})

/** A wall that leans by no more runs along an axis, mm. */
const STRAIGHT_MM = 1

/** The wall along an axis at a corner, mm; undefined where neither of its two walls runs along it. */
const wallAlong = (axis: 'x' | 'y', at: Point, ends: readonly Point[]): number | undefined => {
  const other = axis === 'x' ? 'y' : 'x'
  const end = ends.find((p) => Math.abs(p[other] - at[other]) < STRAIGHT_MM)
  return end && Math.abs(end[axis] - at[axis])
}

/** The largest 3-4-5 in every corner of the house whose walls run along the two axes. */
export const houseSquares = ({ house: { outline }, units, write }: Pegging): Table => ({
  id: 'house-squares',
  title: '3-4-5 in the corners of the house',
  columns: squareColumns('House'),
  rows: outline.flatMap((at, i): Row[] => {
    const ends = [outline.at(i - 1), outline[(i + 1) % outline.length]].filter((p) => p !== undefined)
    const [acrossMm, alongMm] = [wallAlong('x', at, ends), wallAlong('y', at, ends)]
    if (acrossMm === undefined || alongMm === undefined) return []
    const square = squareOn(alongMm, acrossMm, units)
    if (!square) return []
    const marks = [square.acrossMm, square.alongMm, square.betweenMm]
    return [
      {
        key: houseCorner(i),
        cells: [said('House'), said(houseCorner(i)), ...marks.map((mm) => lengthCell(mm, write))],
      },
    ]
  }),
})
