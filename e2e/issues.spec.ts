import { expect } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { faults } from './support/scan'
import { test } from './support/planner'

test('papers are issued, a change marks what it makes wrong, and the next issue tells what it changed', async ({
  planner,
}) => {
  await planner.openSample()
  const { page } = planner
  const { turnTo, foot } = drawerOn(page)
  const issues = await turnTo('Issues & changes', 'Crew box')
  await issues.getByLabel('Why (may be left empty)').fill('For the trench')
  await issues.getByRole('button', { name: 'Issue the papers as number 1' }).click()
  await expect(issues.getByText('Every sheet of issue 1 holds.')).toBeVisible()

  await planner.pick('N1')
  await planner.type('Racks chained', '2')
  const sheets = foot.getByRole('region', { name: 'Sheets of issue 1' })
  await expect(sheets.getByRole('row', { name: /^SL Saw list/ })).toContainText('Superseded', {
    timeout: 30_000,
  })
  await expect(issues.locator('svg', { hasText: 'Throw away issue 1 of' })).toBeVisible()
  expect(await faults(page, '.drawer-panel', 'all')).toEqual([])

  await issues.getByRole('button', { name: 'Issue the papers as number 2' }).click()
  await expect(issues.getByText('Every sheet of issue 2 holds.')).toBeVisible()
  await expect(issues.locator('svg', { hasText: 'since issue 1' })).toBeVisible({ timeout: 30_000 })
  await planner.undo.click()
  await expect(issues.getByRole('button', { name: 'Issue the papers as number 2' })).toBeVisible()
})

test('a version is kept, held against the bay, drawn on the plan and opened again', async ({ planner }) => {
  await planner.openSample()
  const { page } = planner
  const { turnTo, foot } = drawerOn(page)
  const versions = await turnTo('Versions', 'Crew box')
  await versions.getByLabel('Name of the version').fill('Narrow')
  await versions.getByRole('button', { name: 'Keep the bay as it is' }).click()
  await planner.pick('N1')
  await planner.type('Racks chained', '2')
  await expect(planner.towers).toContainText('448')

  const figures = foot.getByRole('region', { name: 'In figures' })
  await expect(figures.getByRole('row', { name: /^Towers/ })).toContainText('448')
  await expect(foot.getByRole('region', { name: 'What moved or is another' })).toContainText('Racks chained')
  const over = planner.floor.paper.locator('canvas').last()
  const picture = () => over.evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL())
  const before = await picture()
  await versions.getByLabel('Draw it on the plan').check()
  await expect.poll(picture).not.toBe(before)
  await versions.getByLabel('Draw it on the plan').uncheck()
  await expect.poll(picture).toBe(before)
  expect(await faults(page, '.drawer-panel', 'all')).toEqual([])

  const list = versions.getByRole('list', { name: 'Versions' })
  await list.getByRole('button', { name: 'Open' }).click()
  await list.getByRole('button', { name: 'Keep as “Version 2” and open' }).click()
  await expect(planner.towers).toContainText('480')
  await expect(list.getByRole('listitem')).toHaveCount(2)
  await planner.undo.click()
  await expect(planner.towers).toContainText('448')
})
