import { expect, type Page } from '@playwright/test'
import { test } from './support/planner'
import { faults } from './support/scan'

/** Row N1 of the sample: its centre line lies 63 in from the west wall, its middle about 600 in north. */
const N1 = [63, 600] as const

const PROVEN = 'Proven: no plan costs less.'
const LOOKING = 'Looking for a cheaper plan …'

/** The worker's code comes only when the test says so, as over a slow line: until then nothing can be proved. */
const holdWorker = async (page: Page): Promise<() => void> => {
  let release = () => {}
  const released = new Promise<void>((resolve) => {
    release = resolve
  })
  await page.route('**/cutWorker-*.js', async (route) => {
    await released
    await route.continue()
  })
  return release
}

/** The cut lists as they stand on the screen, the lumber's apart. */
const cutsOn = (page: Page) => {
  const lumber = page.getByRole('region', { name: '2x4 lumber' })
  return {
    lumber,
    bought: lumber.locator('.cuts-buy'),
    standings: page.locator('.cuts-standing'),
    stop: lumber.getByRole('button', { name: 'Stop looking' }),
    goOn: lumber.getByRole('button', { name: 'Look on' }),
  }
}

test('every list of the sample becomes proven, and the boards are the cheapest there are', async ({
  planner,
}) => {
  const release = await holdWorker(planner.page)
  await planner.openSample()
  await planner.tab('Cuts')
  const { lumber, bought, standings } = cutsOn(planner.page)
  await expect(lumber).toContainText(LOOKING)
  await expect(lumber).toContainText(/Within \d+\.\d % of a bound that no plan can beat\./)
  const first = await bought.innerText()
  await expect(planner.page.getByText('Prices are invented placeholders')).toHaveCount(1)
  release()
  await expect(lumber).toContainText(PROVEN)
  await expect(lumber).not.toContainText(LOOKING)
  expect(await bought.innerText()).not.toBe(first)
  const words = await standings.allInnerTexts()
  expect(words.length).toBeGreaterThan(5)
  expect(new Set(words.map((each) => each.trim()))).toEqual(new Set([PROVEN]))
  await planner.page.getByRole('button', { name: 'Open the saw bench' }).click()
  await expect(planner.page.getByRole('tab', { name: 'Saw list' })).toHaveAttribute('aria-selected', 'true')
})

test('the panel is without fault while a plan is looked for', async ({ planner }) => {
  await holdWorker(planner.page)
  await planner.openSample()
  await planner.tab('Cuts')
  await expect(cutsOn(planner.page).stop).toBeVisible()
  expect(await faults(planner.page, '.cuts')).toEqual([])
})

test('the search is stopped and taken up again', async ({ planner }) => {
  const release = await holdWorker(planner.page)
  await planner.openSample()
  await planner.tab('Cuts')
  const { lumber, stop, goOn } = cutsOn(planner.page)
  await stop.click()
  await expect(lumber).toContainText('The search was stopped.')
  release()
  await expect(lumber).toContainText(/Within \d+\.\d %/)
  await goOn.click()
  await expect(lumber).toContainText(PROVEN)
})

test('nothing is looked for during a drag; it begins anew when the row is put down', async ({ planner }) => {
  const { page, floor, carried } = planner
  const release = await holdWorker(page)
  await planner.openSample()
  await planner.tab('Cuts')
  const { lumber } = cutsOn(page)
  await expect(lumber).toContainText(LOOKING)
  await floor.takeUp(N1, [N1[0] + 24, N1[1]])
  await expect(carried).not.toBeEmpty()
  release()
  // A worker that was not ended would have proved the list before the row is put down.
  await floor.moveTo([N1[0] + 30, N1[1]])
  await floor.moveTo([N1[0] + 36, N1[1]])
  await expect(lumber).not.toContainText(PROVEN)
  await floor.drop()
  await expect(lumber).toContainText(PROVEN)
})

test('other pieces are another list: the search for the old one ends, and undo finds the old proof', async ({
  planner,
}) => {
  const { page } = planner
  await planner.openSample()
  await planner.tab('Cuts')
  const { lumber, bought } = cutsOn(page)
  await expect(lumber).toContainText(PROVEN)
  const before = await bought.innerText()
  await planner.floor.click(N1)
  await page.keyboard.press('Delete')
  await planner.tab('Cuts')
  await expect.poll(() => bought.innerText()).not.toBe(before)
  await expect(lumber).toContainText(PROVEN)
  await planner.undo.click()
  await expect(lumber).toContainText(PROVEN)
  await expect.poll(() => bought.innerText()).toBe(before)
})

test('a worker that does not come is told of, and the first plans stay', async ({ planner }) => {
  const { page } = planner
  await page.route('**/cutWorker-*.js', (route) => route.abort())
  await planner.openSample()
  await planner.tab('Cuts')
  const { lumber, bought, goOn } = cutsOn(page)
  await expect(planner.notice).toContainText('The search for cheaper cutting plans broke off.')
  await expect(lumber).toContainText(/Within \d+\.\d %/)
  await expect(bought).toContainText('12 ft')
  await page.unroute('**/cutWorker-*.js')
  await goOn.click()
  await expect(lumber).toContainText(PROVEN)
})
