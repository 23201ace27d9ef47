import type { Evaluation } from '../evaluate/evaluation'
import type { Part } from '../layout/schema'
import { rankOf, type StateWord, stateWords } from '../model/finding'
import { kinds } from '../parts/index'
import type { Writer } from '../units/writer'
import { placeOfPart, placeWords } from './placeWords'
import { sortedByAcceptance, worstOfParts } from './warningGroups'
import { nameOf } from '../store/partNames'

/** One part in words: role by its group, name, place, state. */
export interface PartRow {
  readonly id: string
  readonly name: string
  readonly place: string
  readonly isLocked: boolean
  readonly word: StateWord
  readonly rank: number
}

export interface PartRows {
  readonly kind: string
  readonly title: string
  readonly rows: readonly PartRow[]
}

type Worst = ReturnType<typeof worstOfParts>

const stateOf = ({ id, kind }: Part, worst: Worst): Pick<PartRow, 'word' | 'rank'> => {
  const finding = worst.get(id)
  if (finding) return { word: finding.state, rank: rankOf(finding) }
  return { word: stateWords[kind === 'drain-line' ? 'drain' : 'fit'][0], rank: 0 }
}

const rowOf = (part: Part, worst: Worst, writer: Writer): PartRow => ({
  id: part.id,
  name: nameOf(part),
  place: placeWords(placeOfPart(part), writer),
  isLocked: part.locked,
  ...stateOf(part, worst),
})

/** Every part of the bay under its kind, in the order of the shelf; kinds that the bay has none of are left out. */
export const partRows = ({ layout, findings }: Evaluation, writer: Writer): readonly PartRows[] => {
  const worst = worstOfParts(sortedByAcceptance(findings, layout.settings.accepted).open)
  return kinds
    .map(({ kind, title }) => ({
      kind,
      title,
      rows: layout.parts.filter((part) => part.kind === kind).map((part) => rowOf(part, worst, writer)),
    }))
    .filter(({ rows }) => rows.length > 0)
}
