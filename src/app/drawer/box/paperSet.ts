import type { Page } from '../../../drawing/page'
import { chosenOptions } from '../../../sheets/chosenOptions'
import { sheets as allSheets } from '../../../sheets'
import { CHANGE_NOTE, withStates } from '../../../sheets/sheetStates'
import { pagesOf } from '../../../sheets/pagesOf'
import type { PlanOnPaper, Sheet, SheetOptions } from '../../../sheets/sheet'
import type { Units } from '../../../units/length'
import type { Making } from './useMaking'

/** What a set of papers is made of. */
export interface PaperSet {
  readonly plan: PlanOnPaper
  /** Of every sheet that none are chosen for: those that the screen shows. */
  readonly units: Units
  readonly dateText: string
  readonly issue: string
}

/** A sheet and its pages; no page where the plan needs no such sheet. */
export interface SheetPages {
  readonly sheet: Sheet
  readonly pages: readonly Page[]
}

/** How a sheet of a set is printed. */
export const optionsIn = (sheet: Sheet, { plan, units, dateText, issue }: PaperSet): SheetOptions => {
  const { papers, settings } = plan.now.layout
  return chosenOptions(sheet, { papers, settings: { ...settings, units } }, { dateText, issue })
}

/** The pages of one sheet of a set. */
export const pagesIn = (sheet: Sheet, set: PaperSet): readonly Page[] =>
  pagesOf(sheet, set.plan, optionsIn(sheet, set))

/** The note of changes is not printed before it is known what became of the other sheets. */
const withItsStates = (set: PaperSet): PaperSet => ({
  ...set,
  plan: withStates(set.plan, allSheets, (sheet) => optionsIn(sheet, set)),
})

/** The pages of a whole set, a sheet a step. */
export function* setSteps(sheets: readonly Sheet[], set: PaperSet): Generator<Making, readonly SheetPages[]> {
  const made: SheetPages[] = []
  for (const [done, sheet] of sheets.entries()) {
    yield { title: sheet.title, done, of: sheets.length }
    made.push({ sheet, pages: pagesIn(sheet, sheet.id === CHANGE_NOTE ? withItsStates(set) : set) })
  }
  return made
}

/** `3 pages`, `1 page`. */
export const pageWords = (count: number): string => `${count} ${count === 1 ? 'page' : 'pages'}`
