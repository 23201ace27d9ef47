import { type Aisle, aisleState } from '../checks/aisles'
import { shiftWords } from '../checks/measuredWords'
import type { Evaluation } from '../evaluate/evaluation'
import type { PartId } from '../model/ids'
import type { Writer } from '../units/writer'
import { nameOf, namesOf } from '../store/partNames'

/** What stands across an aisle from what is chosen. */
export const besideOf = ({ row, other }: Aisle, ids: readonly PartId[], { layout }: Evaluation): string => {
  const acrossId = ids.includes(row) ? other : row
  const across = layout.parts.find(({ id }) => id === acrossId)
  return across ? nameOf(across) : 'the wall'
}

/** Aisles between what is chosen and what is not, narrowest against their need first. */
export const aislesAround = ({ bay }: Evaluation, ids: readonly PartId[]): readonly Aisle[] => {
  const chosen = new Set(ids)
  const isChosen = (id: PartId | undefined) => id !== undefined && chosen.has(id)
  return bay.aisles
    .filter(({ row, other }) => isChosen(row) !== isChosen(other))
    .toSorted((a, b) => a.widthMm - a.needMm - (b.widthMm - b.needMm))
}

/** How wide an aisle is, or by how much its two sides run into each other. */
export const widthWords = (widthMm: number, { onTape }: Writer): string =>
  widthMm < 0 ? `${onTape(-widthMm)} overlap` : onTape(widthMm)

/** The aisle that most needs saying: `aisle to Post 22", Tight`. */
const tightestWords = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): string => {
  const [aisle] = aislesAround(evaluation, ids)
  if (!aisle) return ''
  const width = widthWords(aisle.widthMm, writer)
  return `; aisle to ${besideOf(aisle, ids, evaluation)} ${width}, ${aisleState(aisle)}`
}

/** What a screen reader says of a move: `Row N2 moved 1" north; aisle to Post 22", Tight`. */
export const movedWords = (
  evaluation: Evaluation,
  ids: readonly PartId[],
  dxMm: number,
  dyMm: number,
  writer: Writer,
): string =>
  `${namesOf(evaluation.layout, ids)} moved ${shiftWords(dxMm, dyMm, writer)}${tightestWords(evaluation, ids, writer)}`
