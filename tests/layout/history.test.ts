import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply, differenceBetween, isNothing } from '../../src/layout/difference'
import { copyParts, movePartsBy, removeParts, turnParts } from '../../src/layout/edits'
import { commit, emptyHistory, redo, undo, type History } from '../../src/layout/history'
import { readHistory, writeHistory } from '../../src/layout/historyFile'
import { readLayout, writeLayout } from '../../src/layout/file'
import type { Layout } from '../../src/layout/schema'
import { arbitraryLayout, LAYOUT_SEED } from '../support/arbitraryLayout'
import { bay } from '../support/bay'
import { expectDifferenceLaws } from '../support/laws'

const sketch = (): Layout =>
  bay('30 x 96 ft').row('Row 1', [60, 100]).row('Row 2', [170, 100]).post('Post', [115, 600]).layout()

describe('the difference of two layouts', () => {
  test('is nothing between a layout and itself', () => {
    const layout = sketch()
    expect(isNothing(differenceBetween(layout, layout))).toBe(true)
    expect(apply(layout, differenceBetween(layout, layout))).toBe(layout)
  })

  test('names only what changed', () => {
    const before = sketch()
    const { added, removed, updated, to } = differenceBetween(
      before,
      movePartsBy(before, ['rack-row-2'], 5, 0),
    )
    expect([added, removed, to]).toEqual([[], [], {}])
    expect(updated.map(([from]) => from)).toEqual([before.parts[1]])
  })

  test('puts a removed part back between the same neighbours', () => {
    const before = sketch()
    expectDifferenceLaws(before, removeParts(before, ['rack-row-2']))
    expectDifferenceLaws(before, removeParts(before, ['rack-row-1', 'obstacle-1']))
  })

  test('keeps another order of the same parts', () => {
    const before = sketch()
    expectDifferenceLaws(before, { ...before, parts: before.parts.toReversed() })
  })

  test('holds between any two layouts, related or not', () => {
    fc.assert(
      fc.property(arbitraryLayout, arbitraryLayout, (before, other) => {
        const after = { ...other, format: before.format }
        expect(apply(before, differenceBetween(before, after))).toEqual(after)
        expect(apply(after, differenceBetween(after, before))).toEqual(before)
      }),
      { seed: LAYOUT_SEED, numRuns: 100 },
    )
  })
})

/** A small bay that has been worked on: each layout with the history that led to it. */
const worked = (): { layouts: Layout[]; history: History } => {
  const edits: readonly [string, (layout: Layout) => Layout][] = [
    ['Copy Row 1', (l) => copyParts(l, ['rack-row-1'], 0, 9000)],
    ['Move 2 rows', (l) => movePartsBy(l, ['rack-row-1', 'rack-row-3'], 254, 0)],
    ['Turn Row 2', (l) => turnParts(l, ['rack-row-2'])],
    ['Delete Post', (l) => removeParts(l, ['obstacle-1'])],
  ]
  const layouts = [sketch()]
  let history = emptyHistory
  for (const [label, edit] of edits) {
    const before = layouts.at(-1)!
    const after = edit(before)
    history = commit(history, label, before, after, ['rack-row-1'], [label])
    layouts.push(after)
  }
  return { layouts, history }
}

describe('undo and redo', () => {
  test('walk back and forth through everything, with labels and selections', () => {
    const { layouts, history } = worked()
    let [at, now] = [layouts.at(-1)!, history]
    const labels: string[] = []
    for (let step = undo(now, at); step; step = undo(now, at)) {
      labels.push(step.label)
      expect(step.selection).toEqual(['rack-row-1'])
      ;[at, now] = [step.layout, step.history]
      expect(at).toEqual(layouts[layouts.length - 1 - labels.length])
    }
    expect(labels).toEqual(['Delete Post', 'Turn Row 2', 'Move 2 rows', 'Copy Row 1'])
    for (let step = redo(now, at); step; step = redo(now, at)) {
      expect(step.selection).toEqual([step.label])
      ;[at, now] = [step.layout, step.history]
    }
    expect(at).toEqual(layouts.at(-1))
    expect(now).toEqual(history)
  })

  test('at the ends there is nothing more', () => {
    expect(undo(emptyHistory, sketch())).toBeUndefined()
    expect(redo(emptyHistory, sketch())).toBeUndefined()
  })

  test('a new edit ends what could be done again', () => {
    const { layouts, history } = worked()
    const back = undo(history, layouts.at(-1)!)!
    const moved = movePartsBy(back.layout, ['rack-row-1'], 100, 0)
    const next = commit(back.history, 'Move Row 1', back.layout, moved, [], [])
    expect(next.undone).toEqual([])
    expect(next.done.map(({ label }) => label)).toEqual([
      'Copy Row 1',
      'Move 2 rows',
      'Turn Row 2',
      'Move Row 1',
    ])
  })

  test('an edit that changes nothing is no entry', () => {
    const layout = sketch()
    const { history } = worked()
    expect(commit(history, 'Move nothing', layout, layout, [], [])).toBe(history)
    expect(commit(history, 'Move nothing', layout, { ...layout }, [], [])).toBe(history)
  })
})

describe('a history that was kept', () => {
  const reloaded = (layout: Layout): Layout => {
    const read = readLayout(writeLayout(layout))
    if (!read.ok) throw new Error(read.sentence)
    return read.layout
  }

  test('undoes and redoes after a reload', () => {
    const { layouts, history } = worked()
    const half = undo(history, layouts.at(-1)!)!
    const layout = reloaded(half.layout)
    const kept = readHistory(writeHistory(half.history), layout)
    expect(kept).toEqual(half.history)
    expect(undo(kept, layout)?.layout).toEqual(layouts.at(-3))
    expect(redo(kept, layout)?.layout).toEqual(layouts.at(-1))
  })

  test('of another layout is dropped', () => {
    const { layouts, history } = worked()
    expect(readHistory(writeHistory(history), layouts[1]!)).toEqual(emptyHistory)
    const elsewhere = { ...layouts.at(-1)!, title: 'Another', parts: [] }
    expect(readHistory(writeHistory(history), elsewhere)).toEqual(emptyHistory)
  })

  test.each(['', 'null', '{}', '[]', '{"done":[],"undone":3}', '{"done":[{}],"undone":[]}', '\u0000'])(
    'damaged as %j it is dropped',
    (text) => {
      expect(readHistory(text, sketch())).toEqual(emptyHistory)
    },
  )

  test('that leads through a house whose walls cross is dropped', () => {
    const after = sketch()
    const corners = after.house.outline
    const crossed = { ...after.house, outline: [corners[0]!, corners[2]!, corners[1]!, corners[3]!] }
    const history = commit(emptyHistory, 'Bend the house', { ...after, house: crossed }, after, [], [])
    expect(readHistory(writeHistory(history), after)).toEqual(emptyHistory)
  })

  test('with any one character changed it still never throws, and what it leads to can be saved', () => {
    const { layouts, history } = worked()
    const text = writeHistory(history)
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ minLength: 1, maxLength: 1 }), (index, character) => {
        const damaged = text.slice(0, index) + character + text.slice(index + 1)
        const step = undo(readHistory(damaged, layouts.at(-1)!), layouts.at(-1)!)
        if (step) expect(readLayout(writeLayout(step.layout)).ok).toBe(true)
      }),
      { seed: LAYOUT_SEED, numRuns: 300 },
    )
  })
})
