import { expect } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'
import { faults } from './support/scan'

test('a line of the take-off is found, opens to its rule and its parts, and a part of it is selected', async ({
  planner,
}) => {
  const { page } = planner
  await planner.openSample()
  const { foot, turnTo } = drawerOn(page)
  const view = await turnTo('Take-off', 'Counter')
  const list = view.getByRole('region', { name: 'Counted things' })
  await expect(list.getByRole('rowheader', { name: 'Fasteners' })).toBeVisible()

  // Worked example of the trade notes: 1,926 screws in the sample bay, 378 in a row of three racks (18 x 13 + 8 x 4 + 4 x 16 + 6 x 8).
  await view.getByRole('searchbox', { name: 'Find' }).fill('screw 2-1/2')
  await list.getByRole('button', { name: 'Screw, 2-1/2 in coated' }).click()
  const opened = view.getByRole('region', { name: 'Screw, 2-1/2 in coated' })
  await expect(opened.getByRole('heading')).toHaveText('Screw, 2-1/2 in coated: 1,926')
  await expect(opened).toContainText('18 a riser pair')
  await expect(opened.getByRole('row', { name: /^N1/ })).toContainText('378')

  // A part of the list selects it on the plan.
  await view.getByRole('button', { name: 'S3', exact: true }).click()
  await expect((await planner.tab('Part')).getByRole('heading', { name: /^S3/ })).toBeVisible()
  await view.getByRole('searchbox', { name: 'Find' }).fill('chandelier')
  await expect(foot).toContainText('Nothing in this bay is called “chandelier”.')
})

test('a cut piece by its mark is pointed out on the plan; Escape or a second press clears it', async ({
  planner,
}) => {
  const { page } = planner
  await planner.openSample()
  const view = await drawerOn(page).turnTo('Take-off', 'Counter')
  const list = view.getByRole('region', { name: 'Counted things' })

  await view.getByRole('searchbox', { name: 'Find' }).fill('hanger bar')
  await list.getByRole('button', { name: /^Hanger bar \(HB\)/ }).click()
  const show = view.getByRole('button', { name: 'Show on the plan' })
  await show.click()
  await expect(show).toHaveAttribute('aria-pressed', 'true')
  await expect(view).toContainText('Ringed on the plan')
  await expect(page.getByRole('status').filter({ hasText: '120 pointed out on the plan' })).toHaveCount(1)
  expect(await faults(page, '.take-off')).toEqual([])

  await page.keyboard.press('Escape')
  await expect(show).toHaveAttribute('aria-pressed', 'false')
  await show.press('Enter')
  await expect(show).toHaveAttribute('aria-pressed', 'true')
  await show.press('Enter')
  await expect(show).toHaveAttribute('aria-pressed', 'false')
})

test('the take-off stands by night and on a tablet', async ({ planner }) => {
  const { page } = planner
  await page.setViewportSize({ width: 1024, height: 768 })
  await page.emulateMedia({ colorScheme: 'dark' })
  await planner.openSample()
  const view = await drawerOn(page).turnTo('Take-off', 'Counter')
  await view.getByRole('button', { name: 'Show on the plan' }).click()
  await view.getByRole('searchbox', { name: 'Find' }).fill('bell')
  expect(await faults(page, '.take-off')).toEqual([])
})
