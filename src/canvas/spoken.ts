import { type Aisle, aisleState } from '../checks/aisles'
import type { Evaluation } from '../evaluate/evaluation'
import type { PartId } from '../model/ids'
import type { Writer } from '../units/writer'
import { nameOf, namesOf } from './partNames'

/** More distances than this at once are a thicket: the tightest are told. */
export const MOST_AISLES = 8

/** What stands across an aisle from one of its two. */
export const acrossFrom = (aisle: Aisle, part: PartId, { layout }: Evaluation): string => {
  const otherId = aisle.row === part ? aisle.other : aisle.row
  const other = layout.parts.find(({ id }) => id === otherId)
  return other ? nameOf(other) : 'the wall'
}

/** Aisles between what is chosen and what is not, narrowest against their need first. */
export const aislesAround = ({ bay }: Evaluation, ids: readonly PartId[]): readonly Aisle[] => {
  const chosen = new Set(ids)
  const isChosen = (id: PartId | undefined) => id !== undefined && chosen.has(id)
  return bay.aisles
    .filter(({ row, other }) => isChosen(row) !== isChosen(other))
    .toSorted((a, b) => a.widthMm - a.needMm - (b.widthMm - b.needMm))
}

/** One aisle of what is chosen: `aisle to Post 22", Tight`. */
const aisleWords = (
  aisle: Aisle,
  evaluation: Evaluation,
  ids: readonly PartId[],
  { onTape }: Writer,
): string => {
  const inside = ids.includes(aisle.row) ? aisle.row : (aisle.other ?? aisle.row)
  return `aisle to ${acrossFrom(aisle, inside, evaluation)} ${onTape(aisle.widthMm)}, ${aisleState(aisle)}`
}

/** The aisle that most needs saying. */
const tightestWords = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): string => {
  const [aisle] = aislesAround(evaluation, ids)
  return aisle ? `; ${aisleWords(aisle, evaluation, ids, writer)}` : ''
}

/** What a screen reader says while things are carried: `N2: aisle to Post 22", Tight; aisle to N1 40", Fits`. */
export const carriedWords = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): string => {
  const aisles = aislesAround(evaluation, ids).slice(0, MOST_AISLES)
  const words = aisles.map((aisle) => aisleWords(aisle, evaluation, ids, writer))
  return words.length > 0 ? `${namesOf(evaluation.layout, ids)}: ${words.join('; ')}` : ''
}

const compassWords = (dxMm: number, dyMm: number, writer: Writer): string =>
  [
    dyMm === 0 ? '' : `${writer.onTape(Math.abs(dyMm))} ${dyMm > 0 ? 'north' : 'south'}`,
    dxMm === 0 ? '' : `${writer.onTape(Math.abs(dxMm))} ${dxMm > 0 ? 'east' : 'west'}`,
  ]
    .filter((words) => words !== '')
    .join(' and ')

/** What a screen reader says of a move: `Row N2 moved 1" north; aisle to Post 22", Tight`. */
export const movedWords = (
  evaluation: Evaluation,
  ids: readonly PartId[],
  dxMm: number,
  dyMm: number,
  writer: Writer,
): string =>
  `${namesOf(evaluation.layout, ids)} moved ${compassWords(dxMm, dyMm, writer)}${tightestWords(evaluation, ids, writer)}`
