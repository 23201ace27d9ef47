import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { reportOf, tablesOf } from '../../src/report/report'
import { valuesOf } from '../../src/report/reportJson'
import { reportText } from '../../src/report/reportText'
import { failingOf, USUAL_FAILS } from '../../src/report/failing'
import { toPoundsForce } from '../../src/units/force'
import { bay } from '../support/bay'

const plan = evaluate(
  bay('40 x 60 ft')
    .row('A', [100, 100])
    .row('B', [300, 100], { racks: 1, midPairs: 0, bracing: 'across' })
    .layout(),
)
const report = reportOf(plan, 'feet-inches')

const rowsOf = (id: string, part: string) => {
  const table = tablesOf(report).find((each) => each.id === id)!
  return table.rows.map((row) => valuesOf(table, row)).filter((row) => row['part'] === part)
}

const numbers = (rows: readonly Record<string, unknown>[], key: string): number[] =>
  rows.map((row) => Number(row[key]))

describe('the tables of strength', () => {
  test('risers of a row carry its towers, bars, rails and laterals, and nothing else', () => {
    // 96 towers of 25 lb are 2,400 lb. 24 bars of 57 in and 2 rails of 29' 11-3/4" at 0.46 lb/ft are 52.4 and 27.6 lb, 4 sleeves of
    // 8-1/4 in at 0.67 lb/ft 1.8 lb (Steel Tube Institute, EMT Weights and Dimensions): 2,482 lb; water and pipe of two laterals
    // of 30 ft on top, some 0.3 lb/ft each.
    const sum = numbers(rowsOf('reactions', 'rack-row-1'), 'fullN').reduce((total, n) => total + n, 0)
    expect(toPoundsForce(sum)).toBeGreaterThan(2482)
    expect(toPoundsForce(sum)).toBeLessThan(2482 + 2 * 30 * 0.6)
  })

  test('spans lie end to end along each rail', () => {
    for (const rail of ['left', 'right']) {
      const spans = rowsOf('railSpans', 'rack-row-1').filter((row) => row['rail'] === rail)
      const [from, to] = [numbers(spans, 'fromMm'), numbers(spans, 'toMm')]
      // 13 pairs of risers, 12 spans, and past the end risers an overhang each.
      expect(spans.map(({ is }) => is).filter((is) => is === 'span').length).toBe(12)
      from.slice(1).forEach((start, index) => expect(start).toBeCloseTo(to[index]!, 6))
    }
  })

  test('a rail that folds has no sag', () => {
    const [span] = rowsOf('railSpans', 'rack-row-2').filter(({ is }) => is === 'span')
    expect(span).toMatchObject({ state: 'Too long', sagMm: null })
    expect(span!['stressMpa']).toBeGreaterThan(206.8)
    for (const within of rowsOf('railSpans', 'rack-row-1')) expect(within['sagMm']).not.toBeNull()
  })

  test('nor has it in the table of screens', () => {
    const [sag] = rowsOf('strength', 'rack-row-2').filter(({ screen }) => screen === 'rail-sag')
    expect(sag).toMatchObject({ measured: null, measuredUnit: 'mm', screenedFor: 'Sag of a rail' })
    for (const { screen, measured } of rowsOf('strength', 'rack-row-1'))
      if (screen === 'rail-sag' || screen === 'bar-sag') expect(measured).toBeGreaterThan(0)
  })

  test('a refused riser has no share', () => {
    const refused = rowsOf('strength', 'rack-row-2').filter(({ screen }) => screen === 'riser-slenderness')
    expect(refused.map(({ state, usedShare, limit }) => [state, usedShare, limit])).toEqual([
      ['Too long', null, 50],
    ])
  })

  test('stance has a row for each state of load, lightest where nothing hangs', () => {
    const tips = rowsOf('stance', 'rack-row-1')
    expect(new Set(tips.map(({ under }) => under))).toEqual(new Set(['empty', 'full', 'one-side']))
    const weight = (under: string) =>
      numbers(
        tips.filter((row) => row['under'] === under),
        'weightN',
      )[0]!
    expect(weight('empty')).toBeLessThan(weight('one-side'))
    expect(toPoundsForce(weight('full') - weight('empty'))).toBeCloseTo(2400, 6)
  })

  test('a terminal has the worst of each row and all that is not within', () => {
    const text = reportText(report, failingOf(plan, USUAL_FAILS))
    expect(text).toContain('Strength: screened, not rated')
    expect(text).toMatch(/B +RS-\w +Slenderness of a riser +Too long +refused/)
    expect(text).not.toMatch(/A .*Wood left beside a hole/)
    expect(text).toMatch(/B +RL +Sag of a rail +Too long +over 10 x +folds/)
  })
})
