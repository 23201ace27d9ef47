import { describe, expect, test } from 'vitest'
import { setPapers } from '../../src/layout/bayEdits'
import type { Edited } from '../../src/layout/edited'
import { movePartsBy } from '../../src/layout/edits'
import { readLayout, writeLayout } from '../../src/layout/file'
import { commit, emptyHistory, undo, type History } from '../../src/layout/history'
import { readHistory, writeHistory } from '../../src/layout/historyFile'
import { issuePapers } from '../../src/layout/issues'
import { broughtUp } from '../../src/layout/migrations'
import { MOST_VERSIONS } from '../../src/layout/papers'
import type { Layout } from '../../src/layout/schema'
import { dropVersion, freeVersionName, keepVersion, openPlan, renameVersion } from '../../src/layout/versions'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { scenarios } from '../support/scenarios'

const ok = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

const refused = (edited: Edited): string => (edited.ok ? '' : edited.sentence)

const sketch = (): Layout => bay('30 x 96 ft').row('Row 1', [60, 100]).post('Post', [115, 600]).layout()
const DAY = '2027-05-01'
const issue = (layout: Layout): Layout => ok(issuePapers(layout, { date: DAY, note: '', sheets: ['floor'] }))

/** Makes an edit and keeps it in a history. */
const worked = (
  at: { layout: Layout; history: History },
  edit: (layout: Layout) => Layout,
  label: string,
) => {
  const layout = edit(at.layout)
  return { layout, history: commit(at.history, label, at.layout, layout, [], []) }
}

describe('versions', () => {
  test('are kept, renamed and dropped by their names; no two have the same', () => {
    const kept = ok(keepVersion(sketch(), ' Wide aisles ', DAY))
    expect(kept.papers.versions).toMatchObject([{ name: 'Wide aisles', date: DAY }])
    expect(refused(keepVersion(kept, 'Wide aisles', DAY))).toMatch(
      /there is a version “Wide aisles” already/i,
    )
    expect(refused(keepVersion(kept, ' ', DAY))).toMatch(/needs a name/)
    const renamed = ok(renameVersion(kept, 'Wide aisles', 'Wider'))
    expect(renamed.papers.versions.map(({ name }) => name)).toEqual(['Wider'])
    expect(dropVersion(renamed, 'Wider').papers.versions).toEqual([])
    expect(dropVersion(renamed, 'nobody')).toBe(renamed)
  })

  test('are at most so many, and the sentence says what to do', () => {
    let layout = sketch()
    for (let n = 1; n <= MOST_VERSIONS; n += 1) layout = ok(keepVersion(layout, freeVersionName(layout), DAY))
    expect(layout.papers.versions.at(-1)?.name).toBe(`Version ${MOST_VERSIONS}`)
    expect(refused(keepVersion(layout, 'one more', DAY))).toMatch(/12 versions are kept already; drop one/i)
  })

  test('opened, one is the plan, but what is cut stays cut and papers stay', () => {
    const first = ok(keepVersion(sketch(), 'first', DAY))
    const moved = issue(movePartsBy(first, ['rack-row-1'], inches(12), 0))
    const cut = [{ stock: 'lumber-2x4', lengthMm: 1000, count: 2, marks: ['RS-p'] }]
    const sawn = { ...moved, bench: { ...moved.bench, cut } }
    const back = openPlan(sawn, sawn.papers.versions[0]!.plan)
    expect(back.parts).toEqual(first.parts)
    expect(back.bench.cut).toEqual(cut)
    expect(back.papers).toBe(sawn.papers)
    expect(back.settings.issue).toBe(2)
  })
})

