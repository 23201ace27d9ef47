import { expect } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'
import { faults } from './support/scan'

test('a row that tips is mended from its warning, the cheapest way first, and undo brings it back', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  await planner.openFile('public/bays/lintel-lane-lean-to.json')
  const warnings = await planner.tab('Warnings')
  await warnings
    .getByRole('button', { name: /^Mends of: Empty, / })
    .first()
    .click()

  const { foot, line } = drawerOn(page)
  const panel = foot.getByRole('tabpanel')
  await expect(panel.getByRole('region', { name: 'Mends all, cheapest first' })).toBeVisible()
  await expect(panel.locator('[aria-busy="true"]')).toHaveCount(0)
  const [does, costs] = await line('Mends all, cheapest first', /Kept from tipping: .* to tied to a wall/)
  expect(does).toContain('held by ties')
  expect(costs).toMatch(/^\+\s\$/)
  expect(await faults(page, '[aria-label="Drawer"]'), 'What would mend it').toEqual([])

  await panel.getByRole('button', { name: /^Mend .*: kept from tipping tied/ }).press('Enter')
  await expect(panel.getByRole('status').first()).toBeFocused()
  await expect(panel.getByRole('status').first()).toContainText('Undo takes it back')
  await expect(panel).toContainText('is within and stands')
  await expect(undo).toHaveAccessibleName(/^Undo: Mend .*kept from tipping tied/)
  await undo.click()
  await expect(panel.getByRole('region', { name: 'Mends all, cheapest first' })).toBeVisible()
})
