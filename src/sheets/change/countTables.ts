import type { Column } from '../../model/table'
import { counted, said, type Table } from '../../model/table'
import { memberTitle, hasMark } from '../../model/memberNames'
import type { CountUnit } from '../../units/writeCount'
import { writeCount } from '../../units/writeCount'
import { writeStock } from '../../units/writeStock'
import { signed, type Told } from './told'

const COUNTS: readonly Column[] = [
  { key: 'before', title: 'Was', unit: 'count' },
  { key: 'after', title: 'Is', unit: 'count' },
  { key: 'more', title: 'More or less', unit: 'count', isMain: true },
]

interface Change {
  readonly before: number
  readonly after: number
}

const countCells = ({ before, after }: Change, unit: CountUnit, { units }: Told) => {
  const write = (count: number) => writeCount(count, unit, units)
  const more = after - before
  return [
    counted(before, write(before)),
    counted(after, write(after)),
    counted(more, signed(more, write(Math.abs(more)))),
  ]
}

/** Pieces of which there are more or fewer, by member and length, cut already or not. */
export const pieceTable = (told: Told): Table => ({
  id: 'pieces',
  title: 'Pieces',
  columns: [
    { key: 'mark', title: 'Member', unit: 'text', isMain: true },
    { key: 'stock', title: 'Cut from', unit: 'text' },
    { key: 'lengthMm', title: 'Length', unit: 'mm' },
    ...COUNTS,
  ],
  rows: told.difference.pieces.map((change) => ({
    key: change.key,
    cells: [
      said(hasMark(change.mark) ? `${change.mark} ${memberTitle(change.mark)}` : memberTitle(change.mark)),
      said(change.title),
      counted(change.lengthMm, told.write.onTape(change.lengthMm)),
      ...countCells(change, 'piece', told),
    ],
  })),
})

/** What there is more or less of to buy, before packs and spares: boards, sticks and coils, and what is bought by the piece. */
export const buyTable = (told: Told): Table => {
  const { boards, takeOff } = told.difference
  return {
    id: 'bought',
    title: 'More or less to buy',
    columns: [{ key: 'title', title: 'What', unit: 'text' }, ...COUNTS],
    rows: [
      ...boards.map((change) => ({
        key: change.key,
        cells: [
          said(`${change.title}, ${writeStock(change.stockMm, told.units)}`),
          ...countCells(change, 'piece', told),
        ],
      })),
      ...takeOff
        .filter(({ isBought }) => isBought)
        .map((change) => ({
          key: change.key,
          cells: [said(change.title), ...countCells(change, change.unit, told)],
        })),
    ],
  }
}
