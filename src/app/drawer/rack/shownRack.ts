import type { Bay } from '../../../checks/context'
import { stateWords } from '../../../model/finding'
import type { PartId } from '../../../model/ids'
import type { RowStrength, StrengthState } from '../../../model/strength'

/** 0 is Within, 1 to be looked at, 2 must be mended. */
export const strengthRank = (state: StrengthState): number => stateWords.strength.indexOf(state)

/** Rows of racks, in the order of the plan. */
export const rackRows = ({ built }: Pick<Bay, 'built'>): readonly PartId[] =>
  built.filter(({ rack }) => rack !== undefined).map(({ part }) => part)

/** The row whose worst screen uses most of what it may. */
export const worstLoaded = (strength: ReadonlyMap<PartId, RowStrength>): PartId | undefined =>
  [...strength.values()].reduce<RowStrength | undefined>((worst, row) => {
    const ranks = worst ? strengthRank(row.state) - strengthRank(worst.state) : 1
    const used = (row.screens[0]?.used ?? 0) - (worst?.screens[0]?.used ?? 0)
    return ranks > 0 || (ranks === 0 && used > 0) ? row : worst
  }, undefined)?.part

/** The row that a view of one row of racks shows: a selected one, else the one that it showed before, else the worst loaded. */
export const shownRack = (
  rows: readonly PartId[],
  selection: readonly PartId[],
  held: PartId | undefined,
  worst: PartId | undefined,
): PartId | undefined => {
  const isRow = (id: PartId | undefined): id is PartId => id !== undefined && rows.includes(id)
  return [selection.find(isRow), held, worst, rows[0]].find(isRow)
}
