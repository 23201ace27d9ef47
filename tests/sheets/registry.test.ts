import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { sheets } from '../../src/sheets'
import { pagesOf } from '../../src/sheets/pagesOf'
import { pageText } from '../support/pageText'
import { scenarios } from '../support/scenarios'

const now = evaluate(scenarios['lintel-lane-lean-to']!())
const plan = { now, issued: { number: 11, dateText: '1 April 2027', then: now } }

test('no two sheets share an id or a code', () => {
  expect(new Set(sheets.map(({ id }) => id)).size).toBe(sheets.length)
  expect(new Set(sheets.map(({ code }) => code)).size).toBe(sheets.length)
})

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('the %s sheet', (_, sheet) => {
  const pages = pagesOf(sheet, plan, {
    paper: 'A4',
    orientation: 'portrait',
    scale: 'fit',
    units: 'metric',
    dateText: '1 May 2027',
    issue: '12',
  })

  test('has a two-letter code and a title, and every page bears both', () => {
    expect(sheet.code).toMatch(/^[A-Z]{2}$/)
    for (const page of pages) expect(pageText(page)).toContain(`${sheet.title} (${sheet.code})`)
  })

  test('says whose it is, of which issue and day, and what it is not', () => {
    for (const page of pages)
      for (const words of ['Lintel Lane lean-to', '12', '1 May 2027', "This plan is a builder's aid."])
        expect(pageText(page)).toContain(words)
  })

  test('lies on the paper asked for', () => {
    for (const { paper } of pages)
      expect(paper).toMatchObject({ name: 'A4', orientation: 'portrait', widthMm: 210, heightMm: 297 })
  })
})
