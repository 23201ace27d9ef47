import { boxOf } from '../../geometry/box'
import { blank, type Cell, type Row, said, type Table, counted } from '../../model/table'
import { namesTogether } from '../hazard'
import { lengthCell, type Pegging } from './rowTables'
import type { RowSquare } from './rowCorners'

/** From the baseline along one axis, mm. */
const readAlong = (axis: 'x' | 'y', mm: number, { house }: Pegging): number => {
  const { x0, y0 } = boxOf(house.outline)
  return mm - (axis === 'x' ? x0 : y0)
}

const WALL = { x: 'west', y: 'south' } as const
const otherAxis = (axis: 'x' | 'y') => (axis === 'x' ? 'y' : 'x')

const cellAt = (axis: 'x' | 'y', mm: number | undefined, pegging: Pegging): Cell =>
  mm === undefined ? blank() : lengthCell(readAlong(axis, mm, pegging), pegging.write)

/** The two lines of feet of every row, and its centreline between them. */
export const feetLineTable = (rows: readonly RowSquare[], pegging: Pegging): Table => ({
  id: 'feet-lines',
  title: 'Chalk lines under the feet of each row: middles of the posts',
  columns: [
    { key: 'row', title: 'Row', unit: 'text' },
    { key: 'wall', title: 'Read from', unit: 'text' },
    { key: 'firstMm', title: 'First line', unit: 'mm' },
    { key: 'centreMm', title: 'Centreline', unit: 'mm' },
    { key: 'secondMm', title: 'Second line', unit: 'mm' },
  ],
  rows: rows.map(({ part, runs, feetMm }): Row => {
    const across = otherAxis(runs)
    const [first] = feetMm
    const last = feetMm.at(-1)
    const centre = first === undefined || last === undefined ? undefined : (first + last) / 2
    return {
      key: part,
      cells: [
        said(pegging.write.name(part)),
        said(`${WALL[across]} wall`),
        cellAt(across, first, pegging),
        cellAt(across, centre, pegging),
        cellAt(across, last, pegging),
      ],
    }
  }),
})

/** Two rows whose posts stand alike along differ by no more than this, mm. */
const SAME_MM = 0.5

const isAlike = (a: RowSquare, b: RowSquare): boolean =>
  a.runs === b.runs &&
  a.pairsMm.length === b.pairsMm.length &&
  a.pairsMm.every((mm, i) => Math.abs(mm - (b.pairsMm[i] ?? Infinity)) < SAME_MM)

const likeOnes = (rows: readonly RowSquare[]): readonly (readonly [RowSquare, ...RowSquare[]])[] => {
  const groups: [RowSquare, ...RowSquare[]][] = []
  for (const row of rows) {
    const group = groups.find(([first]) => isAlike(first, row))
    if (group) group.push(row)
    else groups.push([row])
  }
  return groups
}

/** Where the pairs of posts stand along the rows, one table for all rows that have them at the same places. */
export const pairTables = (rows: readonly RowSquare[], pegging: Pegging): readonly Table[] =>
  likeOnes(rows).map((group): Table => {
    const [{ part, runs, pairsMm }] = group
    const names = namesTogether(group.map((row) => pegging.write.name(row.part)))
    return {
      id: `feet-${part}`,
      title: `Feet of ${names} along the chalk lines`,
      columns: [
        { key: 'pair', title: 'Pair', unit: 'count' },
        { key: 'alongMm', title: `From ${WALL[runs]} wall`, unit: 'mm', isMain: true },
      ],
      rows: pairsMm.map((mm, i) => ({
        key: `${part} ${i + 1}`,
        cells: [counted(i + 1), cellAt(runs, mm, pegging)],
      })),
    }
  })
