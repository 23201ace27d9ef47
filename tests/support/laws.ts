import { expect } from 'vitest'
import { apply, differenceBetween, reverse } from '../../src/layout/difference'
import { readLayout, writeLayout } from '../../src/layout/file'
import { commit, emptyHistory, redo, undo } from '../../src/layout/history'
import { readHistory, writeHistory } from '../../src/layout/historyFile'
import type { Layout } from '../../src/layout/schema'

/** Read back from its own file a layout is the same, value by value. */
export const expectFileRoundTrip = (layout: Layout): void => {
  expect(readLayout(writeLayout(layout))).toEqual({ ok: true, layout })
}

const expectSharedParts = (a: Layout, b: Layout, changed: ReadonlySet<string>): void => {
  const parts = new Map(b.parts.map((part) => [part.id, part]))
  for (const part of a.parts) if (!changed.has(part.id)) expect(parts.get(part.id)).toBe(part)
}

/** Forth is the edit; back again is where it came from, and what the edit did not touch is the very same object. */
export const expectDifferenceLaws = (before: Layout, after: Layout): void => {
  const difference = differenceBetween(before, after)
  const forth = apply(before, difference)
  const back = apply(after, reverse(difference))
  expect(forth).toEqual(after)
  expect(back).toEqual(before)
  const touched = [...difference.added, ...difference.removed].map(({ part }) => part.id)
  const changed = new Set([...touched, ...difference.updated.map(([from]) => from.id)])
  expectSharedParts(before, back, changed)
  expectSharedParts(before, after, changed)
  for (const name of ['title', 'house', 'settings'] as const) expect(back[name]).toBe(before[name])
}

const expectHistoryLaws = (before: Layout, after: Layout): void => {
  const history = commit(emptyHistory, 'Try', before, after, ['before-1'], ['after-1'])
  const undone = undo(history, after)
  expect(undone?.layout).toEqual(before)
  expect(undone?.selection).toEqual(['before-1'])
  const redone = undone && redo(undone.history, undone.layout)
  expect(redone?.layout).toEqual(after)
  expect(redone?.selection).toEqual(['after-1'])
  expect(readHistory(writeHistory(history), after)).toEqual(history)
}

/** What holds for every edit whatever it does: undo, redo, the difference, the file, and that the old layout stays as it was. */
export const expectEditLaws = (layout: Layout, edit: (layout: Layout) => Layout): Layout => {
  const kept = structuredClone(layout)
  const after = edit(layout)
  expect(layout).toEqual(kept)
  expectDifferenceLaws(layout, after)
  expectFileRoundTrip(after)
  if (after !== layout) expectHistoryLaws(layout, after)
  return after
}
