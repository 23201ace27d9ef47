import type { Words } from '../../checks/context'
import type { Hole } from '../../model/built'
import { memberName } from '../../model/memberNames'
import { blank, counted, said, type Row, type Table } from '../../model/table'
import { namesTogether } from '../hazard'
import { bottomOf, edgeOf, type DrilledKind } from './drilledKinds'
import { kindMark } from './drillWords'

const eachHole = (
  kinds: readonly DrilledKind[],
  rowOf: (kind: DrilledKind, hole: Hole) => Row['cells'],
): readonly Row[] =>
  kinds.flatMap((kind) =>
    kind.holes.map((hole, index) => ({
      key: index === 0 ? kind.key : `${kind.key}#${index + 1}`,
      cells: rowOf(kind, hole),
    })),
  )

/** Whether any hole stands off the middle of its face. */
export const hasOffHoles = (kinds: readonly DrilledKind[]): boolean =>
  kinds.some(({ holes }) => holes.some(({ asideMm = 0 }) => asideMm !== 0))

/** Where each kind is drilled, and with what; how far off the middle only where any hole is. */
export const holeTable = (kinds: readonly DrilledKind[], write: Words): Table => {
  const table = middleTable(kinds, write)
  if (!hasOffHoles(kinds)) return table
  const offs = kinds.flatMap(({ holes }) => holes.map(({ asideMm = 0 }) => Math.abs(asideMm)))
  return {
    ...table,
    columns: [...table.columns, { key: 'offMm', title: 'Off the middle', unit: 'mm', isMain: true }],
    rows: table.rows.map((row, index) => ({
      ...row,
      cells: [...row.cells, counted(offs[index] ?? 0, write.onTape(offs[index] ?? 0))],
    })),
  }
}

const middleTable = (kinds: readonly DrilledKind[], { onTape }: Words): Table => ({
  id: 'holes',
  title: 'Drill, measured from the foot',
  columns: [
    { key: 'mark', title: 'Mark', unit: 'text' },
    { key: 'count', title: 'Pieces', unit: 'count' },
    { key: 'centreMm', title: 'Foot to hole centre', unit: 'mm', isMain: true },
    { key: 'bottomMm', title: 'Foot to hole bottom', unit: 'mm', isMain: true },
    { key: 'bitMm', title: 'Bit', unit: 'mm' },
    { key: 'takes', title: 'What lies in it', unit: 'text' },
  ],
  rows: eachHole(kinds, (kind, hole) => {
    const { passing } = kind
    return [
      said(kindMark(kind)),
      counted(kind.count),
      counted(hole.centreMm, onTape(hole.centreMm)),
      counted(bottomOf(hole), onTape(bottomOf(hole))),
      counted(hole.diameterMm, onTape(hole.diameterMm)),
      passing ? said(`${passing.name}, ${passing.stockTitle}, ${onTape(passing.odMm)} across`) : blank(),
    ]
  }),
})

/** What each kind is cut to, and the wood that is left about its holes. */
export const memberTable = (kinds: readonly DrilledKind[], { onTape, name }: Words): Table => ({
  id: 'members',
  title: 'The pieces',
  columns: [
    { key: 'mark', title: 'Mark', unit: 'text' },
    { key: 'member', title: 'Member', unit: 'text' },
    { key: 'lengthMm', title: 'Cut to', unit: 'mm' },
    { key: 'faceMm', title: 'Face drilled', unit: 'mm' },
    { key: 'edgeMm', title: hasOffHoles(kinds) ? 'Wood beside it' : 'Wood each side', unit: 'mm' },
    { key: 'aboveMm', title: 'Centre to top', unit: 'mm' },
    { key: 'rows', title: 'For rows', unit: 'text' },
  ],
  rows: eachHole(kinds, (kind, hole) => {
    const [edgeMm, aboveMm] = [edgeOf(kind, hole), kind.lengthMm - hole.centreMm]
    return [
      said(kindMark(kind)),
      said(memberName(kind.mark)),
      counted(kind.lengthMm, onTape(kind.lengthMm)),
      counted(kind.faceMm, onTape(kind.faceMm)),
      counted(edgeMm, onTape(edgeMm)),
      counted(aboveMm, onTape(aboveMm)),
      said(namesTogether(kind.parts.map(name))),
    ]
  }),
})
