import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { setCounter } from '../../../src/layout/bayEdits'
import { setPapers, setSettings, setBench } from '../../../src/layout/bayEdits'
import type { Edited } from '../../../src/layout/edited'
import { readLayout, writeLayout } from '../../../src/layout/file'
import { isAsIssued, issueNumber, issuePapers, issueWords } from '../../../src/layout/issues'
import { movePartsBy } from '../../../src/layout/edits'
import type { Layout } from '../../../src/layout/schema'
import { setField } from '../../../src/layout/setField'
import { sheets } from '../../../src/sheets'
import { changeNote } from '../../../src/sheets/change/changeNote'
import { onPaper } from '../../../src/sheets/onPaper'
import { counted } from '../../../src/model/table'
import { tableOf, tablesIn } from '../../../src/sheets/piece'
import type { Sheet } from '../../../src/sheets/sheet'
import { sheetState, withStates } from '../../../src/sheets/sheetStates'
import { inches } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const ok = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

const bare = scenarios['kestrel-bend-house-2']!()
const issued = ok(
  issuePapers(bare, { date: '2027-05-01', note: 'For the trench', sheets: ['floor', 'pegs'] }),
)
const n1 = bare.parts.find(({ name }) => name === 'N1')!.id

const statesOf = (layout: Layout) =>
  Object.fromEntries(
    sheets
      .filter(({ id }) => id !== 'change')
      .flatMap((sheet) => {
        const state = sheetState(sheet, onPaper(evaluate(layout)), options)
        return state ? [[sheet.id, state.state]] : []
      }),
  )

describe('an issue', () => {
  test('is numbered, and the next one after it; what is drawn between is a draft', () => {
    expect(issueWords(bare)).toBe('draft of 1')
    expect(issueWords(issued)).toBe('1')
    expect([bare, issued].map(issueNumber)).toEqual([1, 1])
    const moved = ok(setField(issued, n1, 'name', 'North 1'))
    expect(issueWords(moved)).toBe('draft of 2')
    expect(issueWords(ok(issuePapers(moved, { date: '2027-05-02', note: '', sheets: [] })))).toBe('2')
  })

  test('goes into the file and out of it to the last letter', () => {
    const text = writeLayout(issued)
    const read = readLayout(text)
    expect(read.ok && writeLayout(read.layout)).toBe(text)
    expect(read.ok && isAsIssued(read.layout)).toBe(true)
  })

  test('is not superseded by ticks of the saw hand, nor by another paper or units of a sheet', () => {
    const [piece] = evaluate(bare).cuts[0]!.lines
    const cut = [{ stock: 'lumber-2x4', lengthMm: piece!.lengthMm, count: 2, marks: [...piece!.marks] }]
    const ticked = ok(setBench(issued, { cut }))
    expect(isAsIssued(ticked)).toBe(true)
    expect(new Set(Object.values(statesOf(ticked)))).toEqual(new Set(['Current']))
    expect(isAsIssued(ok(setPapers(issued, { choices: [{ sheet: 'saw-list', units: 'metric' }] })))).toBe(
      true,
    )
  })
})

test('nothing changed: every sheet is current, and no note is due', () => {
  expect(new Set(Object.values(statesOf(issued)))).toEqual(new Set(['Current']))
  expect(changeNote.pieces(onPaper(evaluate(issued)), options)).toEqual([])
})

test('a row that is moved makes the floor sheet wrong and leaves the saw list alone', () => {
  const moved = movePartsBy(issued, [n1], inches(-8), 0)
  const states = statesOf(moved)
  expect(states).toMatchObject({ floor: 'Superseded', 'setting-out': 'Superseded', 'drill-stick': 'Current' })
  const note = tablesIn(changeNote.pieces(onPaper(evaluate(moved)), options))
  const rows = note.find(({ id }) => id === 'parts')!.rows.map(({ cells }) => cells.map(({ text }) => text))
  expect(rows).toContainEqual(['N1', 'Moved 8" west', `5' 3" east, 34' 2" north`, `4' 7" east, 34' 2" north`])
})

test('another price makes the shop list wrong and nothing else', () => {
  const taxed = ok(setCounter(issued, { tax: 0.08 }))
  const states = statesOf(taxed)
  expect(Object.entries(states).filter(([, state]) => state !== 'Current')).toEqual([['shop', 'Superseded']])
})

test('what differs on a sheet is told by the thing itself: the item, not the aisle that it stands in', () => {
  const shorter = ok(setField(issued, n1, 'racks', 2))
  const shop = sheetState(
    sheets.find(({ id }) => id === 'shop')!,
    onPaper(evaluate(shorter)),
    options,
  )
  const names = shop!.changes.flatMap(({ rows }) => rows.map(({ name }) => name))
  expect(names).toContain('Gutter joiner, 5 in roof gutter')
  expect(names).not.toContain('Roof gutter')
})

