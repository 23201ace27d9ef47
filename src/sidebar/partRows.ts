import { findingsOf } from '../evaluate/8-checks'
import type { Evaluation } from '../evaluate/evaluation'
import type { Part } from '../layout/schema'
import { rankOf, type StateWord, stateWords, type Subject } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Water } from '../model/water'
import { kinds } from '../parts/index'
import type { Writer } from '../units/writer'
import { placeOfPart, placeWords } from './placeWords'
import { sortedByAcceptance, worstOfParts } from './warningGroups'
import { nameOf } from '../store/partNames'
import { flowRank } from './waterReadouts'

/** One part in words: role by its group, name, place, state. */
export interface PartRow {
  readonly id: string
  readonly name: string
  readonly place: string
  readonly isLocked: boolean
  readonly word: StateWord
  readonly rank: number
  /** How a row of racks is fed; undefined for other parts. */
  readonly flow?: RowFlow
}

/** Word and rank of a row's flow, with its spread; a row without water is starved, and says so. */
export interface RowFlow {
  readonly word: StateWord
  readonly rank: number
  readonly words: string
}

export interface PartRows {
  readonly kind: string
  readonly title: string
  readonly rows: readonly PartRow[]
}

type Worst = ReturnType<typeof worstOfParts>

/** What is found of parts; a row that has a word for its flow needs no second one. */
interface WorstOf {
  readonly any: Worst
  readonly butFlow: Worst
}

/** What is judged of a part where nothing else is said of it, by its kind. */
const subjectOf = (kind: Part['kind']): Subject => {
  if (kind === 'drain-line') return 'drain'
  return kind === 'sump' ? 'pit' : 'fit'
}

const stateOf = ({ id, kind }: Part, worst: Worst): Pick<PartRow, 'word' | 'rank'> => {
  const finding = worst.get(id)
  if (finding) return { word: finding.state, rank: rankOf(finding) }
  return { word: stateWords[subjectOf(kind)][0], rank: 0 }
}

const flowOf = ({ rows, dry }: Water, id: PartId, { share }: Writer): Pick<PartRow, 'flow'> => {
  const row = rows.get(id)
  if (row) {
    const { state: word, figures } = row
    return { flow: { word, rank: flowRank(word), words: share(figures.spread) } }
  }
  const word = stateWords.flow[2]
  return dry.has(id) ? { flow: { word, rank: flowRank(word), words: 'no water' } } : {}
}

const rowOf = (part: Part, worst: WorstOf, water: Water, writer: Writer): PartRow => {
  const flow = flowOf(water, part.id, writer)
  return {
    id: part.id,
    name: nameOf(part),
    place: placeWords(placeOfPart(part), writer),
    isLocked: part.locked,
    ...stateOf(part, flow.flow ? worst.butFlow : worst.any),
    ...flow,
  }
}

/** Every part of the bay under its kind, in the order of the shelf; kinds that the bay has none of are left out. */
export const partRows = ({ layout, bay }: Evaluation, writer: Writer): readonly PartRows[] => {
  const { open } = sortedByAcceptance(findingsOf(bay), layout.settings.accepted)
  const worst = {
    any: worstOfParts(open),
    butFlow: worstOfParts(open.filter(({ subject }) => subject !== 'flow')),
  }
  return kinds
    .map(({ kind, title }) => ({
      kind,
      title,
      rows: layout.parts
        .filter((part) => part.kind === kind)
        .map((part) => rowOf(part, worst, bay.water, writer)),
    }))
    .filter(({ rows }) => rows.length > 0)
}
