import type { Words } from '../../checks/context'
import { counted, type Row, said, type Table } from '../../model/table'
import type { Units } from '../../units/length'
import { heading, type Piece, tableOf, words } from '../piece'
import { jointTable } from './jointTable'
import type { BaseKind } from './kinds'
import { memberTable } from './memberTable'
import type { Member } from './members'
import { baseRows } from './naming'

const along = (members: readonly Member[], mark: string): readonly Member[] =>
  members
    .filter(({ stick }) => stick.mark === mark)
    .toSorted((a, b) => Math.min(a.from.u, a.to.u) - Math.min(b.from.u, b.to.u))

const middleU = ({ from, to }: Member): number => (from.u + to.u) / 2

/** Each place along the row once, though both sides of it have such a member. */
const once = (us: readonly number[]): readonly number[] =>
  us.filter((u, index) => index === 0 || Math.abs(u - (us[index - 1] ?? u)) > 1)

/** Where along the base its joints and bearers lie, from the row's high end. */
const placesTable = ({ key, first }: BaseKind, { onTape }: Words): Table => {
  const runners = along(first.members, 'BR')
  const rows = (what: string, mark: string, us: readonly number[]): Row[] =>
    once(us).map((u, index) => ({
      key: `${mark}-${index + 1}`,
      cells: [said(`${what} ${index + 1}`), said(mark), counted(u, onTape(u))],
    }))
  return {
    id: `base-places-${key}`,
    title: 'Places along the base, from the high end of the row',
    columns: [
      { key: 'what', title: 'What', unit: 'text' },
      { key: 'mark', title: 'Mark', unit: 'text' },
      { key: 'fromHighMm', title: 'From the high end', unit: 'mm', isMain: true },
    ],
    rows: [
      ...rows(
        'Runner begins',
        'BR',
        runners.map(({ from }) => from.u),
      ),
      ...rows('Middle of splice', 'SP', along(first.members, 'SP').map(middleU)),
      ...rows('Middle of bearer', 'GB', along(first.members, 'GB').map(middleU)),
    ],
  }
}

/** Bearers that the plan holds higher than the runners lie on something that it does not count. */
const raisedWords = ({ first: { members } }: BaseKind, { onTape }: Words): readonly Piece[] => {
  const [runner] = along(members, 'BR')
  const [bearer] = along(members, 'GB')
  if (!runner || !bearer) return []
  const gapMm = bearer.from.z - bearer.stick.heightMm / 2 - (runner.from.z + runner.stick.heightMm / 2)
  return gapMm < 1
    ? []
    : [
        words(
          `The bearers’ undersides stand ${onTape(gapMm)} over the runners: carry each on posts or blocks that high, or on cleats at the risers. That lumber is not in the counts.`,
          'big',
        ),
      ]
}

/** What is laid along the whole of a row before its racks stand in it, a kind of base after the other. */
export const basePieces = (kinds: readonly BaseKind[], write: Words, units: Units): readonly Piece[] =>
  kinds.flatMap((kind): Piece[] => [
    heading(
      `Base along ${baseRows(kind, write)}${kind.all.length > 1 ? `: ${kind.all.length} rows alike` : ''}`,
    ),
    words(
      `Two lines of runners on edge, outside the risers, from end to end of the row${kind.first.facts.joint === 'J2' ? ', cut between its racks so that they come apart' : ''}. They go on as the frames stand; bearers lie flat across them.`,
    ),
    ...raisedWords(kind, write),
    tableOf(memberTable(`base-${kind.key}`, 'Members of one base', kind.first, write, units), true),
    tableOf(jointTable(`base-joints-${kind.key}`, 'Joints of one base', kind.first)),
    tableOf(placesTable(kind, write)),
  ])
