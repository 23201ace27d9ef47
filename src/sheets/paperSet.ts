import type { Units } from '../units/length'
import { chosenOptions } from './chosenOptions'
import type { PlanOnPaper, Sheet, SheetOptions } from './sheet'
import { CHANGE_NOTE, statedPlan } from './sheetStates'

/** What a set of papers is made of. */
export interface PaperSet {
  readonly plan: PlanOnPaper
  /** Of every sheet that none are chosen for: those that the screen shows. */
  readonly units: Units
  readonly dateText: string
  readonly issue: string
}

/** How a sheet of a set is printed. */
export const optionsIn = (
  sheet: Pick<Sheet, 'id' | 'size'>,
  { plan, units, dateText, issue }: PaperSet,
): SheetOptions => {
  const { papers, settings } = plan.now.layout
  return chosenOptions(sheet, { papers, settings: { ...settings, units } }, { dateText, issue })
}

/**
 * The plan that one sheet of a set is made from: the note of changes waits until it is known what became of all the sheets, and tells
 * `step` before each that it looks at; every other sheet takes the plan as it is.
 */
export function* planFor<T>(
  sheet: Pick<Sheet, 'id'>,
  set: PaperSet,
  sheets: readonly Sheet[],
  step: T,
): Generator<T, PlanOnPaper> {
  if (sheet.id !== CHANGE_NOTE) return set.plan
  return yield* statedPlan(set.plan, sheets, (each) => optionsIn(each, set), step)
}
