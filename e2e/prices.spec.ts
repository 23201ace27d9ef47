import { readFile } from 'node:fs/promises'
import { expect, type Page } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { type Planner, test } from './support/planner'

const SCREW = 'Screw, 2-1/2 in coated'

/** The price book of the sample, and in it the line of the screws. */
const openBook = async (planner: Planner) => {
  const { page } = planner
  await planner.openSample()
  const panel = await drawerOn(page).turnTo('Price book', 'Counter')
  const price = panel.getByLabel(`Price of ${SCREW}`)
  const row = panel.getByRole('row').filter({ has: page.getByLabel(`Price of ${SCREW}`) })
  const type = async (typed: string) => {
    await price.fill(typed)
    await price.press('Enter')
  }
  return { panel, price, row, type }
}

test('a price is blanked, typed and dropped again', async ({ planner }) => {
  const { undo } = planner
  const { panel, price, row, type } = await openBook(planner)
  const banner = panel.getByRole('status').first()
  await expect(banner).toContainText(/2 of the \d+ things in this bay have no price/)
  await expect(banner).toContainText(/\d+ prices are invented placeholders/)
  await expect(row).toContainText('Placeholder')

  // No price is an answer: a dash and one more without, and the placeholder beneath does not come to light.
  await type('')
  await expect(banner).toContainText(/3 of the \d+ things in this bay have no price/)
  await expect(price).toHaveValue('')
  await expect(price).toHaveAttribute('placeholder', '—')
  await expect(row).toContainText('Quote')

  // What is no amount is told and not taken; what is one is a quote.
  await type('about nine')
  await expect(row.getByRole('alert')).toContainText('is no amount of money')
  await type('9,05')
  await expect(price).toHaveValue('9.05')
  await expect(banner).toContainText(/2 of the \d+ things/)
  await expect(undo).toHaveAccessibleName(`Undo: Quote for ${SCREW}`)

  await row.getByRole('button', { name: `Drop the quote for ${SCREW}` }).click()
  await expect(price).toHaveValue('10.80')
  await expect(row).toContainText('Placeholder')
  await expect(row.getByRole('button', { name: `How ${SCREW} is sold` })).toBeFocused()
})

const saveSheet = async (page: Page): Promise<string> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save \d+ rows$/ }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/prices\.csv$/)
  return readFile(await download.path(), 'utf8')
}

const chooseSheet = async (page: Page, text: string): Promise<void> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a file …' }).click(),
  ])
  await chooser.setFiles({ name: 'yard.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
}

test('the price book is saved as a sheet and read back, seen before it is taken', async ({ planner }) => {
  const { page, undo } = planner
  const { panel, price, type } = await openBook(planner)
  await type('9.05')
  await panel.getByText('Import and export sheets').click()
  const sheet = await saveSheet(page)
  await undo.click()
  await expect(price).toHaveValue('10.80')

  await panel.getByLabel('Into').selectOption({ label: 'this job’s quotes' })
  await chooseSheet(page, `${sheet}gloves${','.repeat(18)}\r\n`)
  const preview = panel.getByRole('status').last()
  await expect(preview).toContainText(
    /1 row new in this job’s quotes, 0 changed, \d+ as they stand, 1 line left out/,
  )
  await expect(panel.getByRole('list', { name: 'Lines left out' })).toContainText(
    'Nothing has the key "gloves".',
  )
  await expect(price).toHaveValue('10.80')
  await panel.getByRole('button', { name: 'Take 1 row' }).click()
  await expect(price).toHaveValue('9.05')
  await expect(undo).toHaveAccessibleName('Undo: Prices from yard.csv')

  // A file that is none is told in a sentence.
  await chooseSheet(page, 'towers and screws\n')
  await expect(panel.getByRole('alert')).toContainText('has no column “key”')
})
