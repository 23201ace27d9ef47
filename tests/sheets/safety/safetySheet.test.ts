import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { emptyBay } from '../../../src/layout/empty'
import { hazardsOf } from '../../../src/sheets/hazards'
import { pagesOf, paperFor } from '../../../src/sheets/pagesOf'
import { tablesIn } from '../../../src/sheets/piece'
import { safetySheet } from '../../../src/sheets/safety/safetySheet'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { scenarios } from '../../support/scenarios'

const optionsFor = (family: 'inch' | 'metric'): SheetOptions => ({
  paper: paperFor(safetySheet, family),
  orientation: 'auto',
  scale: 'fit',
  units: family === 'inch' ? 'feet-inches' : 'metric',
  dateText: '2027-05-01',
  issue: '1',
})

describe.each(Object.keys(scenarios))('the safety sheet of %s', (name) => {
  const now = evaluate(scenarios[name]!())
  const plan = { now, issued: undefined }

  test.each<'inch' | 'metric'>(['inch', 'metric'])('is one leaf, both sides, on %s paper', (family) => {
    expect(pagesOf(safetySheet, plan, optionsFor(family)).length).toBeLessThanOrEqual(2)
  })

  test('has every hazard once, grouped by where one stands', () => {
    const [table] = tablesIn(safetySheet.pieces(plan, optionsFor('inch')))
    const rows = table!.rows.map(({ key }) => key)
    expect(rows.toSorted()).toEqual(
      hazardsOf(now, 'feet-inches')
        .map(({ key }) => key)
        .toSorted(),
    )
    const stands = table!.rows.map(({ cells }) => cells[0]!.text)
    const changes = stands.filter((stand, index) => stand !== stands[index - 1])
    expect(new Set(changes).size).toBe(changes.length)
    expect(changes.map((stand) => Number(stand.split(' ')[0]))).toEqual(changes.map((_, index) => index + 1))
  })

  test('has lines for who to call and for the crew', () => {
    const labels = safetySheet
      .pieces(plan, optionsFor('inch'))
      .flatMap((piece) => (piece.as === 'blanks' ? piece.labels : []))
    expect(labels).toContain('Emergency number')
    expect(labels).toContain('Electrician')
    expect(labels.join()).toMatch(/Call before you dig/)
    expect(labels.filter((label) => label === 'Seen and understood').length).toBeGreaterThan(1)
  })
})

test('an empty bay has nothing to mind', () => {
  const plan = { now: evaluate(emptyBay(5000, 8000, 'Empty')), issued: undefined }
  expect(safetySheet.pieces(plan, optionsFor('inch'))).toEqual([])
})
