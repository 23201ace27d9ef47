import { strengthOf } from '../../evaluate/5-loads'
import type { Evaluation } from '../../evaluate/evaluation'
import { distance, type Point } from '../../geometry/point'
import { nearestOnSegment } from '../../geometry/segment'
import { stateWords, type StateWord } from '../../model/finding'
import type { PartId } from '../../model/ids'
import { nameOf } from '../../store/partNames'
import { rowStrengthWords } from '../../store/strengthWords'
import type { Writer } from '../../units/writer'
import type { Lens } from '../lens'
import type { RowMark } from '../water/rowStates'
import { strengthSpans, type PlacedSpan } from './strengthSpans'

const nameIn = ({ layout }: Evaluation, part: PartId): string => {
  const found = layout.parts.find(({ id }) => id === part)
  return found ? nameOf(found) : part
}

/** `N1: Within 77.0 %` and `Stands anchored`, each with its shape; none for what is no row. */
export const strengthMarks = (evaluation: Evaluation, part: PartId, writer: Writer): readonly RowMark[] => {
  const strength = strengthOf(evaluation.bay).get(part)
  if (!strength) return []
  const { carries, stands } = rowStrengthWords(strength, writer)
  return [
    { state: carries.state, words: `${nameIn(evaluation, part)}: ${carries.state} ${carries.words}`.trim() },
    { state: stands.state, words: `${stands.state} ${stands.words}`.trim() },
  ]
}

/** How near the pointer must come to a rail, px. */
const REACH_PX = 9

const spanNotes = (
  evaluation: Evaluation,
  part: PartId,
  { rail, span }: PlacedSpan,
  writer: Writer,
): readonly string[] => {
  const { length, stress, bore, share } = writer
  const isFolding = span.stressMpa > evaluation.bay.settings.conduitYieldMpa
  const does = isFolding
    ? `${stress(span.stressMpa)}: folds or stays bent`
    : `${stress(span.stressMpa)}, sags ${bore(span.sagMm)}`
  const what = span.isOverhang ? 'overhang' : 'span'
  return [
    `${nameIn(evaluation, part)}, ${rail} rail, ${what} ${length(span.fromU)} to ${length(span.toU)}`,
    `${span.state}, ${share(span.used)} of its limit: ${does}`,
  ]
}

/** What the rail under the pointer carries. */
export const strengthNotes = (
  evaluation: Evaluation,
  at: Point,
  { view, writer }: Lens,
): readonly string[] => {
  const reachMm = REACH_PX / view.pxPerMm
  const near = strengthSpans(evaluation)
    .flatMap(({ part, spans }) =>
      spans.map((placed) => ({
        part,
        placed,
        offMm: distance(nearestOnSegment(placed.from, placed.to, at), at),
      })),
    )
    .filter(({ offMm }) => offMm <= reachMm)
    .sort((a, b) => a.offMm - b.offMm)[0]
  return near ? spanNotes(evaluation, near.part, near.placed, writer) : []
}

/** How many rows are in a state. */
export interface RowsInState {
  readonly state: StateWord
  readonly rows: number
}

const countsOf = (words: readonly StateWord[], states: readonly StateWord[]): RowsInState[] =>
  words
    .map((state) => ({ state, rows: states.filter((one) => one === state).length }))
    .filter(({ rows }) => rows > 0)
    .reverse()

/** Rows by what they carry and by how they stand, worst first; states that no row is in are left out. */
export const strengthCounts = ({
  bay,
}: Evaluation): { readonly carry: readonly RowsInState[]; readonly stand: readonly RowsInState[] } => {
  const rows = [...strengthOf(bay).values()]
  return {
    carry: countsOf(
      stateWords.strength,
      rows.map(({ state }) => state),
    ),
    stand: countsOf(
      stateWords.stance,
      rows.map(({ stance }) => stance.state),
    ),
  }
}
