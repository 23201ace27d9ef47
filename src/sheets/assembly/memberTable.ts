import { stockOf } from '../../catalogue/stock'
import { memberTitle } from '../../model/memberNames'
import { counted, said, type Table } from '../../model/table'
import { toTicks, type Units } from '../../units/length'
import type { Writer } from '../../units/writer'
import { howCut } from '../cutWords'
import type { Assembled, Fixings, Member } from './members'

/** The order in which they are picked up. */
const ORDER = 'RS-p RS-s RS-d BX BR TT SP GB SB XB RL RL-b SV DW HB'.split(' ')

const orderOf = (mark: string): number => {
  const at = ORDER.indexOf(mark)
  return at < 0 ? ORDER.length : at
}

/** Like members: one line of the table. */
export interface LikeMembers {
  readonly key: string
  readonly first: Member
  readonly count: number
}

/** Members of one mark, stock and length together, in the order in which they are picked up. */
export const likeMembers = (members: readonly Member[]): readonly LikeMembers[] => {
  const lines = new Map<string, { key: string; first: Member; count: number }>()
  for (const member of members) {
    const { mark, stock, lengthMm } = member.stick
    const like = `${mark} ${stock} ${toTicks(lengthMm)}`
    const line = lines.get(like)
    if (line) line.count += 1
    else lines.set(like, { key: mark, first: member, count: 1 })
  }
  const sorted = [...lines.values()].toSorted(
    (a, b) =>
      orderOf(a.first.stick.mark) - orderOf(b.first.stick.mark) ||
      b.first.stick.lengthMm - a.first.stick.lengthMm,
  )
  // A mark has one length nearly always; where it has more, the second goes by its number.
  return sorted.map((line, index) => {
    const before = sorted.slice(0, index).filter(({ key }) => key === line.key).length
    return { ...line, key: before === 0 ? line.key : `${line.key}-${before + 1}` }
  })
}

const capsOn = (fixings: Fixings, mark: string): number =>
  [...(fixings.get(mark) ?? [])].reduce(
    (sum, [item, count]) => sum + (item.startsWith('end-cap') ? count : 0),
    0,
  )

const endWords = ({ first: { stick } }: LikeMembers, fixings: Fixings): string => {
  if (stick.mark.startsWith('RS')) return 'foot square and painted'
  if (!stick.stock.startsWith('conduit')) return 'square'
  const caps = capsOn(fixings, stick.mark)
  return caps === 0 ? 'deburred in and out' : `deburred, ${caps} capped`
}

/** What a rack, or the base of a row, is put together from. */
export const memberTable = (
  id: string,
  title: string,
  { members, fixings }: Assembled,
  { onTape }: Writer,
  units: Units,
): Table => ({
  id,
  title,
  columns: [
    { key: 'mark', title: 'Mark', unit: 'text', isMain: true },
    { key: 'member', title: 'Member', unit: 'text' },
    { key: 'stock', title: 'Of', unit: 'text' },
    { key: 'lengthMm', title: 'Length', unit: 'mm', isMain: true },
    { key: 'count', title: 'Pieces', unit: 'count', isMain: true },
    { key: 'cut', title: 'Cut', unit: 'text' },
    { key: 'ends', title: 'Ends', unit: 'text' },
  ],
  rows: likeMembers(members).map((line) => {
    const { mark, stock, lengthMm, cut } = line.first.stick
    return {
      key: line.key,
      cells: [
        said(mark),
        said(memberTitle(mark)),
        said(stockOf(stock).title),
        counted(lengthMm, onTape(lengthMm)),
        counted(line.count),
        said(howCut({ marks: [mark], lengthMm, count: line.count, cut }, stock, units)),
        said(endWords(line, fixings)),
      ],
    }
  }),
})
