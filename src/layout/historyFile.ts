import * as z from 'zod/mini'
import { benchSchema } from './bench'
import { counterSchema } from './counter'
import { apply, fits, reverse } from './difference'
import { emptyHistory, type Entry, type History } from './history'
import { houseSchema } from './house'
import { entryWith, planShelf, type EntryOf } from './keptPlans'
import { papersSchemaOf } from './papers'
import { layoutSchema, partSchema, planSchema, type KeptPlan, type Layout } from './schema'
import { settingsSchema } from './settings'
import { layoutFault } from './soundness'

const placed = z.object({ part: partSchema, index: z.int().check(z.gte(0)) })

/** A plan that is kept, by its place among the plans of the history: an entry that changes a paper does not repeat it. */
const planRef = z.int().check(z.gte(0))

const bayFields = z.object({
  title: z.exactOptional(layoutSchema.shape.title),
  house: z.exactOptional(houseSchema),
  settings: z.exactOptional(settingsSchema),
  bench: z.exactOptional(benchSchema),
  counter: z.exactOptional(counterSchema),
  papers: z.exactOptional(papersSchemaOf(planRef)),
})

const selection = z.array(z.string())

const entrySchema = z.object({
  label: z.string(),
  difference: z.object({
    added: z.array(placed),
    removed: z.array(placed),
    updated: z.array(z.tuple([partSchema, partSchema])),
    from: bayFields,
    to: bayFields,
  }),
  selectionBefore: selection,
  selectionAfter: selection,
})

const historySchema = z.object({
  plans: z._default(z.array(planSchema), []),
  done: z.array(entrySchema),
  undone: z.array(entrySchema),
})

/** The history as text, to be kept beside the layout it belongs to. Every plan that is kept stands in it once. */
export const writeHistory = ({ done, undone }: History): string => {
  const shelf = planShelf()
  const [doneText, undoneText] = [done, undone].map((entries) =>
    JSON.stringify(entries.map((entry) => entryWith(entry, shelf.place))),
  )
  return `{"plans":[${shelf.texts.join(',')}],"done":${doneText},"undone":${undoneText}}`
}

/** Whether every step of a walk through the entries can be made and leads to a sound layout. */
const isWalkable = (
  start: Layout,
  entries: readonly Entry[],
  turn: (entry: Entry) => Entry['difference'],
): boolean => {
  let layout = start
  return entries.toReversed().every((entry) => {
    const difference = turn(entry)
    if (!fits(layout, difference)) return false
    layout = apply(layout, difference)
    return layoutFault(layout) === undefined
  })
}

const belongsTo = (layout: Layout, { done, undone }: History): boolean =>
  isWalkable(layout, done, ({ difference }) => reverse(difference)) &&
  isWalkable(layout, undone, ({ difference }) => difference)

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** The plans of a history; one that the layout has too is the very same object, and is compared with it at a glance. */
const sharedPlans = (plans: readonly KeptPlan[], { papers }: Layout): readonly KeptPlan[] => {
  const own = [papers.issued, papers.before, ...papers.versions.map(({ plan }) => plan)]
  const byText = new Map(own.map((plan) => [JSON.stringify(plan), plan]))
  return plans.map((plan) => byText.get(JSON.stringify(plan)) ?? plan)
}

/** Whether each place that an entry names is that of a plan. */
const hasItsPlans = (entry: EntryOf<number>, plans: number): boolean => {
  let isSo = true
  entryWith(entry, (place: number) => (isSo &&= place < plans))
  return isSo
}

const restored = (entries: readonly EntryOf<number>[], plans: readonly KeptPlan[]): readonly Entry[] =>
  entries.map((entry) =>
    entryWith(entry, (place) => {
      const plan = plans[place]
      if (!plan) throw new RangeError(`A history of ${plans.length} plans names plan ${place}.`)
      return plan
    }),
  )

/** Reads a history kept beside `layout`. A damaged one, or one of another layout, is dropped whole: the layout matters more. */
export const readHistory = (text: string, layout: Layout): History => {
  const checked = historySchema.safeParse(parsed(text))
  if (!checked.success) return emptyHistory
  const { plans, done, undone } = checked.data
  const kept = sharedPlans(plans, layout)
  if (![...done, ...undone].every((entry) => hasItsPlans(entry, kept.length))) return emptyHistory
  const history = { done: restored(done, kept), undone: restored(undone, kept) }
  return belongsTo(layout, history) ? history : emptyHistory
}
