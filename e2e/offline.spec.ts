import { expect } from '@playwright/test'
import { test } from './support/planner'

test.use({ serviceWorkers: 'allow' })

/** Until the device holds the program: the worker is at work once all files are kept. */
const KEPT = async () => {
  const { active } = await navigator.serviceWorker.ready
  return active?.state
}

test('without a signal the page starts, shows the kept bay, and opens what it never showed before', async ({
  planner,
  context,
}) => {
  const { page } = planner
  await planner.openSample()
  await expect.poll(() => page.evaluate(KEPT)).toBe('activated')
  await planner.floor.drag([63, 600], [50, 610])
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')

  await context.setOffline(true)
  await planner.reload()
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')
  await page.getByRole('button', { name: 'Saw bench' }).click()
  await expect(page.getByRole('tab', { name: 'Saw list' })).toBeVisible()
  await page.getByRole('button', { name: 'Samples' }).click()
  await page.getByRole('button', { name: /Old Dairy corner/ }).click()
  await expect(page.getByRole('application', { name: 'Old Dairy corner' })).toBeVisible()
})
