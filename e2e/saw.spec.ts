import { expect, type Page } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test, type Planner } from './support/planner'
import { faults } from './support/scan'

const RISERS = '71-15/16"'

/** The field that holds how many of a stop are cut. */
const cutSoFar = (page: Page, stop: string, of: number) =>
  page.getByLabel(`Cut so far of ${of} x ${stop}`, { exact: true })

/** Writes how long the towers of the selected row are. */
const setTower = async (planner: Planner, inches: string): Promise<void> => {
  const fold = (await planner.tab('Part'))
    .locator('details')
    .filter({ has: planner.page.getByText('Tower', { exact: true }) })
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click()
  await planner.type('Tower, hook ring to tip', inches)
}

test('boards are ticked as they are sawn, a reload keeps them, and a tick is taken back', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { turnTo, foot } = drawerOn(page)
  const panel = await turnTo('Saw list', 'Saw bench')
  await expect(panel).toContainText(
    'Halve: mark the middle of a 12 ft board, cut on the mark; each half at least 71-7/8"',
  )
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('0')

  // One board, then four more typed: five boards of two risers. The keyboard stays at the list.
  const boards = panel.getByRole('list', { name: 'Boards to saw, 2x4 lumber' })
  const halves = boards.getByRole('listitem').filter({ hasText: RISERS })
  await expect(halves).toContainText('66 x 12 ft: halve on the middle mark')
  await halves.getByRole('button', { name: 'One more' }).press('Enter')
  await expect(undo).toHaveAccessibleName('Undo: Saw 1 x 12 ft')
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('2')
  await halves.getByLabel(/^So many sawn/).fill('4')
  await page.keyboard.press('Enter')
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('10')
  await expect(halves).toContainText('61 x 12 ft')
  await halves.getByLabel(/^So many sawn/).fill('62')
  await page.keyboard.press('Enter')
  await expect(halves.getByRole('alert')).toHaveText('“62” is not a number from 0 to 61.')
  await page.keyboard.press('Escape')

  // The plan has five boards of risers less, and the bay as kept by the device says so too.
  await planner.reload()
  await turnTo('Saw list', 'Saw bench')
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('10')
  await expect(halves).toContainText('61 x 12 ft')

  const sawn = panel.getByRole('region', { name: 'Boards sawn' })
  await expect(sawn).toContainText(`5 x 12 ft: 2 x ${RISERS}`)
  await sawn.getByRole('button', { name: 'Take one back' }).click()
  await expect(sawn).toContainText('4 x 12 ft')
  await sawn.getByRole('checkbox').press('Space')
  await expect(sawn).toBeHidden()
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('0')
  await expect(foot).toContainText('66 x 12 ft')
})

test('all risers are cut, then towers are 2 in shorter: what is wrong is said, can be re-cut, and is right again', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { turnTo } = drawerOn(page)
  const list = await turnTo('Saw list', 'Saw bench')
  const halves = list.getByRole('listitem').filter({ hasText: '66 x 12 ft' })
  await halves.getByRole('checkbox', { name: /^All 66 sawn/ }).press('Space')
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('132')

  // N1 has three racks: 13 pairs of risers. Its holes come down by 2 in, its risers by 2-1/16.
  await planner.pick('N1')
  await setTower(planner, '58')
  const misfit = '26 cut risers are 2-1/16" too long for the bay as it is now: they can be re-cut.'
  await expect(list.getByRole('status')).toContainText(misfit)
  await list.getByRole('button', { name: 'See what’s cut' }).click()
  const sawn = page.getByRole('tabpanel', { name: 'What’s cut' })
  await expect(sawn).toContainText(`26 x ${RISERS} to 69-7/8" (RS-p, RS-s): 2-1/16" comes off each.`)
  await expect(sawn).toContainText('Take 2" off the foot, and 1/16" off the top')
  await expect(sawn.getByRole('row').filter({ hasText: RISERS })).toContainText('106')

  await sawn.getByRole('button', { name: /^Re-cut: 26/ }).click()
  await expect(sawn).not.toContainText('comes off each')
  await expect(cutSoFar(page, '69-7/8"', 26)).toHaveValue('26')
  await expect(undo).toHaveAccessibleName('Undo: Re-cut 26 x 71-15/16"')
  await undo.click()
  await expect(sawn).toContainText('comes off each')

  // Back again: nothing was lost.
  await setTower(planner, '60')
  await expect(sawn).not.toContainText('comes off each')
  await expect(cutSoFar(page, RISERS, 132)).toHaveValue('132')
  await expect(sawn).toContainText('Holes stand where they did.')
})

test('a stop is ticked by hand, with pieces from another job', async ({ planner }) => {
  const { page, undo } = planner
  await planner.openSample()
  const panel = await drawerOn(page).turnTo('Saw list', 'Saw bench')
  await panel.getByRole('combobox', { name: 'Material' }).selectOption({ label: '3/4 in thin-wall conduit' })
  const bars = cutSoFar(page, '57"', 120)
  await bars.fill('12')
  await page.keyboard.press('Enter')
  await expect(undo).toHaveAccessibleName('Undo: 12 x 57" cut')
  await bars.fill('130')
  await page.keyboard.press('Enter')
  await expect(panel.getByRole('alert')).toHaveText('“130” is not a number from 0 to 120.')
  await page.keyboard.press('Escape')
  await bars.fill('11')
  await page.keyboard.press('Enter')
  await expect(bars).toHaveValue('11')
})

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`${colorScheme} page`, () => {
    test.use({ colorScheme, viewport: { width: 1024, height: 768 } })
    test.slow()

    test('the saw list and what is cut are free of faults that a scan can find', async ({ planner }) => {
      const { page } = planner
      await planner.openSample()
      const { turnTo } = drawerOn(page)
      const panel = await turnTo('Saw list', 'Saw bench')
      await panel.getByRole('checkbox', { name: /^All 66 sawn/ }).press('Space')
      await planner.pick('N1')
      await setTower(planner, '58')
      await expect(panel.getByRole('status')).toContainText('26 cut risers')
      expect(await faults(page, '.frame-foot'), 'Saw list').toEqual([])
      await panel.getByRole('button', { name: 'See what’s cut' }).click()
      await expect(page.getByRole('tabpanel', { name: 'What’s cut' })).toContainText('comes off each')
      expect(await faults(page, '.frame-foot'), 'What’s cut').toEqual([])
    })
  })
