import type { Aisle } from '../checks/aisles'
import { stateFor } from '../checks/found'
import type { Evaluation } from '../evaluate/evaluation'
import type { StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Writer } from '../units/writer'
import { nameOf, namesOf } from './partNames'

/** Fits, Tight or Clash. */
export const aisleState = ({ widthMm, needMm, clashBelowMm }: Aisle): StateWord =>
  stateFor('fit', widthMm, needMm, clashBelowMm)

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

/** The aisle that most needs saying: `aisle to Post 22", Tight`. */
const tightestWords = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): string => {
  const [aisle] = aislesAround(evaluation, ids)
  if (!aisle) return ''
  const inside = ids.includes(aisle.row) ? aisle.row : (aisle.other ?? aisle.row)
  const width = writer.onTape(aisle.widthMm)
  return `; aisle to ${acrossFrom(aisle, inside, evaluation)} ${width}, ${aisleState(aisle)}`
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
