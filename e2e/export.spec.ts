import { expect } from '@playwright/test'
import { inkIn, lengthPx, type Line, levelLines, pencil, timber, uprightLines, water } from './support/ink'
import { test } from './support/planner'
import { readPng } from './support/png'

/** The sample house, inches inside. */
const HOUSE = { width: 352, length: 856 }

/** Paper sizes in inches: ASME Y14.1 size B, and ISO 216 A4 (210 x 297 mm). */
const tabloid = { label: 'Tabloid, 11 x 17 in', width: 11, height: 17 }
const a4 = { label: 'A4, 210 x 297 mm', width: 210 / 25.4, height: 297 / 25.4 }

/** The check line prints its own length; the scale is what the title block of that sheet says. */
const sheets = [
  { paper: tabloid, dpi: 200, checkInches: 12, scale: 64 },
  { paper: tabloid, dpi: 300, checkInches: 12, scale: 64 },
  { paper: a4, dpi: 200, checkInches: 6, scale: 96 },
  { paper: a4, dpi: 300, checkInches: 6, scale: 96 },
] as const

/** Thickest line on the sheet, inches of paper. */
const PEN = 0.04

const close = (aPx: number, bPx: number, dpi: number): boolean => Math.abs(aPx - bPx) <= PEN * dpi

/** Two walls as long as the house at this scale, and as far apart as it is wide. */
const wallsIn = (upright: readonly Line[], scale: number, dpi: number) => {
  const long = upright.filter((line) => close(lengthPx(line), (HOUSE.length / scale) * dpi, dpi))
  const widthPx = (HOUSE.width / scale) * dpi
  for (const west of long) {
    const east = long.find(({ at }) => close(at - west.at, widthPx, dpi))
    if (east) return { west, east }
  }
  throw new Error(`No two lines stand for the long walls among ${long.length} that are long enough.`)
}

for (const { paper, dpi, checkInches, scale } of sheets)
  test(`the plan on ${paper.label} at ${dpi} dpi is that paper, to scale, and drawn`, async ({ planner }) => {
    await planner.openSample()
    const { name, bytes } = await planner.exportPlan({ paper: paper.label, dpi })
    expect(name).toBe('kestrel-bend-farm-house-2-floor-sheet-issue-1.png')

    const picture = readPng(bytes)
    expect(picture.dpi).toBe(dpi)
    expect(picture.width).toBe(Math.round(paper.width * dpi))
    expect(picture.height).toBe(Math.round(paper.height * dpi))

    const upright = uprightLines(picture, 5)
    expect(upright.some((line) => close(lengthPx(line), checkInches * dpi, dpi))).toBe(true)

    const { west, east } = wallsIn(upright, scale, dpi)
    const house = { x: [west.at, east.at], y: [west.from, west.to] } as const
    const housePx = (east.at - west.at) * lengthPx(west)
    expect(inkIn(picture, house, timber) / housePx, 'timber').toBeGreaterThan(0.005)
    expect(inkIn(picture, house, water) / housePx, 'water').toBeGreaterThan(0.01)

    // Lines of the title block stand right of the house, low on the sheet.
    const level = levelLines(picture, 2)
    const block = level.filter(({ at, from }) => from > east.at && at > 0.6 * picture.height)
    expect(block.length).toBeGreaterThanOrEqual(4)

    // The footer is the strip over the lowest line that is as wide as the frame.
    const frame = level.filter((line) => lengthPx(line) > 0.8 * picture.width).map(({ at }) => at)
    const foot = frame.at(-1)!
    const top = frame.findLast((at) => at < foot - 2 * PEN * dpi)!
    const footer = { x: [0.5 * dpi, picture.width / 2], y: [top + PEN * dpi, foot - PEN * dpi] } as const
    expect(inkIn(picture, footer, pencil), 'words in the footer').toBeGreaterThan(5 * dpi)
  })

test('the picture goes in the units and the way round that are asked for', async ({ planner }) => {
  await planner.openSample()
  const { page } = planner
  await page.getByRole('button', { name: 'Plan for the crew' }).click()
  const dialog = page.getByRole('dialog', { name: 'Plan for the crew' })
  await dialog.getByLabel('Way round').selectOption('On its side')
  await dialog.getByLabel('Units on the sheet').selectOption('Metric')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Save the picture' }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/\.png$/)
  await expect(dialog).toBeHidden()
})
