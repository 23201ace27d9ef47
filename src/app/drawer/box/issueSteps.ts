import { isAsIssued } from '../../../layout/issues'
import { sheets } from '../../../sheets'
import type { PlanOnPaper } from '../../../sheets/sheet'
import { CHANGE_NOTE, statesOf } from '../../../sheets/sheetStates'
import type { PaperState, SheetState } from '../../../sheets/sheetState'
import type { Steps } from '../steps'
import { optionsIn, type PaperSet } from '../../../sheets/paperSet'
import type { Making } from './useMaking'

/** 0 is well, 2 must not be worked by any more. */
export const paperRanks: Readonly<Record<PaperState, number>> = {
  Current: 0,
  New: 1,
  'Not needed': 1,
  Superseded: 2,
}

/** What became of each sheet of the issue that changes are told against, a sheet a step. */
export const stateSteps = (set: PaperSet): Steps<readonly SheetState[]> =>
  statesOf(set.plan, sheets, (sheet) => optionsIn(sheet, set))

/** Ids of the sheets that a set of papers has, a sheet a step. */
export function* neededSteps(set: PaperSet): Generator<Making, readonly string[]> {
  const needed: string[] = []
  for (const [done, sheet] of sheets.entries()) {
    yield { title: sheet.title, done, of: sheets.length }
    const options = optionsIn(sheet, set)
    const isNeeded =
      sheet.pieces(set.plan, options).length > 0 || (sheet.pages?.(set.plan, options) ?? []).length > 0
    if (isNeeded) needed.push(sheet.id)
  }
  return needed
}

/** What the crew may think of a sheet that they hold of the last issue: all of it is current while the plan is as it was issued. */
export const heldState = (
  { now, issued }: PlanOnPaper,
  states: readonly SheetState[],
  id: string,
): PaperState | undefined => {
  if (issued === undefined || id === CHANGE_NOTE) return undefined
  return isAsIssued(now.layout) ? 'Current' : states.find(({ sheet }) => sheet.id === id)?.state
}
