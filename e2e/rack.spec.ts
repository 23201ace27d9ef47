import { expect, type Locator } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'
import { faults } from './support/scan'

const DRAWER = '.frame-foot'

/** Things whose content is wider than they are and that do not scroll. */
const clipped = (things: Locator): Promise<string[]> =>
  things.evaluateAll((elements) =>
    elements
      .filter(
        (element) =>
          element.getBoundingClientRect().right >
          element.closest('.bench')!.getBoundingClientRect().right + 1,
      )
      .map(({ textContent }) => textContent ?? ''),
  )

// Three 30 in spans a rack become one of 120: over 10 times too long for a 3/4 in rail (trade notes 2.7, table: 34 in at most).
test('a riser pair taken out makes the rail too long in words, on the drawing and in its arithmetic, and undo takes it back', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { turnTo } = drawerOn(page)
  const bench = await turnTo('Rack', 'Rack bench')
  await expect(bench.getByRole('img', { name: /^N1, rack 1 of 3, from its right side/ })).toBeVisible()
  await expect(bench.locator('.bench-pill').getByText('RL', { exact: true })).toBeVisible()
  await expect(bench.locator('.bench-bad')).toHaveCount(0)

  await bench.getByRole('button', { name: 'Change' }).click()
  await bench.getByLabel('Riser pairs between rack ends').fill('0')
  await page.keyboard.press('Enter')
  await expect(undo).toHaveAccessibleName('Undo: Riser pairs between rack ends of N1')
  await expect(bench.locator('.bench-pill.bench-bad')).toContainText('Too long')
  await expect(bench.getByText('folds or stays bent')).toBeVisible()

  await bench.getByRole('button', { name: 'Strength' }).click()
  const screen = bench.getByRole('button', { name: /RL .* of a rail Too long/ }).first()
  await screen.focus()
  await page.keyboard.press('Enter')
  await expect(screen).toHaveAttribute('aria-expanded', 'true')
  await expect(bench.getByRole('rowheader', { name: 'Allowed', exact: true })).toBeVisible()
  await expect(bench.getByText('A screening, not a rating.')).toBeVisible()
  await expect(bench.locator('.bench-pill.bench-lit')).toContainText('RL')
  await undo.click()
  await expect(bench.locator('.bench-bad')).toHaveCount(0)
})

test('members are listed with count and length, light up from the keyboard, and come apart', async ({
  planner,
}) => {
  const { page } = planner
  await planner.openSample()
  const { turnTo } = drawerOn(page)
  const bench = await turnTo('Rack', 'Rack bench')
  await bench.getByLabel('Drawn').selectOption('Whole row')
  await bench.getByRole('button', { name: 'Members' }).click()
  // 24 hanger bars of 57 in and 26 risers a row (trade notes 2.2 and 2.6, worked by hand).
  const bars = bench.getByRole('row').filter({ hasText: 'Hanger bar' })
  await expect(bars).toContainText('24')
  await expect(bars).toContainText('57"')
  const light = bars.getByRole('button', { name: 'Light up HB on the drawing' })
  await light.focus()
  await page.keyboard.press('Space')
  await expect(light).toHaveAttribute('aria-pressed', 'true')
  await expect(bench.locator('.bench-member.bench-lit').first()).toBeVisible()

  await bench.getByRole('button', { name: 'Parts apart' }).click()
  await expect(bench.getByText('24 × HB hanger bar 57"')).toBeVisible()
  await bench.getByLabel('Seen').selectOption('Across the row')
  await expect(bench.getByRole('img', { name: /^N1, the whole row, 3 racks, from its start/ })).toBeVisible()
  await expect(bench.getByRole('region', { name: 'Along the row' })).toHaveCount(0)
})

// The page as designed, and a tablet by night.
for (const [viewport, colorScheme] of [
  [{ width: 1280, height: 800 }, 'light'],
  [{ width: 1024, height: 768 }, 'dark'],
] as const)
  test.describe(`${viewport.width} x ${viewport.height}, ${colorScheme}`, () => {
    test.use({ viewport, colorScheme })
    test('the bench is free of faults that a scan can find, and nothing is cut off', async ({ planner }) => {
      test.slow()
      const { page } = planner
      await planner.openSample()
      const bench = await drawerOn(page).turnTo('Rack', 'Rack bench')
      for (const panel of ['Strength', 'Members', 'Change']) {
        await bench.getByRole('button', { name: panel, exact: true }).click()
        expect(await faults(page, DRAWER, colorScheme === 'light' ? 'all' : 'colours'), panel).toEqual([])
        expect(await clipped(bench.locator('.bench button, .bench select')), panel).toEqual([])
        await page.screenshot({ path: test.info().outputPath(`${panel}.png`) })
      }
    })
  })
