import { findingsOf } from '../evaluate/8-checks'
import type { Evaluation } from '../evaluate/evaluation'
import type { Part } from '../layout/schema'
import { rankOf, type StateWord, stateWords } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Returns } from '../model/returns'
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
  /** How a row of racks is fed, and whether a pit has room; undefined for other parts. */
  readonly water?: WaterState
}

/**
 * Word and rank of a row's flow, with its spread; a row without water is starved, and says so. Of a pit, with its room for
 * what comes home.
 */
export interface WaterState {
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

/** What is found of parts; a row that has a word for its flow needs no second one, nor a pit for its room. */
interface WorstOf {
  readonly any: Worst
  readonly butFlow: Worst
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

type Wet = Pick<Evaluation['bay'], 'water' | 'returns'>

const rowOf = (part: Part, worst: WorstOf, { water, returns }: Wet, writer: Writer): PartRow => {
  const flow = flowOf(water, part.id, writer)
  const room = roomOf(returns, part.id, writer)
  const said = flow ?? room
  return {
    id: part.id,
    name: nameOf(part),
    place: placeWords(placeOfPart(part), writer),
    isLocked: part.locked,
    ...stateOf(part, flow ? worst.butFlow : room ? worst.butRoom : worst.any),
    ...(said && { water: said }),
  }
}

/** Every part of the bay under its kind, in the order of the shelf; kinds that the bay has none of are left out. */
export const partRows = ({ layout, bay }: Evaluation, writer: Writer): readonly PartRows[] => {
  const { open } = sortedByAcceptance(findingsOf(bay), layout.settings.accepted)
  const worst = {
    any: worstOfParts(open),
    butFlow: worstOfParts(open.filter(({ subject }) => subject !== 'flow')),
    butRoom: worstOfParts(open.filter(({ subject }) => subject !== 'pit')),
  }
  return kinds
    .map(({ kind, title }) => ({
      kind,
      title,
      rows: layout.parts.filter((part) => part.kind === kind).map((part) => rowOf(part, worst, bay, writer)),
    }))
    .filter(({ rows }) => rows.length > 0)
}
