import { XMLParser, XMLValidator } from 'fast-xml-parser'
import { describe, expect, test } from 'vitest'
import { pageSvg } from '../../src/drawing/svg'
import { paperTheme } from '../../src/drawing/theme'
import { evaluate } from '../../src/evaluate/evaluate'
import { sheets } from '../../src/sheets'
import { pagesOf, paperFor } from '../../src/sheets/pagesOf'
import { pageWords } from '../support/pageText'
import { scenarios } from '../support/scenarios'

const now = evaluate(scenarios['kestrel-bend-house-2']!())
const plan = { now, issued: { number: 11, dateText: '1 April 2027', was: now } }
const parser = new XMLParser({ ignoreAttributes: false, trimValues: false, parseTagValue: false })

/** All words of an SVG in the order of the file, as another reader of XML finds them. */
const wordsIn = (node: unknown, name = ''): string[] => {
  if (Array.isArray(node)) return node.flatMap((each) => wordsIn(each, name))
  if (typeof node !== 'object' || node === null) return name === 'text' ? [String(node)] : []
  return Object.entries(node).flatMap(([key, value]) => {
    if (key === '#text') return name === 'text' ? [String(value)] : []
    return key.startsWith('@_') ? [] : wordsIn(value, key)
  })
}

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('the SVG of the %s sheet', (_, sheet) => {
  const pages = pagesOf(sheet, plan, {
    paper: paperFor(sheet, 'inch'),
    orientation: 'auto',
    scale: 'fit',
    units: 'feet-inches',
    dateText: '1 May 2027',
    issue: '12',
  })

  test('is XML that another reader takes, asks for nothing from elsewhere, and has the size of its paper', () => {
    for (const page of pages) {
      const svg = pageSvg(page, paperTheme)
      expect(XMLValidator.validate(svg)).toBe(true)
      expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
        /https?:|<image|href=|@import/,
      )
      for (const [, to] of svg.matchAll(/url\(([^)]*)\)/g)) expect(to).toMatch(/^#clip-\d+$/)
      const { svg: root } = parser.parse(svg)
      expect(Number.parseFloat(root['@_width'])).toBeCloseTo(page.paper.widthMm, 2)
      expect(Number.parseFloat(root['@_height'])).toBeCloseTo(page.paper.heightMm, 2)
    }
  })

  test('has every word of the page as text', () => {
    for (const page of pages) {
      const found = new Set(wordsIn(parser.parse(pageSvg(page, paperTheme))))
      for (const { text } of pageWords(page)) if (text.trim() !== '') expect(found.has(text), text).toBe(true)
    }
  })
})
