import { sheets as allSheets } from '../../../sheets'
import { optionsIn, type PaperSet, planFor } from '../../../sheets/paperSet'
import { type PhoneSheet, phonePage } from '../../../sheets/phonePage'
import type { Sheet } from '../../../sheets/sheet'
import type { Steps } from '../steps'

/** A sheet for the phone; undefined where the plan needs no such sheet. */
const phoneSheet = (sheet: Sheet, set: PaperSet): PhoneSheet | undefined => {
  const options = optionsIn(sheet, set)
  const pieces = sheet.pieces(set.plan, options)
  const drawn = sheet.pages?.(set.plan, options) ?? []
  if (pieces.length + drawn.length === 0) return undefined
  return { sheet, pieces, drawn, units: options.units }
}

/** The papers of one set as a page for phones, a sheet a step. */
export function* phoneSteps(sheets: readonly Sheet[], set: PaperSet): Steps<string> {
  const made: PhoneSheet[] = []
  for (const sheet of sheets) {
    yield
    const plan = yield* planFor(sheet, set, allSheets, undefined)
    const one = phoneSheet(sheet, { ...set, plan })
    if (one) made.push(one)
  }
  yield
  const { title, settings } = set.plan.now.layout
  return phonePage({ title, place: settings.place, issue: set.issue, dateText: set.dateText, sheets: made })
}
