import { expect, type Page } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { type Planner, test } from './support/planner'
import { faults } from './support/scan'

const DRAWER = '[aria-label="Drawer"]'

/** Opens the bay whose bearers are a near miss, by the list of samples. */
const openNearMiss = async ({ page }: Planner) => {
  await page.getByRole('banner').getByRole('button', { name: 'Samples', exact: true }).click()
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /before the shave/ })
    .click()
  await expect(page.getByRole('dialog')).toBeHidden()
}

/** How many pieces there are of the stop that gutter bearers are cut at, and that stop. */
const bearersIn = async (planner: Planner): Promise<string> => {
  const rows = await planner.cuts('2x4 lumber')
  const row = rows.find(({ members }) => /\bGB\b/.test(members))
  return `${row?.count} of ${row?.stop}`
}

/** Boards of all lumber still to be bought: `243`. */
const boardsIn = async (page: Page): Promise<number> => {
  const words = await page.getByRole('region', { name: '2x4 lumber' }).locator('.cuts-buy').innerText()
  return [...words.matchAll(/(\d+) x/g)].reduce((sum, [, count]) => sum + Number(count), 0)
}

test('a near miss is shaved by one press, and undo brings it back', async ({ planner }) => {
  const { page, undo } = planner
  await planner.openSample()
  await openNearMiss(planner)
  await planner.tab('Cuts')
  expect(await bearersIn(planner)).toBe('81 of 61"')
  const before = await boardsIn(page)

  const { turnTo, line } = drawerOn(page)
  const panel = await turnTo('Shave & save', 'Saw bench')
  const [off, by, saves] = await line('Shaves that save', /^Gutter bearers, 81 of 61/)
  expect(off).toContain('1-1/16" off, to 59-15/16"')
  // Alone: 81 boards that give one each; 41 that give two, the last one of them one.
  expect(off).toContain('a 10 ft board gives 2, not 1: alone they take 41, not 81')
  expect(by).toContain('bearer past the trough 15/32", not 1", in N1, S1, N2, S2, N3 and S3')
  const saved = Number(/^(\d+) boards/.exec(saves ?? '')?.[1])
  expect(saved).toBeGreaterThan(0)
  expect(await faults(page, DRAWER), 'Shave & save').toEqual([])

  await panel.getByRole('button', { name: 'Shave 1-1/16" off gutter bearers' }).press('Enter')
  await expect(panel.getByRole('status')).toBeFocused()
  await expect(panel.getByRole('status')).toContainText('Undo takes it back')
  await expect(undo).toHaveAccessibleName('Undo: Shave 1-1/16" off gutter bearers')
  await expect(panel).toContainText('there is nothing to shave')
  await expect.poll(() => bearersIn(planner)).toBe('81 of 59-15/16"')
  await expect.poll(() => boardsIn(page)).toBe(before - saved)

  await undo.click()
  await expect.poll(() => bearersIn(planner)).toBe('81 of 61"')
  await expect.poll(() => boardsIn(page)).toBe(before)
})

test('stock as it measures moves what is cut, and a wall that cannot be gets a sentence', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { turnTo } = drawerOn(page)
  const panel = await turnTo('Stock', 'Saw bench')
  await planner.tab('Cuts')
  const stops = async () => (await planner.cuts('2x4 lumber')).map(({ stop }) => stop)
  const typed = async (field: string, text: string) => {
    await panel.getByLabel(field, { exact: true }).fill(text)
    await page.keyboard.press('Enter')
  }

  // Rails 40 in apart and a board 3-9/16 wide: cross-pieces of 43-9/16.
  expect(await stops()).toContain('43-1/2"')
  const width = panel.getByLabel('Width of 2x4 lumber', { exact: true })
  await expect(width).toHaveAttribute('placeholder', '3-1/2"')
  await typed('Width of 2x4 lumber', '3-9/16')
  await expect.poll(stops).toContain('43-9/16"')
  await expect(undo).toHaveAccessibleName('Undo: Width of 2x4 lumber')
  await typed('Width of 2x4 lumber', '')
  await expect.poll(stops).toContain('43-1/2"')

  // 12 ft boards of 144-1/4: halves of (144.25 - 0.125) / 2.
  await typed('Longer than its name of 2x4 lumber', '1/4')
  await expect.poll(stops).toContain('72-1/16"')

  await typed('Wall of 3/4 in thin-wall conduit', '0.5')
  await expect(panel.getByRole('alert')).toContainText('nothing is left inside')
  await page.keyboard.press('Escape')

  // A leftover is used before a board is bought; one of no length is refused.
  const form = panel.getByRole('form', { name: 'Write down a leftover' })
  await form.getByLabel('Length').fill('a few')
  await page.keyboard.press('Enter')
  await expect(form.getByRole('alert')).toBeVisible()
  await form.getByLabel('Length').fill('44')
  await page.keyboard.press('Enter')
  await expect(panel.getByRole('region', { name: 'Leftovers' })).toContainText('2x4 lumber')
  await expect(page.getByRole('region', { name: '2x4 lumber' })).toContainText('From leftovers')

  // The yard has run out of 12 ft; it has to have something.
  await panel.getByRole('checkbox', { name: '12 ft' }).uncheck()
  await expect(undo).toHaveAccessibleName('Undo: Lumber on offer')
  await panel.getByRole('checkbox', { name: '10 ft' }).click()
  await expect(panel.getByRole('alert')).toContainText('one length of lumber at least')
  expect(await faults(page, DRAWER), 'Stock').toEqual([])
})

test.describe('by night, on a tablet', () => {
  test.use({ colorScheme: 'dark', viewport: { width: 1024, height: 768 } })

  test('both views can be read', async ({ planner }) => {
    const { page } = planner
    await planner.openSample()
    await openNearMiss(planner)
    const { turnTo } = drawerOn(page)
    for (const view of ['Shave & save', 'Stock']) {
      await turnTo(view, 'Saw bench')
      expect(await faults(page, DRAWER, 'colours'), view).toEqual([])
      await page.screenshot({ path: test.info().outputPath(`${view}.png`) })
    }
  })
})
