import { writeFile } from 'node:fs/promises'
import { expect } from '@playwright/test'
import { test, type Planner } from './support/planner'

const seconds = (count: number) => count * 1000

/** Opens another sample, which is said. */
const openAnother = async ({ page, notice }: Planner): Promise<void> => {
  await page.getByRole('button', { name: 'Samples', exact: true }).click()
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /Lintel Lane/ })
    .click()
  await expect(notice).toContainText('is open')
}

test.beforeEach(async ({ planner, page }) => {
  await page.clock.install()
  await planner.openSample()
})

test('what is said puts itself away once it can have been read', async ({ planner, page }) => {
  await openAnother(planner)
  await page.clock.runFor(seconds(5))
  await expect(planner.notice).toBeVisible()
  await page.clock.runFor(seconds(5))
  await expect(planner.notice).toBeHidden()
})

test('it stays while the pointer or the focus is on it', async ({ planner, page }) => {
  const { notice } = planner
  await openAnother(planner)
  await notice.hover()
  await page.clock.runFor(seconds(20))
  await expect(notice).toBeVisible()
  await notice.getByRole('button', { name: 'Put away' }).focus()
  await page.mouse.move(5, 5)
  await page.clock.runFor(seconds(20))
  await expect(notice).toBeVisible()
  await planner.floor.paper.focus()
  await page.clock.runFor(seconds(10))
  await expect(notice).toBeHidden()
})

test('what went wrong stays until it is put away', async ({ planner, page }, info) => {
  const { notice } = planner
  const path = info.outputPath('none.json')
  await writeFile(path, 'no bay at all')
  await planner.openFile(path)
  await expect(notice).toContainText('untouched')
  await page.clock.runFor(seconds(60))
  await expect(notice).toBeVisible()
  await notice.getByRole('button', { name: 'Put away' }).click()
  await expect(notice).toBeHidden()
})
