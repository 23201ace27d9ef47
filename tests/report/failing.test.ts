import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Judged } from '../../src/evaluate/evaluation'
import { acceptFinding } from '../../src/layout/bayEdits'
import type { Layout } from '../../src/layout/schema'
import { failingOf, failWords, USUAL_FAILS } from '../../src/report/failing'
import { reportText } from '../../src/report/reportText'
import { reportOf } from '../../src/report/report'
import { scenarios } from '../support/scenarios'

const dairy = scenarios['old-dairy-corner']!()

const accepting = (layout: Layout, plan: Judged, state: string): Layout =>
  plan.findings
    .filter((finding) => finding.state === state)
    .reduce((edited, { key }) => {
      const done = acceptFinding(edited, key, 'We live with it', 'M')
      if (!done.ok) throw new Error(done.sentence)
      return done.layout
    }, layout)

describe('what fails a plan', () => {
  const plan = evaluate(dairy)

  test('is what is open of the list, told by state', () => {
    const count = (state: string) => plan.findings.filter((finding) => finding.state === state).length
    expect(failingOf(plan, USUAL_FAILS).counts).toEqual([
      { state: 'Clash', count: count('Clash'), pieces: 0 },
      { state: 'Starved', count: count('Starved'), pieces: 0 },
    ])
    expect(failingOf(plan, ['Spills'])).toEqual({ on: ['Spills'], counts: [], accepted: 0 })
  })

  test('is not what is accepted, and the words say so', () => {
    const lived = evaluate(accepting(dairy, plan, 'Starved'))
    const failing = failingOf(lived, ['Starved'])
    expect(failing).toEqual({ on: ['Starved'], counts: [], accepted: 2 })
    expect(failWords(failing)).toBe('Nothing is Starved. 2 findings of such a state are accepted.')
    expect(failWords(failingOf(lived, USUAL_FAILS))).toMatch(
      /^This plan fails: \d+ Clash\. 2 more are accepted and fail nothing\.$/,
    )
    expect(reportText(reportOf(lived, 'metric'), failing)).toContain('accepted: We live with it')
  })

  test('is a piece that no stock is long enough for', () => {
    const [first, ...rest] = plan.cuts
    const long = { ...plan, cuts: [{ ...first!, tooLong: [{ ...first!.lines[0]!, count: 3 }] }, ...rest] }
    expect(failWords(failingOf(long, ['Too long']))).toBe('This plan fails: 3 pieces too long.')
    expect(failingOf(plan, ['Too long']).counts).toEqual([])
  })

  test('is a rail that is too long, told apart from pieces', () => {
    const [first] = plan.findings
    const rail = { ...first!, key: 'rail-span-max x', subject: 'strength', state: 'Too long' } as const
    const [list, ...rest] = plan.cuts
    const cuts = [{ ...list!, tooLong: [{ ...list!.lines[0]!, count: 1 }] }, ...rest]
    const both = failingOf({ ...plan, cuts, findings: [rail] }, ['Too long', 'Tips'])
    expect(both.counts).toEqual([{ state: 'Too long', count: 2, pieces: 1 }])
    expect(failWords(both)).toBe('This plan fails: 1 piece too long, 1 Too long.')
    const tips = { ...rail, subject: 'stance', state: 'Tips' } as const
    expect(failWords(failingOf({ ...plan, findings: [tips] }, USUAL_FAILS))).toBe('This plan fails: 1 Tips.')
  })
})
