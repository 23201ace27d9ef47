import * as z from 'zod/mini'
import { benchSchema } from './bench'
import { counterSchema } from './counter'
import { apply, fits, reverse } from './difference'
import { emptyHistory, type Entry, type History } from './history'
import { houseSchema } from './house'
import { layoutSchema, papersSchema, partSchema, type Layout } from './schema'
import { settingsSchema } from './settings'
import { layoutFault } from './soundness'

const placed = z.object({ part: partSchema, index: z.int().check(z.gte(0)) })

const bayFields = z.object({
  title: z.exactOptional(layoutSchema.shape.title),
  house: z.exactOptional(houseSchema),
  settings: z.exactOptional(settingsSchema),
  bench: z.exactOptional(benchSchema),
  counter: z.exactOptional(counterSchema),
  papers: z.exactOptional(papersSchema),
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

const historySchema = z.object({ done: z.array(entrySchema), undone: z.array(entrySchema) })

/** The history as text, to be kept beside the layout it belongs to. */
export const writeHistory = (history: History): string => JSON.stringify(history)

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

/** Reads a history kept beside `layout`. A damaged one, or one of another layout, is dropped whole: the layout matters more. */
export const readHistory = (text: string, layout: Layout): History => {
  const checked = historySchema.safeParse(parsed(text))
  return checked.success && belongsTo(layout, checked.data) ? checked.data : emptyHistory
}
