import { readFile } from 'node:fs/promises'
import { expect, type Download, type Page } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { lengthPx, levelLines, uprightLines } from './support/ink'
import { boxesIn, fontsIn, hasPoppler, pagePicture, pageSizes, pageTexts, type SizePt } from './support/pdf'
import { test } from './support/planner'
import { readPng } from './support/png'

/** Upright papers in points: ASME Y14.1 sizes A and B, their halves, ISO 216 (297 x 420, 210 x 297, 148 x 210, 105 x 148 mm). */
const POINTS: Readonly<Record<string, readonly [number, number]>> = {
  letter: [612, 792],
  tabloid: [792, 1224],
  'half-letter': [396, 612],
  '4x6': [288, 432],
  A3: [841.89, 1190.55],
  A4: [595.276, 841.89],
  A5: [419.528, 595.276],
  A6: [297.638, 419.528],
}

/** A page size that was asked for, by the name of its style: `paper-letter-portrait`. */
const asked = (name: string): SizePt => {
  const [, paper = '', way] = /^paper-(.+)-(portrait|landscape)$/.exec(name) ?? []
  const [short, long] = POINTS[paper]!
  return way === 'portrait' ? { width: short, height: long } : { width: long, height: short }
}

/** Chromium rounds a paper to whole points and then to dots of 1/300 in (found by trying): half a point and half a dot. */
const ROUNDED_PT = 0.5 + 0.12

const near = (a: SizePt, b: SizePt): boolean =>
  Math.abs(a.width - b.width) <= ROUNDED_PT && Math.abs(a.height - b.height) <= ROUNDED_PT

/** The printer's own dialog would wait for a person. */
const withoutDialog = (page: Page) =>
  page.addInitScript(() => {
    window.print = () => {
      document.documentElement.dataset['asked'] = 'yes'
    }
  })

const DPI = 200
/** 1/32 in. */
const CLOSE_PX = DPI / 32

const reach = hasPoppler
  ? ''
  : ' (poppler is not installed here: sizes are read in the file itself, words and ink are not)'

const openPapers = async (page: Page): Promise<void> => {
  const drawer = drawerOn(page)
  await drawer.open('Crew box')
  await drawer.tab('Papers').click()
}

/** Prints what a press asks for, and gives the names of the papers in their order. */
const printed = async (page: Page, press: () => Promise<void>, file: string): Promise<string[]> => {
  await press()
  await expect(page.locator('html')).toHaveAttribute('data-asked', 'yes', { timeout: 90_000 })
  const names = await page
    .locator('.print-root > section')
    .evaluateAll((sections) => sections.map(({ className }) => className))
  await page.pdf({ path: file, preferCSSPageSize: true, printBackground: true })
  // Printing over, the screen has its page back.
  await expect(page.locator('.print-root')).toHaveCount(0)
  return names
}

const families = [
  { title: 'inch', bar: 12 * DPI, large: 'paper-tabloid', cell: /Tower hook, closed loop +480/ },
  { title: 'metric', bar: (300 / 25.4) * DPI, large: 'paper-A3', cell: /Tower hook, closed loop +480/ },
]

for (const { title, bar, large, cell } of families)
  test(`the whole set prints in one run on ${title} papers, each sheet at its true size, words as words${reach}`, async ({
    planner,
  }) => {
    const { page } = planner
    await withoutDialog(page)
    await planner.openSample()
    if (title === 'metric') await page.getByTitle('Change units').click()
    await openPapers(page)
    const file = test.info().outputPath('set.pdf')
    const press = () => page.getByRole('button', { name: 'Print the whole set' }).click()
    const names = await printed(page, press, file)
    expect(new Set(names).size, 'papers of several sizes').toBeGreaterThan(1)

    const sizes = hasPoppler ? pageSizes(file) : boxesIn(file)
    expect(sizes).toHaveLength(names.length)
    sizes.forEach((size, i) => {
      const words = `page ${i + 1}: ${size.width} x ${size.height} for ${names[i]}`
      expect(near(size, asked(names[i]!)), words).toBe(true)
    })
    if (!hasPoppler) return

    const fonts = fontsIn(file)
    expect(fonts.some(({ name }) => name.includes('SourceSans'))).toBe(true)
    expect(fonts.filter(({ isEmbedded }) => !isEmbedded)).toEqual([])

    const texts = pageTexts(file)
    for (const text of texts) expect(text.replaceAll(/\s+/g, ' ')).toContain("This plan is a builder's aid.")
    const lines = texts.flatMap((text) => text.split('\n'))
    expect(lines.filter((line) => cell.test(line))).toHaveLength(1)

    const at = names.findIndex((name) => name.startsWith(large))
    const picture = pagePicture(file, at + 1, DPI)
    const long = [...uprightLines(picture, 11), ...levelLines(picture, 11)].map(lengthPx)
    expect(
      long.some((px) => Math.abs(px - bar) <= CLOSE_PX),
      `lines of ${long.join(', ')} px`,
    ).toBe(true)
  })

test('every page of a sheet is a picture of its own that knows its size on paper', async ({ planner }) => {
  const { page } = planner
  await planner.openSample()
  await openPapers(page)
  const shop = page.getByRole('button', { name: /Shop list/ })
  await shop.click()
  // Pages of all sheets are counted one after another.
  await expect(shop).toContainText(/\d pages/, { timeout: 90_000 })
  const pictures: Download[] = []
  page.on('download', (download) => pictures.push(download))
  const count = Number(/(\d+) pages/.exec(await shop.innerText())![1])
  await page.getByRole('button', { name: 'PNG', exact: true }).click()
  await expect.poll(() => pictures.length, { timeout: 60_000 }).toBe(count)
  for (const picture of pictures) {
    const { width, height, dpi } = readPng(await readFile(await picture.path()))
    expect(dpi).toBe(DPI)
    // Letter, upright: 8-1/2 x 11 in.
    expect([width, height]).toEqual([8.5 * DPI, 11 * DPI])
  }
})
