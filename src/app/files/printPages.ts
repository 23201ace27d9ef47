import type { Page } from '../../drawing/page'
import { pageSvg } from '../../drawing/svg'
import { paperTheme, type Theme } from '../../drawing/theme'
import './print.css'

/**
 * Printers' paper has a colour of its own: none is laid over it. The screen's font varies in weight, which a PDF can only carry as
 * outlines; the same letters in one weight are carried as a font.
 */
const printTheme: Theme = {
  ...paperTheme,
  sheet: '#ffffff',
  font: `"Source Sans 3 Print", ${paperTheme.font}`,
}

/** A paper's name as a style sheet may have it: a page name begins with no figure. */
const pageName = ({ paper }: Page): string => `paper-${paper.name}-${paper.orientation}`

/** Browsers round the height of a paper; what is taller than that by a hair would spill onto a blank page. Margins are bare there. */
const HAIR_MM = 0.4

/** One size for each paper that is printed on, so that mixed papers come out of one run, each in its own size. */
const pageSizes = (pages: readonly Page[]): string => {
  const sizes = new Map(pages.map((page) => [pageName(page), page.paper]))
  return [...sizes]
    .map(
      ([name, { widthMm, heightMm }]) =>
        `@page ${name} { size: ${widthMm}mm ${heightMm}mm; margin: 0 } ` +
        `.${name} { page: ${name}; height: ${heightMm - HAIR_MM}mm; overflow: hidden }`,
    )
    .join('\n')
}

const sectionOf = (page: Page, at: number): string =>
  `<section class="${pageName(page)}">${pageSvg(page, printTheme, `print-${at}-`)}</section>`

/** What the printer gets: nothing of the screen, a section a page. Gives back what takes it away again. */
const layOut = (pages: readonly Page[], title: string): (() => void) => {
  const { title: pageTitle } = document
  const root = document.createElement('div')
  root.className = 'print-root'
  // Written by our own writer, which escapes every word.
  root.innerHTML = pages.map(sectionOf).join('')
  const style = document.createElement('style')
  style.textContent = pageSizes(pages)
  document.head.append(style)
  document.body.append(root)
  document.documentElement.classList.add('is-printing')
  // What a browser calls the PDF that it writes.
  document.title = title
  return () => {
    document.title = pageTitle
    root.remove()
    style.remove()
    document.documentElement.classList.remove('is-printing')
  }
}

/** What the last run left, where its browser never said that the printing was over. */
let leftOver: (() => void) | undefined

/**
 * Asks the browser to print pages at their true size, or to write them as a PDF that is called by the title: lines stay lines and words
 * stay words.
 */
export const printPages = async (pages: readonly Page[], title: string): Promise<void> => {
  leftOver?.()
  const takeAway = layOut(pages, title)
  leftOver = takeAway
  // The font must be there before the printer takes the first letter.
  await document.fonts.load(`16px ${printTheme.font}`)
  window.addEventListener('afterprint', takeAway, { once: true })
  window.print()
}
