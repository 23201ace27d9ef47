import { strengthOf } from '../evaluate/5-loads'
import { findingsOf } from '../evaluate/8-checks'
import type { Evaluation } from '../evaluate/evaluation'
import type { Part } from '../layout/schema'
import { rankOf, type StateWord, stateWords, type Subject } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Returns } from '../model/returns'
import type { RowStrength } from '../model/strength'
import type { Water } from '../model/water'
import { kinds } from '../parts/index'
import type { Writer } from '../units/writer'
import { placeOfPart, placeWords } from './placeWords'
import { sortedByAcceptance, worstOfParts } from './warningGroups'
import { nameOf } from '../store/partNames'
import { rowStrengthWords } from '../store/strengthWords'
import { flowRank } from './waterReadouts'

/** One part in words: role by its group, name, place, state. */
export interface PartRow {
  readonly id: string
  readonly name: string
  readonly place: string
  readonly isLocked: boolean
  readonly word: StateWord
  readonly rank: number
  /** How a row of racks is fed, and whether a pit has room; undefined for other parts. */
  readonly water?: WaterState
  /** What a row of racks carries, and how it stands; undefined for other parts. */
  readonly strength?: readonly SaidState[]
}

/** A state with what is said of it, such as Within and `77.0 %`. */
export interface SaidState {
  readonly word: StateWord
  readonly rank: number
  readonly words: string
}

/**
 * Word and rank of a row's flow, with its spread; a row without water is starved, and says so. Of a pit, with its room for
 * what comes home.
 */
export type WaterState = SaidState

export interface PartRows {
  readonly kind: string
  readonly title: string
  readonly rows: readonly PartRow[]
}

type Worst = ReturnType<typeof worstOfParts>

/** What is found of parts; a row that has words for its flow and its strength needs no second ones, nor a pit for its room. */
interface WorstOf {
  readonly any: Worst
  readonly ofRow: Worst
  readonly butRoom: Worst
}

const stateOf = ({ id, kind }: Part, worst: Worst): Pick<PartRow, 'word' | 'rank'> => {
  const finding = worst.get(id)
  if (finding) return { word: finding.state, rank: rankOf(finding) }
  return { word: stateWords[kind === 'drain-line' ? 'drain' : 'fit'][0], rank: 0 }
}

const flowOf = ({ rows, dry }: Water, id: PartId, { share }: Writer): WaterState | undefined => {
  const row = rows.get(id)
  if (row) {
    const { state: word, figures } = row
    return { word, rank: flowRank(word), words: share(figures.spread) }
  }
  const word = stateWords.flow[2]
  return dry.has(id) ? { word, rank: flowRank(word), words: 'no water' } : undefined
}

const roomOf = ({ pits }: Returns, id: PartId, { volume }: Writer): WaterState | undefined => {
  const pit = pits.get(id)
  if (!pit) return undefined
  const words = volume(Math.max(pit.roomL, 0))
  return { word: pit.state, rank: stateWords.pit.indexOf(pit.state), words }
}

const saidState = (subject: Subject, word: StateWord, words: string): SaidState => ({
  word,
  rank: rankOf({ subject, state: word }),
  words,
})

const strengthOfRow = (row: RowStrength, writer: Writer): readonly SaidState[] => {
  const { carries, stands } = rowStrengthWords(row, writer)
  return [
    saidState('strength', carries.state, carries.words),
    saidState('stance', stands.state, stands.words),
  ]
}

type Known = Pick<Evaluation['bay'], 'water' | 'returns'> & {
  readonly strengths: ReadonlyMap<PartId, RowStrength>
}

const worstFor = (worst: WorstOf, isRow: boolean, isPit: boolean): Worst => {
  if (isRow) return worst.ofRow
  return isPit ? worst.butRoom : worst.any
}

const rowOf = (part: Part, worst: WorstOf, { water, returns, strengths }: Known, writer: Writer): PartRow => {
  const flow = flowOf(water, part.id, writer)
  const room = roomOf(returns, part.id, writer)
  const row = strengths.get(part.id)
  const said = flow ?? room
  return {
    id: part.id,
    name: nameOf(part),
    place: placeWords(placeOfPart(part), writer),
    isLocked: part.locked,
    ...stateOf(part, worstFor(worst, flow !== undefined || row !== undefined, room !== undefined)),
    ...(said && { water: said }),
    ...(row && { strength: strengthOfRow(row, writer) }),
  }
}

/** What a row has words of its own for. */
const SAID_OF_ROWS: readonly Subject[] = ['flow', 'strength', 'stance']

/** Every part of the bay under its kind, in the order of the shelf; kinds that the bay has none of are left out. */
export const partRows = ({ layout, bay }: Evaluation, writer: Writer): readonly PartRows[] => {
  const known = { water: bay.water, returns: bay.returns, strengths: strengthOf(bay) }
  const { open } = sortedByAcceptance(findingsOf(bay), layout.settings.accepted)
  const worst = {
    any: worstOfParts(open),
    ofRow: worstOfParts(open.filter(({ subject }) => !SAID_OF_ROWS.includes(subject))),
    butRoom: worstOfParts(open.filter(({ subject }) => subject !== 'pit')),
  }
  return kinds
    .map(({ kind, title }) => ({
      kind,
      title,
      rows: layout.parts
        .filter((part) => part.kind === kind)
        .map((part) => rowOf(part, worst, known, writer)),
    }))
    .filter(({ rows }) => rows.length > 0)
}
