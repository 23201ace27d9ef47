import { expect, type Page } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { lengthPx, levelLines, uprightLines } from './support/ink'
import { boxesIn, fontsIn, hasPoppler, pagePicture, pageSizes, pageTexts, type SizePt } from './support/pdf'
import { test } from './support/planner'

/** Upright papers in points: ASME Y14.1 sizes A and B, their halves, ISO 216 (A4 is 210 x 297 mm). */
const POINTS: Readonly<Record<string, readonly [number, number]>> = {
  letter: [612, 792],
  tabloid: [792, 1224],
  'half-letter': [396, 612],
  '4x6': [288, 432],
  A4: [595.276, 841.89],
}

/** A page size that was asked for, by the name of its style: `paper-letter-portrait`. */
const asked = (name: string): SizePt => {
  const [, paper = '', way] = /^paper-(.+)-(portrait|landscape)$/.exec(name) ?? []
  const [short, long] = POINTS[paper]!
  return way === 'portrait' ? { width: short, height: long } : { width: long, height: short }
}

const near = (a: SizePt, b: SizePt): boolean =>
  Math.abs(a.width - b.width) <= 0.5 && Math.abs(a.height - b.height) <= 0.5

/** The printer's own dialog would wait for a person. */
const withoutDialog = (page: Page) =>
  page.addInitScript(() => {
    window.print = () => {
      document.documentElement.dataset['asked'] = 'yes'
    }
  })

const DPI = 200
/** A foot to within 1/32 in. */
const FOOT_PX = 12 * DPI
const CLOSE_PX = DPI / 32

const reach = hasPoppler
  ? ''
  : ' (poppler is not installed here: sizes are read in the file itself, words and ink are not)'

test(`the whole set prints in one run, each sheet on its own paper at its true size, words as words${reach}`, async ({
  planner,
}) => {
  const { page } = planner
  await withoutDialog(page)
  await planner.openSample()
  await drawerOn(page).turnTo('Papers', 'Crew box')
  await page.getByRole('button', { name: 'Print the whole set' }).click()
  await expect(page.locator('html')).toHaveAttribute('data-asked', 'yes')

  const names = await page
    .locator('.print-root > section')
    .evaluateAll((sections) => sections.map(({ className }) => className))
  expect(new Set(names).size, 'papers of several sizes').toBeGreaterThan(1)
  const file = test.info().outputPath('set.pdf')
  await page.pdf({ path: file, preferCSSPageSize: true, printBackground: true })

  const sizes = hasPoppler ? pageSizes(file) : boxesIn(file)
  expect(sizes).toHaveLength(names.length)
  sizes.forEach((size, i) => {
    expect(
      near(size, asked(names[i]!)),
      `page ${i + 1}: ${size.width} x ${size.height} for ${names[i]}`,
    ).toBe(true)
  })
  // Printing over, the screen has its page back.
  await expect(page.locator('.print-root')).toHaveCount(0)
  if (!hasPoppler) return

  const fonts = fontsIn(file)
  expect(fonts.length).toBeGreaterThan(0)
  expect(fonts.filter(({ isEmbedded }) => !isEmbedded)).toEqual([])

  const shop = pageTexts(file).find((text) => text.includes('Shop list (SH)'))!
  expect(shop.split('\n').filter((line) => /Tower hook, closed loop +480/.test(line))).toHaveLength(1)
  expect(shop.split("This plan is a builder's aid.")).toHaveLength(2)

  const large = names.findIndex((name) => name.startsWith('paper-tabloid'))
  const picture = pagePicture(file, large + 1, DPI)
  const bars = [...uprightLines(picture, 11), ...levelLines(picture, 11)]
  const longest = bars.filter((line) => Math.abs(lengthPx(line) - FOOT_PX) <= CLOSE_PX)
  expect(longest.length, `bars of ${bars.map(lengthPx).join(', ')} px`).toBeGreaterThan(0)
})
