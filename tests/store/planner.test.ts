import { describe, expect, test } from 'vitest'
import { findingsOf } from '../../src/evaluate/8-checks'
import { movePartsBy, removeParts } from '../../src/layout/edits'
import { createPlanner } from '../../src/store/planner'
import { firstTry } from '../support/firstTry'

const rowOf = (planner: ReturnType<typeof createPlanner>) =>
  planner.store.getState().layout.parts.find(({ kind }) => kind === 'rack-row')!.id

describe('planner', () => {
  test('a commit is one entry, and undo gives layout and selection back by reference', () => {
    const planner = createPlanner(firstTry())
    const before = planner.store.getState().layout
    const row = rowOf(planner)
    planner.select([row])
    planner.commit('Move row', (layout) => movePartsBy(layout, [row], 254, 0))
    expect(planner.store.getState().history.done.map(({ label }) => label)).toEqual(['Move row'])
    planner.select([])
    planner.undo()
    const after = planner.store.getState()
    expect(after.layout).toEqual(before)
    expect(after.selection).toEqual([row])
    planner.redo()
    expect(planner.store.getState().layout).not.toEqual(before)
  })

  test('an opened finding stays open while one of its parts is selected, and no longer', () => {
    const planner = createPlanner(firstTry())
    const { evaluation, layout } = planner.store.getState()
    const { key, parts } = findingsOf(evaluation.bay).find((finding) => finding.parts.length > 0)!
    const other = layout.parts.find(({ id }) => !parts.includes(id))!
    const openAfter = (selected: readonly string[]) => {
      planner.set({ finding: key })
      planner.select(selected)
      return planner.store.getState().finding
    }
    expect([openAfter(parts), openAfter([parts[0]!, other.id])]).toEqual([key, key])
    expect([openAfter([other.id]), openAfter([])]).toEqual([undefined, undefined])
  })

  test('a preview is evaluated and never kept', () => {
    const planner = createPlanner(firstTry())
    const { layout, evaluation } = planner.store.getState()
    const row = rowOf(planner)
    planner.preview((now) => movePartsBy(now, [row], 100, 0))
    expect(planner.store.getState().layout).toBe(layout)
    expect(planner.store.getState().evaluation.layout).not.toBe(layout)
    planner.preview(undefined)
    expect(planner.store.getState().preview).toBeUndefined()
    expect(planner.store.getState().evaluation.bay.levels).toEqual(evaluation.bay.levels)
    expect(planner.store.getState().history.done).toHaveLength(0)
  })

  test('what is undone and done again is said, and said anew each time', () => {
    const planner = createPlanner(firstTry())
    const row = rowOf(planner)
    planner.commit('Move row', (layout) => movePartsBy(layout, [row], 254, 0))
    planner.undo()
    const { said } = planner.store.getState()
    expect(said.words).toBe('Undone: Move row')
    planner.redo()
    expect(planner.store.getState().said.words).toBe('Done again: Move row')
    planner.undo()
    expect(planner.store.getState().said).toEqual({ words: said.words, times: said.times + 2 })
    planner.say('')
    expect(planner.store.getState().said.words).toBe(said.words)
  })

  test('a commit puts away what was said, but not what went wrong', () => {
    const planner = createPlanner(firstTry())
    const row = rowOf(planner)
    const noticeAfter = (tone: 'said' | 'trouble', byMm: number) => {
      planner.set({ notice: { tone, text: 'Read me.' } })
      planner.commit('Move row', (now) => movePartsBy(now, [row], byMm, 0))
      return planner.store.getState().notice?.tone
    }
    expect([noticeAfter('said', 254), noticeAfter('trouble', -254)]).toEqual([undefined, 'trouble'])
  })

  test('an edit that changes nothing makes no entry', () => {
    const planner = createPlanner(firstTry())
    planner.commit('Nothing', (layout) => layout)
    expect(planner.store.getState().history.done).toHaveLength(0)
  })

  test('a part that is gone leaves the selection', () => {
    const planner = createPlanner(firstTry())
    const row = rowOf(planner)
    planner.select([row])
    planner.commit('Delete row', (layout) => removeParts(layout, [row]))
    expect(planner.store.getState().selection).toEqual([])
  })

  test('opening another bay starts its own history', () => {
    const planner = createPlanner(firstTry())
    const row = rowOf(planner)
    planner.commit('Move row', (layout) => movePartsBy(layout, [row], 254, 0))
    planner.open(firstTry())
    expect(planner.store.getState().history.done).toHaveLength(0)
    planner.undo()
    expect(planner.store.getState().layout).toEqual(firstTry())
  })
})
