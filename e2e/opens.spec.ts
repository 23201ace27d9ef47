import { expect, test, type Page } from '@playwright/test'
import { floorOf } from './support/floor'

// The page as a person has it, the worker that keeps it on the device included.
test.use({ serviceWorkers: 'allow' })

/** What the page complains of, and what it asks of any address but its own. */
const watched = (page: Page, home: string) => {
  const complaints: string[] = []
  const strangers: string[] = []
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text())
  })
  page.on('request', (request) => {
    if (/^(https?|wss?):/.test(request.url()) && !request.url().startsWith(home))
      strangers.push(request.url())
  })
  return { complaints, strangers }
}

test('opens on a real bay, drawn, without a complaint and without a word to anyone', async ({
  page,
  baseURL,
}) => {
  const { complaints, strangers } = watched(page, baseURL!)
  await page.goto('./')
  await expect(page).toHaveTitle('Kerf & Fall')
  await expect(page.getByRole('application', { name: 'Kestrel Bend Farm, House 2' })).toBeVisible()
  await expect(page.getByText('480 towers')).toBeVisible()
  await expect.poll(floorOf(page).colours).toBeGreaterThan(20)
  expect(complaints).toEqual([])
  expect(strangers).toEqual([])
})
