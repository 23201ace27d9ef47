import { expect } from '@playwright/test'
import { test, type Tab } from './support/planner'
import { faults } from './support/scan'

const dialogs = ['New', 'Samples', 'Earlier versions on this device', 'Keys', 'Plan for the crew']
const tabs: readonly Tab[] = ['Warnings', 'Cuts', 'Bay', 'List']

/** Each change is scanned where it shows; the rest of the page stays as it was. */
const SIDE = 'aside'
const DIALOG = 'dialog[open]'

const themes = [
  { colorScheme: 'light', scope: 'all' },
  { colorScheme: 'dark', scope: 'colours' },
] as const

for (const { colorScheme, scope } of themes)
  test.describe(`${colorScheme} page`, () => {
    test.use({ colorScheme })
    // A scan walks the whole page, several times a test.
    test.slow()
    test.beforeEach(({ planner }) => planner.openSample())

    test('first screen and every tab are free of faults that a scan can find', async ({ planner }) => {
      expect(await faults(planner.page, 'html', scope), 'page').toEqual([])
      for (const name of tabs) {
        await planner.tab(name)
        expect(await faults(planner.page, SIDE, scope), name).toEqual([])
      }
      await planner.floor.click([63, 600])
      await planner.tab('Part')
      expect(await faults(planner.page, SIDE, scope), 'Part').toEqual([])
      await planner.page.screenshot({ path: test.info().outputPath('part.png') })
    })

    test('every dialog is free of faults that a scan can find', async ({ planner }) => {
      const { page } = planner
      // The first change puts a version behind, which Earlier then offers.
      await planner.floor.click([63, 600])
      await page.keyboard.press('ArrowUp')
      await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')
      for (const name of dialogs) {
        await page.getByRole('banner').getByRole('button', { name, exact: true }).click()
        await expect(page.getByRole('dialog')).toBeVisible()
        expect(await faults(page, DIALOG, scope), name).toEqual([])
        await page.screenshot({ path: test.info().outputPath(`${name}.png`) })
        await page.keyboard.press('Escape')
        await expect(page.getByRole('dialog')).toBeHidden()
      }
    })
  })
