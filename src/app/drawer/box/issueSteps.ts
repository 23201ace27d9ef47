import { sheets } from '../../../sheets'
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
const NOTE = 'change'

/** What became of each sheet of the last issue, a sheet a step. */
export function* stateSteps(set: PaperSet): Steps<readonly SheetState[]> {
  const states: SheetState[] = []
  if (set.plan.issued === undefined) return states
  for (const sheet of sheets) {
    if (sheet.id === NOTE) continue
    yield
    const state = sheetState(sheet, set.plan, optionsIn(sheet, set))
    if (state) states.push(state)
  }
  return states
}
