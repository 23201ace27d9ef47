import { isAsIssued } from '../../../layout/issues'
import { sheets } from '../../../sheets'
import type { IssuedPlan, PlanOnPaper } from '../../../sheets/sheet'
import { sheetState } from '../../../sheets/sheetStates'
import type { PaperState, SheetState } from '../../../sheets/sheetState'
import type { Steps } from '../steps'
import { optionsIn, type PaperSet } from './paperSet'

/** 0 is well, 2 must not be worked by any more. */
export const paperRanks: Readonly<Record<PaperState, number>> = {
  Current: 0,
  New: 1,
  'Not needed': 1,
  Superseded: 2,
}

/** The note of changes is about the other sheets; it has no state of its own. */
export const NOTE = 'change'

/** The issue that changes are told against: the last, or the one before it while nothing has changed since the last. */
export const toldAgainst = ({ now, issued, since }: PlanOnPaper): IssuedPlan | undefined =>
  since ?? (isAsIssued(now.layout) ? undefined : issued)

/** What became of each sheet of the issue that changes are told against, a sheet a step. */
export function* stateSteps(set: PaperSet): Steps<readonly SheetState[]> {
  const states: SheetState[] = []
  const issued = toldAgainst(set.plan)
  if (issued === undefined) return states
  for (const sheet of sheets) {
    if (sheet.id === NOTE) continue
    yield
    const state = sheetState(sheet, { ...set.plan, issued }, optionsIn(sheet, set))
    if (state) states.push(state)
  }
  return states
}

/** What the crew may think of a sheet that they hold of the last issue: all of it is current while the plan is as it was issued. */
export const heldState = (
  { now, issued }: PlanOnPaper,
  states: readonly SheetState[],
  id: string,
): PaperState | undefined => {
  if (issued === undefined || id === NOTE) return undefined
  return isAsIssued(now.layout) ? 'Current' : states.find(({ sheet }) => sheet.id === id)?.state
}
