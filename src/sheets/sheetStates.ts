import { isAsIssued } from '../layout/issues'
import type { Piece } from './piece'
import { tablesIn } from './piece'
import type { IssuedPlan, PlanOnPaper, Sheet, SheetOptions } from './sheet'
import type { PaperState, SheetState } from './sheetState'
import { tableChanges } from './tableChanges'

/** Room in which drawings are made to be compared, mm. */
const ROOM = { widthMm: 180, heightMm: 240 }

/** Numbers that a reader reads alike are alike: a bay that is solved anew differs in its last digits. */
const DIGITS = 5

const alike = (key: string, value: unknown): unknown => {
  if (key === 'value') return undefined
  return typeof value === 'number' ? Number(value.toPrecision(DIGITS)) : value
}

/** What a piece says and shows, as one text: cells by their words. */
const traceOf = (piece: Piece): string =>
  JSON.stringify(piece.as === 'figure' ? [piece.caption, piece.draw(ROOM)] : piece, alike)

/** All that a sheet says and shows, title block left out. */
const tracesOf = (sheet: Sheet, plan: PlanOnPaper, options: SheetOptions, pieces: readonly Piece[]): string =>
  [
    ...pieces.map(traceOf),
    ...(sheet.pages?.(plan, options) ?? []).map(({ items }) => JSON.stringify(items, alike)),
  ].join('\n')

const stateOf = (before: string, after: string): PaperState => {
  if (before === after) return 'Current'
  if (before === '') return 'New'
  return after === '' ? 'Not needed' : 'Superseded'
}

/**
 * The state of one sheet of the last issue: made twice, from the plan of that day and from the plan as it is, and held against each
 * other. Undefined before the first issue, and for a sheet that neither plan needs.
 */
export const sheetState = (
  sheet: Sheet,
  plan: PlanOnPaper,
  options: SheetOptions,
): SheetState | undefined => {
  if (plan.issued === undefined) return undefined
  const then: PlanOnPaper = { now: plan.issued.was, issued: undefined }
  const now: PlanOnPaper = { now: plan.now, issued: undefined }
  const [was, is] = [sheet.pieces(then, options), sheet.pieces(now, options)]
  const [before, after] = [tracesOf(sheet, then, options, was), tracesOf(sheet, now, options, is)]
  if (before === '' && after === '') return undefined
  const state = stateOf(before, after)
  return { sheet, state, changes: state === 'Superseded' ? tableChanges(tablesIn(was), tablesIn(is)) : [] }
}

/** The note of changes is about the other sheets; it has no state of its own. */
export const CHANGE_NOTE = 'change'

/** The issue that changes are told against: the last, or the one before it while nothing has changed since the last. */
export const toldAgainst = ({ now, issued, since }: PlanOnPaper): IssuedPlan | undefined =>
  since ?? (isAsIssued(now.layout) ? undefined : issued)

/** What became of each sheet of the issue that changes are told against, a sheet a step. */
export function* statesOf(
  plan: PlanOnPaper,
  sheets: readonly Sheet[],
  optionsOf: (sheet: Sheet) => SheetOptions,
): Generator<undefined, readonly SheetState[]> {
  const states: SheetState[] = []
  const issued = toldAgainst(plan)
  if (issued === undefined) return states
  for (const sheet of sheets) {
    if (sheet.id === CHANGE_NOTE) continue
    yield
    const state = sheetState(sheet, { ...plan, issued }, optionsOf(sheet))
    if (state) states.push(state)
  }
  return states
}

/** The plan with what became of its sheets, found a sheet a step where nobody has found it yet; each step is told as `step`. */
export function* statedPlan<T>(
  plan: PlanOnPaper,
  sheets: readonly Sheet[],
  optionsOf: (sheet: Sheet) => SheetOptions,
  step: T,
): Generator<T, PlanOnPaper> {
  if (plan.states) return plan
  const walk = statesOf(plan, sheets, optionsOf)
  let found = walk.next()
  while (!found.done) {
    yield step
    found = walk.next()
  }
  return { ...plan, states: found.value }
}

/** The same in one go. */
export const withStates = (
  plan: PlanOnPaper,
  sheets: readonly Sheet[],
  optionsOf: (sheet: Sheet) => SheetOptions,
): PlanOnPaper => {
  const walk = statedPlan(plan, sheets, optionsOf, undefined)
  let found = walk.next()
  while (!found.done) found = walk.next()
  return found.value
}
