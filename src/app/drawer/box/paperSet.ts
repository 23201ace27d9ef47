import type { Page } from '../../../drawing/page'
import { optionsFor, type SetOptions } from '../../../sheets/optionsFor'
import { pagesOf } from '../../../sheets/pagesOf'
import type { PlanOnPaper, Sheet, SheetOptions } from '../../../sheets/sheet'
import type { Steps } from '../steps'

/** What a set of papers is made of. Units are those that the screen shows. */
export interface PaperSet extends SetOptions {
  readonly plan: PlanOnPaper
}

/** A sheet and its pages; no page where the plan needs no such sheet. */
export interface SheetPages {
  readonly sheet: Sheet
  readonly pages: readonly Page[]
}

/** How a sheet of a set is printed. */
export const optionsIn = (sheet: Sheet, set: PaperSet): SheetOptions =>
  optionsFor(sheet, set.plan.now.layout, set)

/** The pages of one sheet of a set. */
export const pagesIn = (sheet: Sheet, set: PaperSet): readonly Page[] =>
  pagesOf(sheet, set.plan, optionsIn(sheet, set))

/** The pages of a whole set, a sheet a step; `onStep` is told before each. */
export function* setSteps(
  sheets: readonly Sheet[],
  set: PaperSet,
  onStep?: (sheet: Sheet, index: number) => void,
): Steps<readonly SheetPages[]> {
  const made: SheetPages[] = []
  for (const [index, sheet] of sheets.entries()) {
    onStep?.(sheet, index)
    yield
    made.push({ sheet, pages: pagesIn(sheet, set) })
  }
  return made
}

/** `3 pages`, `1 page`. */
export const pageWords = (count: number): string => `${count} ${count === 1 ? 'page' : 'pages'}`
