import type { PartId } from '../model/ids'
import { apply, differenceBetween, isNothing, reverse, type Difference } from './difference'
import type { Layout } from './schema'

export type Selection = readonly PartId[]

/** One gesture, typed number or pressed button. */
export interface Entry {
  /** What was done, as a menu shows it: `Move Row 2`. */
  readonly label: string
  readonly difference: Difference
  readonly selectionBefore: Selection
  readonly selectionAfter: Selection
}

/** Everything that was done and can be undone, and everything undone that can be done again; the newest last. */
export interface History {
  readonly done: readonly Entry[]
  readonly undone: readonly Entry[]
}

/** A step through the history: where it leads, and the name of what was undone or done again. */
export interface Step {
  readonly history: History
  readonly layout: Layout
  readonly selection: Selection
  readonly label: string
}

export const emptyHistory: History = { done: [], undone: [] }

/** The history with one more entry; the very same one where nothing changed. What was undone is gone. */
export const commit = (
  history: History,
  label: string,
  before: Layout,
  after: Layout,
  selectionBefore: Selection,
  selectionAfter: Selection,
): History => {
  const difference = differenceBetween(before, after)
  if (isNothing(difference)) return history
  return { done: [...history.done, { label, difference, selectionBefore, selectionAfter }], undone: [] }
}

/** One step back from `layout`, or undefined at the beginning. */
export const undo = ({ done, undone }: History, layout: Layout): Step | undefined => {
  const entry = done.at(-1)
  return (
    entry && {
      history: { done: done.slice(0, -1), undone: [...undone, entry] },
      layout: apply(layout, reverse(entry.difference)),
      selection: entry.selectionBefore,
      label: entry.label,
    }
  )
}

/** One step forward again from `layout`, or undefined at the end. */
export const redo = ({ done, undone }: History, layout: Layout): Step | undefined => {
  const entry = undone.at(-1)
  return (
    entry && {
      history: { done: [...done, entry], undone: undone.slice(0, -1) },
      layout: apply(layout, entry.difference),
      selection: entry.selectionAfter,
      label: entry.label,
    }
  )
}
