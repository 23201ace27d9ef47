import { expect } from '@playwright/test'
import { test } from './support/planner'

test('an acre of 10,368 towers opens, and a row of it can be dragged', async ({ planner }) => {
  const { page, floor, carried } = planner
  await planner.openSample()
  await page.getByRole('button', { name: 'Samples' }).click()
  await page.getByRole('button', { name: /^Sallow Flats/ }).click()
  await expect(planner.towers).toHaveText(/^10,368 towers/)
  await page.screenshot({ path: test.info().outputPath('acre.png') })

  // Row 1AS2 runs north on a line 180 in from the west wall; 1AS3 stands 102 in east of it, 36 in leaf to leaf.
  await floor.lookCloser([200, 300])
  await floor.takeUp([180, 300], [190, 300], 'Control')
  await expect(carried).toContainText(/1AS2: aisle to 1AS3 2\d.*" Tight/)
  await floor.drop('Control')
  await expect(planner.undo).toHaveAccessibleName('Undo: Move 1AS2')
  await page.screenshot({ path: test.info().outputPath('dragged.png') })
  await expect.poll(planner.warnings).toContainEqual(expect.stringMatching(/^Tight 1AS2 to 1AS3 is 2\d/))
  await planner.undo.click()
  await expect(planner.undo).toHaveAccessibleName('Nothing to undo')
})
