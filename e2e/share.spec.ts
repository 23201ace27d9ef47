import { expect, type Page } from '@playwright/test'
import { plannerOn, test } from './support/planner'

const linkOn = async (page: Page): Promise<string> => {
  await page.getByRole('button', { name: 'Share' }).click()
  const dialog = page.getByRole('dialog', { name: 'Share this bay' })
  const link = await dialog.getByLabel('Link to this bay').inputValue()
  await dialog.getByRole('button', { name: 'Close' }).click()
  return link
}

test('a link carries the bay to another person, who is asked first and loses nothing', async ({
  planner,
  browser,
  baseURL,
}) => {
  await planner.openSample()
  await planner.floor.drag([63, 600], [50, 610])
  const sent = await planner.saveFile()
  const link = await linkOn(planner.page)
  expect(link.startsWith(`${baseURL}#bay=`)).toBe(true)

  const theirs = plannerOn(await (await browser.newContext()).newPage())
  await theirs.page.goto('/')
  await theirs.newBay(`20'`, `30'`, 'Their own bay')
  await theirs.dropFromShelf('Rack row', [120, 180])
  const own = await theirs.saveFile()

  await theirs.page.goto(link)
  const dialog = theirs.page.getByRole('dialog', { name: 'A bay came with this link' })
  await expect(dialog).toContainText('Kestrel Bend Farm, House 2')
  await expect(dialog).toContainText(
    'takes the place of “Their own bay”, which is kept under Earlier versions',
  )
  await dialog.getByRole('button', { name: 'Leave it' }).click()
  expect((await theirs.saveFile()).bytes.equals(own.bytes)).toBe(true)
  expect(new URL(theirs.page.url()).hash).toBe('')

  await theirs.page.goto(link)
  await dialog.getByRole('button', { name: 'Open it' }).click()
  await expect(theirs.page.getByRole('application', { name: 'Kestrel Bend Farm, House 2' })).toBeVisible()
  expect((await theirs.saveFile()).bytes.equals(sent.bytes)).toBe(true)

  await theirs.page.getByRole('button', { name: 'Earlier versions on this device' }).click()
  await theirs.page
    .getByRole('button', { name: /Their own bay/ })
    .first()
    .click()
  expect((await theirs.saveFile()).bytes.equals(own.bytes)).toBe(true)
})

test('a link that was cut on its way gets a sentence, and the bay stays', async ({ planner }) => {
  await planner.openSample()
  const link = await linkOn(planner.page)
  const before = await planner.saveFile()
  await planner.page.goto(link.slice(0, Math.floor(link.length / 2)))
  const dialog = planner.page.getByRole('dialog', { name: 'A bay came with this link' })
  await expect(dialog.getByRole('alert')).toHaveText(/damaged: .*Your bay is untouched\.$/)
  await dialog.getByRole('button', { name: 'Close' }).click()
  expect((await planner.saveFile()).bytes.equals(before.bytes)).toBe(true)
})
