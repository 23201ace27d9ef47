import { readFile } from 'node:fs/promises'
import { pathToFileURL } from 'node:url'
import { expect } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'

test('the crew’s papers open from a file without a signal, and a phone keeps what is ticked', async ({
  planner,
  browser,
}) => {
  await planner.openSample()
  const { page } = planner
  await drawerOn(page).turnTo('On the phone', 'Crew box')
  await page.getByLabel('For', { exact: true }).selectOption('Buyer')
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save for phones' }).click(),
  ])
  expect(saved.suggestedFilename()).toBe('kestrel-bend-farm-house-2-buyer-draft-of-1.html')
  const path = test.info().outputPath('papers.html')
  await saved.saveAs(path)
  expect(await readFile(path, 'utf8')).toContain('Kestrel Bend Farm, House 2')

  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, offline: true })
  const phone = await context.newPage()
  const asked: string[] = []
  phone.on('request', (request) => asked.push(request.url()))
  await phone.goto(pathToFileURL(path).href)
  await phone.getByText('Shop list').click()
  const first = phone.getByRole('checkbox').first()
  await first.check()
  await expect(phone.locator('summary small')).toHaveText(/^1 of \d+ done$/)
  const box = (await first.boundingBox())!
  expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44)
  const wide = await phone.evaluate(() => document.documentElement.scrollWidth)
  expect(wide).toBeLessThanOrEqual(390)

  await phone.reload()
  await phone.getByText('Shop list').click()
  await expect(phone.getByRole('checkbox').first()).toBeChecked()
  expect(asked.filter((url) => !url.startsWith('file:'))).toEqual([])
  await context.close()
})
