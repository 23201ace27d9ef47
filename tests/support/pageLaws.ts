import { MARGIN_MM, orient, papers } from '../../src/drawing/paper'
import type { Page } from '../../src/drawing/page'
import type { Box } from '../../src/geometry/box'
import { sizesOn } from '../../src/sheets/letterSizes'
import type { Sheet, SheetOptions } from '../../src/sheets/sheet'
import { pageWords, type PageWords } from './pageText'

/** Rounding of sums, mm. */
const CLOSE_MM = 0.01
/** The smallest letter that is read at arm's length in a greenhouse. Common practice, no source. */
const LEAST_LETTER_MM = 2

const overlap = (a: Box, b: Box): boolean =>
  a.x0 < b.x1 - CLOSE_MM && b.x0 < a.x1 - CLOSE_MM && a.y0 < b.y1 - CLOSE_MM && b.y0 < a.y1 - CLOSE_MM

/** Lines of words that lie on each other, told by both; from left to right, so that far pairs are never compared. */
const overlapping = (words: readonly PageWords[]): string[] => {
  const sorted = words.toSorted((a, b) => a.box.x0 - b.box.x0)
  return sorted.flatMap((one, i) => {
    const found: string[] = []
    for (let j = i + 1; j < sorted.length && sorted[j]!.box.x0 < one.box.x1; j++)
      if (overlap(one.box, sorted[j]!.box)) found.push(`"${one.text}" lies on "${sorted[j]!.text}"`)
    return found
  })
}

const isOutside = ({ box }: PageWords, page: Page, marginMm: number): boolean =>
  box.x0 < marginMm - CLOSE_MM ||
  box.y0 < marginMm - CLOSE_MM ||
  box.x1 > page.paper.widthMm - marginMm + CLOSE_MM ||
  box.y1 > page.paper.heightMm - marginMm + CLOSE_MM

const UNITS = { 'feet-inches': 'Feet and inches', metric: 'Millimetres' }

/** What every page must say. A sheet that is one drawing has no page number unless it runs over pages. */
const missing = (
  all: string,
  sheet: Sheet,
  bay: string,
  options: SheetOptions,
  number: number,
  count: number,
): string[] => {
  const due = [
    `${sheet.title} (${sheet.code})`,
    bay,
    options.issue,
    options.dateText,
    UNITS[options.units],
    'Measure me: ',
    ...(sheet.pages && count === 1 ? [] : [`${number} of ${count}`]),
  ]
  const flat = all.replaceAll(/\s+/g, ' ')
  const footer = flat.includes("This plan is a builder's aid.") && flat.includes('have the last word.')
  return [...due.filter((words) => !flat.includes(words)), ...(footer ? [] : ['the whole footer'])].map(
    (words) => `lacks "${words}"`,
  )
}

const wrongPaper = ({ paper }: Page, options: SheetOptions): string[] => {
  const { orientation } = options
  const due = orient(papers[options.paper], orientation === 'auto' ? paper.orientation : orientation)
  return paper.name === due.name && paper.widthMm === due.widthMm && paper.heightMm === due.heightMm
    ? []
    : [`lies on ${paper.title}, ${paper.orientation}`]
}

/** Every law that the pages of a sheet break, a sentence each; none where they can go to the crew. */
export const brokenLaws = (
  pages: readonly Page[],
  sheet: Sheet,
  bay: string,
  options: SheetOptions,
): readonly string[] =>
  pages.flatMap((page, i) => {
    const words = pageWords(page)
    const marginMm = sheet.pages ? Math.min(MARGIN_MM, 6) : sizesOn(options.paper).marginMm
    const all = words.map(({ text }) => text).join('\n')
    return [
      ...wrongPaper(page, options),
      ...missing(all, sheet, bay, options, i + 1, pages.length),
      ...words
        .filter((one) => isOutside(one, page, marginMm))
        .map(({ text }) => `"${text}" is outside the margins`),
      ...words
        .filter(({ letterMm }) => letterMm < LEAST_LETTER_MM - CLOSE_MM)
        .map(({ text, letterMm }) => `"${text}" is lettered ${letterMm} mm`),
      ...words.filter(({ text }) => text.includes('…')).map(({ text }) => `"${text}" is clipped`),
      ...overlapping(words),
    ].map((law) => `page ${i + 1}: ${law}`)
  })
