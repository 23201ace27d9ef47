import * as z from 'zod/mini'
import { benchSchema, type Bench } from './bench'
import { counterSchema, type Counter } from './counter'
import { asRead, done, refusal, type Edited } from './edited'
import { issueWords } from './faultWords'
import { houseSchema, type House } from './house'
import { layoutSchema, papersSchema, type Layout, type Papers } from './schema'
import { settingsSchema, type Accepted, type Settings } from './settings'
import { houseFault } from './soundness'

/** Edits of the bay as a whole: its title, its house, its settings, its saw bench, its counter and its papers. All are checked by the schema of what they set. */

/** Plans that are kept were checked when they were the plan; an acre is not checked again for another paper. */
const { family, choices, issues } = papersSchema.shape
const chosenSchema = z.object({ family, choices, issues })

/** The value as its schema holds it, or the refusal. */
const checkedBy = <T>(
  schema: z.ZodMiniType<T>,
  value: unknown,
  layout: Layout,
): { readonly value: T } | { readonly refused: Edited } => {
  const checked = schema.safeParse(value)
  if (checked.success) return { value: checked.data }
  const path = checked.error.issues[0]?.path ?? []
  return { refused: refusal(issueWords(schema, path, value, asRead(layout))) }
}

export const renameBay = (layout: Layout, title: string): Edited => {
  const candidate = { title: title.trim() }
  const checked = layoutSchema.shape.title.safeParse(candidate.title)
  if (checked.success) return done({ ...layout, title: checked.data })
  return refusal(issueWords(layoutSchema, ['title'], candidate))
}

export const setHouse = (layout: Layout, house: House): Edited => {
  const checked = checkedBy(houseSchema, house, layout)
  if ('refused' in checked) return checked.refused
  const fault = houseFault(checked.value)
  return fault ? refusal(fault) : done({ ...layout, house: checked.value })
}

/**
 * Of a record that was checked only what changed; the rest stay the very same things, so that whoever remembers an answer by
 * them has nothing to find anew.
 */
const onlyChanged = <T extends object>(before: T, checked: T, changes: Partial<T>): T => {
  const after = { ...before }
  // The keys of changes of a T are keys of T; the language types them as texts.
  for (const key of Object.keys(changes) as (keyof T)[]) after[key] = checked[key]
  return after
}

export const setSettings = (layout: Layout, changes: Partial<Settings>): Edited => {
  const checked = checkedBy(settingsSchema, { ...layout.settings, ...changes }, layout)
  return 'refused' in checked
    ? checked.refused
    : done({ ...layout, settings: onlyChanged(layout.settings, checked.value, changes) })
}

/** Changes of what the saw bench knows: stock as measured, leftovers, what is cut. */
export const setBench = (layout: Layout, changes: Partial<Bench>): Edited => {
  const checked = checkedBy(benchSchema, { ...layout.bench, ...changes }, layout)
  return 'refused' in checked
    ? checked.refused
    : done({ ...layout, bench: onlyChanged(layout.bench, checked.value, changes) })
}

/** Changes of what the counter knows: prices, tax, crew and norms. */
export const setCounter = (layout: Layout, changes: Partial<Counter>): Edited => {
  const checked = checkedBy(counterSchema, { ...layout.counter, ...changes }, layout)
  return 'refused' in checked
    ? checked.refused
    : done({ ...layout, counter: onlyChanged(layout.counter, checked.value, changes) })
}

/** Changes of what the crew holds, but for the plans that are kept: those are set by `issuePapers` and the edits of versions. */
export const setPapers = (
  layout: Layout,
  changes: Partial<Pick<Papers, 'family' | 'choices' | 'issues'>>,
): Edited => {
  const { family, choices, issues } = { ...layout.papers, ...changes }
  const checked = checkedBy(chosenSchema, { family, choices, issues }, layout)
  return 'refused' in checked
    ? checked.refused
    : done({
        ...layout,
        papers: onlyChanged<Papers>(layout.papers, { ...layout.papers, ...checked.value }, changes),
      })
}

const without = (accepted: readonly Accepted[], key: string): Accepted[] =>
  accepted.filter((entry) => entry.key !== key)

/** Accepts a finding for a reason that will print on the sheet; a second reason for it takes the place of the first. */
export const acceptFinding = (layout: Layout, key: string, reason: string, by: string): Edited => {
  if (reason.trim() === '') return refusal('an accepted warning needs a reason, which prints on the sheet')
  const entry = { key, reason: reason.trim(), by: by.trim() }
  return setSettings(layout, { accepted: [...without(layout.settings.accepted, key), entry] })
}

/** Lets a finding warn again. */
export const unaccept = (layout: Layout, key: string): Layout => {
  const accepted = without(layout.settings.accepted, key)
  return accepted.length === layout.settings.accepted.length
    ? layout
    : { ...layout, settings: { ...layout.settings, accepted } }
}
