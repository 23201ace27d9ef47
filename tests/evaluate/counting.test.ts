import { afterEach, describe, expect, test, vi } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { commit, emptyHistory, redo, undo } from '../../src/layout/history'
import { movePartsBy } from '../../src/layout/edits'
import type { Layout } from '../../src/layout/schema'
import { setField } from '../../src/layout/setField'
import { kinds } from '../../src/parts'
import { inches } from '../../src/units/length'
import { scenarios } from '../support/scenarios'

/** How often each kind was derived and drawn while a layout was evaluated, by the ids of the parts. */
const counted = (layout: Layout) => {
  // The registry's kinds are one union; a spy needs to know no more of each than that it derives and draws.
  const spied = kinds as unknown as readonly Record<'derive' | 'draw', (part: { id: string }) => unknown>[]
  const derives = spied.map((kind) => vi.spyOn(kind, 'derive'))
  const draws = spied.map((kind) => vi.spyOn(kind, 'draw'))
  evaluate(layout)
  const ids = (spies: typeof derives) =>
    spies.flatMap((spy) => spy.mock.calls.map(([part]) => part.id)).sort()
  const result = { derived: ids(derives), drawn: ids(draws) }
  vi.restoreAllMocks()
  return result
}

const nothing = { derived: [], drawn: [] }

const idsOf = (layout: Layout, kind: string): string[] =>
  layout.parts.filter((part) => part.kind === kind).map(({ id }) => id)

afterEach(() => {
  vi.restoreAllMocks()
})

const bays = ['kestrel-bend-house-2', 'sallow-flats-one-acre'] as const

describe.each(bays)('%s', (id) => {
  const start = scenarios[id]!()
  evaluate(start)
  const [row = ''] = idsOf(start, 'rack-row')
  const [door = ''] = idsOf(start, 'opening')

  test('the first time every part is derived and drawn, once', () => {
    const fresh = scenarios[id]!()
    const all = fresh.parts.map((part) => part.id).sort()
    expect(counted(fresh)).toEqual({ derived: all, drawn: all })
  })

  test('unchanged, nothing is derived or drawn', () => {
    expect(counted(start)).toEqual(nothing)
  })

  test('one row moved, one row is derived and drawn', () => {
    expect(counted(movePartsBy(start, [row], inches(1), 0))).toEqual({ derived: [row], drawn: [row] })
  })

  test('one door moved, one door is derived and drawn', () => {
    expect(counted(movePartsBy(start, [door], inches(1), 0))).toEqual({ derived: [door], drawn: [door] })
  })

  test('another kerf, and all parts are derived once, since sites tell them of the saw', () => {
    const other = { ...start, settings: { ...start.settings, kerfMm: inches(1 / 4) } }
    const all = start.parts.map((part) => part.id).sort()
    expect(counted(other).derived).toEqual(all)
    expect(counted(other)).toEqual(nothing)
  })
})

describe('in the sample bay', () => {
  const start = scenarios['kestrel-bend-house-2']!()
  const rows = idsOf(start, 'rack-row')
  const [first = ''] = rows

  test('a step of the drag, undone and done again, derives each of both bays once', () => {
    const moved = movePartsBy(start, [first], 0, inches(2))
    evaluate(start)
    expect(counted(moved).derived).toEqual([first])
    const history = commit(emptyHistory, 'Move N1', start, moved, [], [])
    const undone = undo(history, moved)!
    expect(counted(undone.layout)).toEqual(nothing)
    expect(counted(redo(undone.history, undone.layout)!.layout)).toEqual(nothing)
  })

  test('a setting that no part is derived from derives nothing', () => {
    evaluate(start)
    const wider = { ...start, settings: { ...start.settings, workAisleMm: inches(40) } }
    expect(counted(wider)).toEqual(nothing)
  })

  test('another title derives nothing', () => {
    evaluate(start)
    expect(counted({ ...start, title: 'House 3' })).toEqual(nothing)
  })

  test('a row whose gutters fall more sets the tips of all rows, which are derived once', () => {
    evaluate(start)
    const edited = setField(start, first, 'gutterFall', 8)
    expect(edited.ok).toBe(true)
    const { derived } = counted(edited.ok ? edited.layout : start)
    expect(derived).toEqual(start.parts.map(({ id }) => id).sort())
  })
})
