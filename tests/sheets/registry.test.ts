import { describe, expect, test } from 'vitest'
import type { PaperFamily, PaperName } from '../../src/drawing/paper'
import { emptyBay } from '../../src/layout/empty'
import { evaluate } from '../../src/evaluate/evaluate'
import { sheets } from '../../src/sheets'
import { pagesOf, paperFor } from '../../src/sheets/pagesOf'
import type { PlanOnPaper, Sheet, SheetOptions } from '../../src/sheets/sheet'
import type { Units } from '../../src/units/length'
import { feet } from '../../src/units/length'
import { brokenLaws } from '../support/pageLaws'
import { scenarios } from '../support/scenarios'

const DATE = '1 May 2027'
const bays = { ...scenarios, 'an empty bay': () => emptyBay(feet(30), feet(96), 'New bay') }

/** The bay as its crew has it, after an earlier issue. */
const plans: Readonly<Record<string, PlanOnPaper>> = Object.fromEntries(
  Object.entries(bays).map(([name, layout]) => {
    const now = evaluate(layout())
    return [name, { now, issued: { number: 11, dateText: '1 April 2027', was: now } }]
  }),
)

const optionsOn = (paper: PaperName, units: Units): SheetOptions => ({
  paper,
  orientation: 'auto',
  scale: 'fit',
  units,
  dateText: DATE,
  issue: '12',
})

const papersOf = (sheet: Sheet, family: PaperFamily, office: PaperName): readonly PaperName[] => [
  ...new Set([office, paperFor(sheet, family)]),
]

/** The paper that the sheet is made for, and the office's, in either family. */
const ways = (sheet: Sheet): readonly SheetOptions[] => [
  ...papersOf(sheet, 'inch', 'letter').map((paper) => optionsOn(paper, 'feet-inches')),
  ...papersOf(sheet, 'metric', 'A4').map((paper) => optionsOn(paper, 'metric')),
]

test('no two sheets share an id or a code', () => {
  expect(new Set(sheets.map(({ id }) => id)).size).toBe(sheets.length)
  expect(new Set(sheets.map(({ code }) => code)).size).toBe(sheets.length)
})

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('the %s sheet', (_, sheet) => {
  test('has a two-letter code, a title and a reader', () => {
    expect(sheet.code).toMatch(/^[A-Z]{2}$/)
    expect(sheet.title).not.toBe('')
    expect(sheet.reader).not.toBe('')
  })

  test.each(Object.entries(plans))(
    'keeps the laws of pages for %s, on both families of paper',
    (_name, plan) => {
      for (const options of ways(sheet)) {
        const broken = brokenLaws(pagesOf(sheet, plan, options), sheet, plan.now.layout.title, options)
        expect(broken.slice(0, 12), `${options.paper}, ${options.units}`).toEqual([])
      }
    },
  )
})
