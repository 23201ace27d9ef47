import type { Page } from '../../../drawing/page'
import { sheets as allSheets } from '../../../sheets'
import { pagesOf } from '../../../sheets/pagesOf'
import { optionsIn, type PaperSet, planFor } from '../../../sheets/paperSet'
import type { Sheet } from '../../../sheets/sheet'
import type { Making } from './useMaking'

/** A sheet and its pages; no page where the plan needs no such sheet. */
export interface SheetPages {
  readonly sheet: Sheet
  readonly pages: readonly Page[]
}

/** The pages of one sheet of a set. */
export const pagesIn = (sheet: Sheet, set: PaperSet): readonly Page[] =>
  pagesOf(sheet, set.plan, optionsIn(sheet, set))

/** The pages of a whole set, a sheet a step. */
export function* setSteps(sheets: readonly Sheet[], set: PaperSet): Generator<Making, readonly SheetPages[]> {
  const made: SheetPages[] = []
  for (const [done, sheet] of sheets.entries()) {
    const step = { title: sheet.title, done, of: sheets.length }
    yield step
    const plan = yield* planFor(sheet, set, allSheets, step)
    made.push({ sheet, pages: pagesIn(sheet, { ...set, plan }) })
  }
  return made
}

/** `North bay, saw list, issue 2`: what a person calls papers that are printed. */
export const titleOf = ({ plan, issue }: PaperSet, what: string): string =>
  `${plan.now.layout.title}, ${what.toLowerCase()}, ${/^\d/.test(issue) ? 'issue ' : ''}${issue}`

/** `3 pages`, `1 page`. */
export const pageWords = (count: number): string => `${count} ${count === 1 ? 'page' : 'pages'}`
