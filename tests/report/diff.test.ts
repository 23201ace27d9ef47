import { describe, expect, test } from 'vitest'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { evaluate } from '../../src/evaluate/evaluate'
import { planSums } from '../../src/evaluate/compare/sums'
import { movePartsBy } from '../../src/layout/edits'
import { writeLayout } from '../../src/layout/file'
import type { Layout } from '../../src/layout/schema'
import { provedPlan } from '../../src/report/proved'
import { diffAnswer } from '../../src/report/diff'
import { inches } from '../../src/units/length'
import { scenarios } from '../support/scenarios'

const command = { does: 'diff', before: 'a.json', after: 'b.json', out: undefined, units: undefined } as const

const diff = (before: Layout, after: Layout, format: 'text' | 'json') =>
  diffAnswer(
    { ...command, format },
    { name: 'a.json', text: writeLayout(before) },
    { name: 'b.json', text: writeLayout(after) },
  )

const leanTo = scenarios['lintel-lane-lean-to']!()
const row = leanTo.parts.find(({ kind }) => kind === 'rack-row')!

/** The same bay without its row: what differs is what the row brings. */
const bare: Layout = { ...leanTo, parts: leanTo.parts.filter(({ id }) => id !== row.id) }

interface Counted {
  readonly key: string
  readonly stock: string
  readonly before: number
  readonly after: number
}

describe('what differs', () => {
  test('of a plan from itself is nothing, in words and in numbers', async () => {
    const { print, code } = await diff(leanTo, leanTo, 'text')
    expect(code).toBe(0)
    expect(print).toContain('Nothing differs.')
    const json = JSON.parse((await diff(leanTo, leanTo, 'json')).print) as object
    expect(json).toMatchObject({
      format: 'kerf-and-fall/report',
      version: 1,
      of: 'difference',
      before: { file: 'a.json', title: leanTo.title },
      isAlike: true,
      parts: [],
      pieces: [],
      sums: [],
    })
  })

  test('of a bay with its row from one without is the row, its pieces and its money', async () => {
    const found = JSON.parse((await diff(bare, leanTo, 'json')).print) as {
      parts: readonly object[]
      pieces: readonly Counted[]
      sums: readonly Counted[]
    }
    expect(found.parts).toEqual([{ part: row.id, name: row.name, kind: 'rack-row', what: 'added' }])
    const lumber = found.pieces.filter(({ stock }) => stock === 'lumber-2x4')
    const sticks = beforeChecks(leanTo).bay.built.flatMap((built) =>
      built.sticks.filter(({ stock }) => stock === 'lumber-2x4'),
    )
    // Whatever lumber the bay has is the row's.
    expect(lumber.reduce((sum, { before, after }) => sum + after - before, 0)).toBe(sticks.length)
    const [was, is] = [
      planSums(await provedPlan(evaluate(bare))),
      planSums(await provedPlan(evaluate(leanTo))),
    ]
    for (const { key, before, after } of found.sums) {
      if (key !== 'boughtCents') continue
      expect([before, after]).toEqual([was.boughtCents, is.boughtCents])
    }
    expect(found.sums.find(({ key }) => key === 'towers')).toMatchObject({ before: 0, after: 12 })
  })

  test('of a row that is moved is how far, and words have it in the reader’s units', async () => {
    const after = movePartsBy(leanTo, [row.id], inches(2), 0)
    expect((await diff(leanTo, after, 'text')).print).toMatch(/Moved 2" east/)
    expect((await diff(after, leanTo, 'text')).print).toMatch(/Moved 2" west/)
  })

  test('is refused where a file is none, in one sentence', async () => {
    const answer = await diffAnswer(
      { ...command, format: 'text' },
      { name: 'a.json', text: '{}' },
      { name: 'b.json', text: writeLayout(leanTo) },
    )
    expect(answer).toEqual({
      print: '',
      files: [],
      note: 'a.json: this file is JSON, but not a Kerf & Fall layout.',
      code: 2,
    })
  })

  test('is written into a folder where one is named', async () => {
    const answer = await diffAnswer(
      { ...command, format: 'json', out: 'x' },
      { name: 'a.json', text: writeLayout(leanTo) },
      { name: 'b.json', text: writeLayout(leanTo) },
    )
    expect(answer.files.map(({ name }) => name)).toEqual(['difference.json'])
    expect(answer.print).toBe('')
  })
})
