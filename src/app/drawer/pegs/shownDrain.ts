import type { Evaluation } from '../../../evaluate/evaluation'
import type { PartId } from '../../../model/ids'
import { wayHome } from '../../../model/wayHome'

/** Rows with racks, in the order of the plan. */
export const rackParts = ({ bay }: Evaluation): readonly PartId[] =>
  bay.built.filter(({ rack }) => rack !== undefined).map(({ part }) => part)

/** The first drain that a part's water comes into: itself, that of a row's outlets, that which ends in a pit. */
const drainOf = ({ bay: { joins, levels } }: Evaluation, part: PartId): PartId | undefined => {
  if (levels.drains.has(part)) return part
  const outlet = joins.find(
    ({ kind, from, to }) => kind === 'outlet-to-drain' && from === part && to !== undefined,
  )
  if (outlet) return outlet.to
  return [...levels.drains.keys()].find((drain) => wayHome(joins, drain, 0).pit === part)
}

/** The drain whose pegs are shown: that of the first selected part that has one, else the first of the bay. */
export const shownDrain = (evaluation: Evaluation, selection: readonly PartId[]): PartId | undefined =>
  selection.map((part) => drainOf(evaluation, part)).find((drain) => drain !== undefined) ??
  [...evaluation.bay.levels.drains.keys()][0]
