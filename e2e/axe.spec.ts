import AxeBuilder from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'
import { test, type Tab } from './support/planner'

const WCAG_22_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa']

/** What a scan finds fault with, as the rule and the elements. */
const faults = async (page: Page): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG_22_AA).analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

const dialogs = ['New', 'Samples', 'Earlier versions on this device', 'Keys', 'Plan for the crew']
const tabs: readonly Tab[] = ['Warnings', 'Cuts', 'Bay', 'List']

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`${colorScheme} page`, () => {
    test.use({ colorScheme })
    // A scan walks the whole page, several times a test.
    test.slow()
    test.beforeEach(({ planner }) => planner.openSample())

    test('first screen and every tab are free of faults that a scan can find', async ({ planner }) => {
      for (const name of tabs) {
        await planner.tab(name)
        expect(await faults(planner.page), name).toEqual([])
      }
      await planner.floor.click([63, 600])
      await planner.tab('Part')
      expect(await faults(planner.page), 'Part').toEqual([])
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
        expect(await faults(page), name).toEqual([])
        await page.screenshot({ path: test.info().outputPath(`${name}.png`) })
        await page.keyboard.press('Escape')
        await expect(page.getByRole('dialog')).toBeHidden()
      }
    })
  })
