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

/** Where each kind is drilled, and with what. */
export const holeTable = (kinds: readonly DrilledKind[], { onTape }: Words): Table => ({
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
    { key: 'edgeMm', title: 'Wood each side', unit: 'mm' },
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
