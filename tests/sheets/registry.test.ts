import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { sheets } from '../../src/sheets'
import { bay } from '../support/bay'
import { pageText } from '../support/pageText'

const evaluation = evaluate(bay('20 x 30 ft', 'Shed bay').layout())

test('no two sheets share an id or a code', () => {
  expect(new Set(sheets.map(({ id }) => id)).size).toBe(sheets.length)
  expect(new Set(sheets.map(({ code }) => code)).size).toBe(sheets.length)
})

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('the %s sheet', (_, sheet) => {
  const page = sheet.page(evaluation, {
    paper: 'A4',
    orientation: 'portrait',
    scale: 'fit',
    units: 'metric',
    dateText: '1 May 2027',
    issue: 12,
  })
  const text = pageText(page)

  test('has a two-letter code and a title, and bears both', () => {
    expect(sheet.code).toMatch(/^[A-Z]{2}$/)
    expect(text).toContain(`${sheet.title} (${sheet.code})`)
  })

  test('says whose it is, of which issue and day, and what it is not', () => {
    for (const words of ['Shed bay', '12', '1 May 2027', "This plan is a builder's aid."])
      expect(text).toContain(words)
  })

  test('lies on the paper asked for', () => {
    expect(page.paper).toMatchObject({ name: 'A4', orientation: 'portrait', widthMm: 210, heightMm: 297 })
  })
})
