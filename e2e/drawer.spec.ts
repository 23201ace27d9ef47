import { expect, type Page } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'
import { faults } from './support/scan'

/** The number that stands beside a figure's name, without its unit. */
const figureOf = async (page: Page, name: string): Promise<number> => {
  const words = await page
    .locator('.water-figures > div', { hasText: name })
    .locator('dd')
    .first()
    .innerText()
  return Number.parseFloat(words)
}

test('the drawer tells a row’s water, slides what is uncertain, and comes to the pump', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { toggle, foot, figure, tab } = drawerOn(page)
  await expect(foot).toContainText('gpm')
  await toggle.click()
  await expect(toggle).toHaveAttribute('aria-expanded', 'true')

  // Choosing a row here selects it on the plan, and its towers are read along by arrow keys.
  await foot
    .getByRole('combobox', { name: 'Row' })
    .selectOption({ label: await foot.locator('option', { hasText: /^N1/ }).innerText() })
  await expect((await planner.tab('Part')).getByRole('heading', { name: /^N1/ })).toBeVisible()
  const chart = foot.getByRole('slider', { name: /^Flow at each tower/ })
  await chart.press('ArrowRight')
  await expect(chart).toHaveAttribute('aria-valuetext', /^Station 1, .* along: line 1 [\d.]+ gph/)
  await figure('Flow at each tower').getByRole('button', { name: 'Show as table' }).click()
  await expect(figure('Flow at each tower').getByRole('columnheader', { name: 'Line 4' })).toBeVisible()

  // Colder water: less of it runs, in one edit that undo takes back; a typed number beats the slider.
  const before = await figureOf(page, 'Mean flow')
  const slider = foot.getByRole('slider', { name: 'Water temperature, slider' })
  await slider.focus()
  await page.keyboard.press('Home')
  await expect.poll(() => figureOf(page, 'Mean flow')).toBeLessThan(before)
  await expect(undo).toHaveAccessibleName('Undo: Water temperature')
  const typed = foot.getByLabel('Water temperature', { exact: true })
  const cold = await figureOf(page, 'Mean flow')
  await typed.fill('20 C')
  await page.keyboard.press('Enter')
  await expect(typed).toHaveValue(/^68\.0+ °F$/)
  await expect.poll(() => figureOf(page, 'Mean flow')).toBeGreaterThan(cold)
  await undo.click()
  await undo.click()
  await expect.poll(() => figureOf(page, 'Mean flow')).toBe(before)

  // The pump against the network; its settings stand in the sidebar.
  await tab('Main & pump').click()
  await expect(figure('Pump against network')).toBeVisible()
  await expect(foot).toContainText(/The pump (fits|is)/)
  await foot.getByRole('button', { name: 'Pump settings' }).click()
  const side = page.getByRole('complementary', { name: 'Warnings, cuts and parts' })
  await expect(side.getByRole('heading', { name: /^Pit/, level: 2 })).toBeVisible()

  // It grows by keys, and goes.
  const edge = page.getByRole('separator', { name: 'Height of the drawer' })
  const height = (await foot.boundingBox())!.height
  await edge.press('ArrowUp')
  await expect.poll(async () => (await foot.boundingBox())!.height).toBeGreaterThan(height)
  await toggle.click()
  await expect(toggle).toHaveAttribute('aria-expanded', 'false')
  await expect(tab('Main & pump')).toBeHidden()
})

test('a bay without rows says what to do first', async ({ planner }) => {
  const { page } = planner
  await planner.openSample()
  await planner.newBay("20'", "30'")
  const { toggle, foot, tab } = drawerOn(page)
  await toggle.click()
  await expect(foot).toContainText('No row stands in this bay yet')
  await tab('Main & pump').click()
  await expect(foot).toContainText('No main is laid yet')
})

/** What the drawer is about. */
const runs = ['Water run', 'Falls home', 'Saw bench', 'Counter'] as const

const sizes = [
  { width: 1280, height: 800 },
  { width: 1024, height: 768 },
]

/** Colours do not depend on the size, nor the size of targets on the colours: each once is enough. */
const scanned = [
  { colorScheme: 'light', viewport: { width: 1280, height: 800 }, scope: 'all' },
  { colorScheme: 'dark', viewport: { width: 1024, height: 768 }, scope: 'colours' },
] as const

for (const { colorScheme, viewport, scope } of scanned)
  test.describe(`${colorScheme} page of ${viewport.width} x ${viewport.height}, drawer open`, () => {
    test.use({ colorScheme, viewport })
    test.slow()

    for (const run of runs)
      test(`${run} is free of faults that a scan can find`, async ({ planner }) => {
        const { page } = planner
        await planner.openSample()
        const { open, foot, turnTo } = drawerOn(page)
        await open(run)
        const names = await foot.getByRole('tab').allInnerTexts()
        expect(names.length).toBeGreaterThan(3)
        for (const name of names) {
          await turnTo(name, run)
          expect(await faults(page, '.frame-foot', scope), name).toEqual([])
        }
      })
  })

for (const viewport of sizes)
  test(`${viewport.width} x ${viewport.height}: the plan keeps room to work on, and nothing runs over`, async ({
    planner,
  }) => {
    const { page, floor } = planner
    await page.setViewportSize(viewport)
    await planner.openSample()
    const { open, foot, turnTo } = drawerOn(page)
    for (const run of runs) {
      await open(run)
      for (const name of await foot.getByRole('tab').allInnerTexts()) {
        await turnTo(name, run)
        const over = await page.evaluate(() => {
          const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement
          return [scrollWidth - clientWidth, scrollHeight - clientHeight]
        })
        expect(over, name).toEqual([0, 0])
        expect((await floor.paper.boundingBox())!.height, name).toBeGreaterThan(300)
        const panel = foot.getByRole('tabpanel')
        expect(await panel.evaluate((e) => e.scrollWidth - e.clientWidth), name).toBeLessThanOrEqual(0)
      }
    }
  })