describe('the file of a bay with kept plans', () => {
  test('reads back to the last letter', () => {
    const text = writeLayout(ok(keepVersion(issue(issue(sketch())), 'second', DAY)))
    const read = readLayout(text)
    expect(read.ok && writeLayout(read.layout)).toBe(text)
  })

  /** The sentence on a file where another value stands at a path such as `papers.issued.parts.0.racks`. */
  const broken = (path: string, value: unknown): string => {
    const file: unknown = JSON.parse(writeLayout(ok(keepVersion(issue(sketch()), 'second', DAY))))
    const keys = path.split('.')
    const at = keys.slice(0, -1).reduce<object>((inside, key) => Reflect.get(inside, key), file as object) // JSON of a record
    Reflect.set(at, keys.at(-1)!, value)
    const read = readLayout(JSON.stringify(file))
    return read.ok ? '' : read.sentence
  }

  test.each([
    [
      'papers.issued.parts.0.racks',
      4000,
      /the papers, the plan of the last issue, part 1, the rack row "Row 1": Racks.* is 4000; it can be/,
    ],
    [
      'papers.versions.0.plan.house.headroomMm',
      'high',
      /the papers, version 1, "second", the house: Headroom is "high"; it/,
    ],
    [
      'papers.versions.0.plan.parts.1.id',
      'rack-row-1',
      /In it, version "second": part 1 and part 2 have the same id, rack-row-1\./,
    ],
    [
      'papers.issued.parts.0.colour',
      'red',
      /the plan of the last issue, part 1, the rack row "Row 1" has a field that no layout has, "colour"/,
    ],
    [
      'papers.issues.1',
      { number: 1, date: DAY, note: '', sheets: [] },
      /issue 1 of the papers comes after issue 1; numbers must rise/,
    ],
  ])('says in one sentence what is wrong at %s', (path, value, sentence) => {
    const said = broken(path, value)
    expect(said).toMatch(sentence)
    expect(said).toMatch(/^This file was not opened\. In it, .*\. Your bay is untouched\.$/)
  })

  test('kept plans are brought up with the document that keeps them', () => {
    const titled = ({ name, ...rest }: Readonly<Record<string, unknown>>) => ({ ...rest, title: name })
    const old = {
      version: 1,
      name: 'now',
      papers: {
        issues: [],
        issued: { name: 'then' },
        before: null,
        versions: [{ name: 'v', date: DAY, plan: { name: 'kept' } }],
      },
    }
    expect(broughtUp(old, 1, [titled])).toEqual({
      version: 2,
      title: 'now',
      papers: {
        issues: [],
        issued: { title: 'then' },
        before: null,
        versions: [{ name: 'v', date: DAY, plan: { title: 'kept' } }],
      },
    })
  })
})

describe('the history of a bay with kept plans', () => {
  const acre = scenarios['sallow-flats-one-acre']!()

  test('ten changes of what a sheet is printed in do not write the acre ten times', () => {
    let at = { layout: issue(acre), history: emptyHistory }
    const planLetters = JSON.stringify(at.layout.papers.issued).length
    for (let n = 0; n < 10; n += 1) {
      const units = n % 2 === 0 ? ('metric' as const) : ('feet-inches' as const)
      at = worked(at, (l) => ok(setPapers(l, { choices: [{ sheet: 'saw-list', units }] })), `Units ${n}`)
    }
    const text = writeHistory(at.history)
    expect(text.length).toBeLessThan(planLetters + 20_000)
    const read = readHistory(text, at.layout)
    expect(read).toEqual(at.history)
    // One plan in memory too, whichever entry it is reached by.
    expect(read.done[0]?.difference.to.papers?.issued).toBe(at.layout.papers.issued)
  })

  test('undo gives back the papers before an issue, after a reload too', () => {
    const start = { layout: sketch(), history: emptyHistory }
    const first = worked(start, issue, 'Issue 1')
    const moved = worked(first, (l) => movePartsBy(l, ['rack-row-1'], inches(8), 0), 'Move')
    const second = worked(moved, issue, 'Issue 2')
    const read = readLayout(writeLayout(second.layout))
    if (!read.ok) throw new Error(read.sentence)
    const history = readHistory(writeHistory(second.history), read.layout)
    const back = undo(history, read.layout)!
    expect(back.layout.papers).toEqual(moved.layout.papers)
    expect(undo(undo(back.history, back.layout)!.history, first.layout)!.layout).toEqual(start.layout)
  })

  test.each([['99'], ['-1'], ['"x"']])('that names plan %s, which it has not, is dropped whole', (place) => {
    const { layout, history } = worked({ layout: sketch(), history: emptyHistory }, issue, 'Issue 1')
    const text = writeHistory(history).replace('"issued":0', `"issued":${place}`)
    expect(text).toContain(`"issued":${place}`)
    expect(readHistory(text, layout)).toEqual(emptyHistory)
  })
})
