import { expect, test, type Page } from '@playwright/test'

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

/** How many colours the floor plan shows: one where nothing is drawn. */
const coloursDrawn = (page: Page): Promise<number> =>
  page
    .locator('canvas')
    .first()
    .evaluate((canvas: HTMLCanvasElement) => {
      const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data
      return new Set(pixels && new Uint32Array(pixels.buffer)).size
    })

test('opens on a real bay, drawn, without a complaint and without a word to anyone', async ({
  page,
  baseURL,
}) => {
  const { complaints, strangers } = watched(page, baseURL!)
  await page.goto('./')
  await expect(page).toHaveTitle('Kerf & Fall')
  await expect(page.getByRole('application', { name: 'Kestrel Bend Farm, House 2' })).toBeVisible()
  await expect(page.getByText('480 towers')).toBeVisible()
  await expect.poll(() => coloursDrawn(page)).toBeGreaterThan(20)
  expect(complaints).toEqual([])
  expect(strangers).toEqual([])
})

test('the page itself never scrolls at 1280 x 800', async ({ page }) => {
  await page.goto('./')
  await expect(page.getByRole('application')).toBeVisible()
  const over = await page.evaluate(() => {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement
    return { x: scrollWidth - clientWidth, y: scrollHeight - clientHeight }
  })
  expect(over).toEqual({ x: 0, y: 0 })
})