test('pieces that are cut and fit no more are told with what can be made of them', () => {
  const [riser] = evaluate(bare).cuts[0]!.lines.filter(({ marks }) => marks.includes('RS-p'))
  const cut = [{ stock: 'lumber-2x4', lengthMm: riser!.lengthMm, count: 12, marks: [...riser!.marks] }]
  const sawn = ok(setBench(issued, { cut }))
  const shorter = bare.parts
    .filter(({ kind }) => kind === 'rack-row')
    .reduce((layout, { id }) => ok(setField(layout, id, 'riserMm', riser!.lengthMm - inches(2))), sawn)
  const text = changeNote
    .pieces(onPaper(evaluate(shorter)), options)
    .flatMap((piece) => (piece.as === 'words' ? [piece.text] : []))
    .join('\n')
  expect(text).toMatch(/12 cut risers are 2" too long for the bay as it is now: they can be re-cut\./)
})

test('a changed setting is told by its name, before and after', () => {
  const wider = ok(setSettings(issued, { cartMm: inches(30) }))
  const note = tablesIn(changeNote.pieces(onPaper(evaluate(wider)), options))
  const rows = note.find(({ id }) => id === 'parts')!.rows.map(({ cells }) => cells.map(({ text }) => text))
  expect(rows).toEqual([['The bay', 'Cart width', `2' 0"`, `2' 6"`]])
})

/** What the crew is told when the second set goes out: the plan is as it was issued, and the note tells what that set changed. */
test('the note goes out with the set that it is about', () => {
  const wider = ok(setField(issued, n1, 'riserMm', inches(70)))
  const second = ok(
    issuePapers(wider, { date: '2027-05-09', note: 'Boards came short', sheets: ['saw-list'] }),
  )
  const plan = onPaper(evaluate(second))
  expect(plan.issued?.number).toBe(2)
  expect(plan.since?.number).toBe(1)
  const pieces = changeNote.pieces(
    withStates(plan, sheets, () => options),
    options,
  )
  const text = pieces.flatMap((piece) => (piece.as === 'words' ? [piece.text] : []))
  expect(text.slice(0, 2)).toEqual([
    'What has changed since issue 1 of 2027-05-01.',
    'Why: Boards came short',
  ])
  expect(text[2]).toMatch(/^Throw away issue 1 of .*\bSL\b.*\bDS\b/)
  expect(tablesIn(pieces).map(({ id }) => id)).toEqual(expect.arrayContaining(['sheets', 'parts', 'levels']))
  // A plan whose second issue is undone is told against the first again.
  expect(onPaper(evaluate(wider)).since).toBeUndefined()
})

test('what is alike of several rows is said once, with all their names', () => {
  const shorter = bare.parts
    .filter(({ kind }) => kind === 'rack-row')
    .reduce((layout, { id }) => ok(setField(layout, id, 'riserMm', inches(69))), issued)
  const note = tablesIn(changeNote.pieces(onPaper(evaluate(shorter)), options))
  const rows = note.find(({ id }) => id === 'parts')!.rows.map(({ cells }) => cells.map(({ text }) => text))
  expect(rows).toEqual([['N1, S1, N2, S2, N3, S3', 'Riser length', 'As long as the levels ask', `5' 9"`]])
})

/** Another start of the solver gives other last digits; nobody throws a paper away for those. */
test('papers are superseded by what they say, not by digits that nobody reads', () => {
  const [before, after] = [evaluate(bare), evaluate(issued)]
  const sheet = (value: number, text: string): Sheet => ({
    ...changeNote,
    id: 'test',
    pieces: ({ now }) => {
      const cut = now === before ? counted(1, '1"') : counted(value, text)
      const columns = [{ key: 'cutMm', title: 'Cut', unit: 'mm' as const }]
      return [tableOf({ id: 't', title: 'T', columns, rows: [{ key: 'a', cells: [cut] }] })]
    },
  })
  const plan = { now: after, issued: { number: 1, dateText: '', was: before } }
  expect(sheetState(sheet(1 + 1e-9, '1"'), plan, options)?.state).toBe('Current')
  expect(sheetState(sheet(1.4, '1-7/16"'), plan, options)).toMatchObject({
    state: 'Superseded',
    changes: [{ rows: [{ key: 'a', cells: [{ column: 'Cut', from: '1"', to: '1-7/16"' }] }] }],
  })
})

test('no line of a note reads the same before and after', () => {
  const note = tablesIn(
    changeNote.pieces(onPaper(evaluate(movePartsBy(issued, [n1], inches(8), 0))), options),
  )
  const told = note.flatMap(({ columns, rows }) =>
    rows.map(({ cells }) =>
      ['before', 'after'].map((key) => cells[columns.findIndex((c) => c.key === key)]?.text),
    ),
  )
  for (const [before, after] of told) if (before !== undefined) expect(after).not.toBe(before)
})
