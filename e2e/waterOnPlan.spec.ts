import { expect } from '@playwright/test'
import { test } from './support/planner'

/** Row N1 of the sample: its centre line lies 63 in from the west wall, its middle about 600 in north. */
const N1 = [63, 600] as const

/** So far north that no main is within ten feet of its inlet. */
const FAR_NORTH = [63, 760] as const

test('flow on the plan: the least tower by name, a row dragged away from its main, and back', async ({
  planner,
}) => {
  const { page, floor, carried } = planner
  await planner.openSample()
  const legend = page.getByRole('region', { name: 'Legend of the plan' })
  await expect(legend).toBeHidden()
  const plainColours = await floor.colours()

  await page.getByRole('radio', { name: 'Flow' }).check()
  await expect(legend).toContainText('Flow of each tower')
  await expect(legend).toContainText('4.0 gph wanted')
  await expect(legend.getByText(/^\d+\.\d gph$/)).toHaveCount(3)
  await expect(legend).not.toContainText('without water')
  expect(plainColours).toBeGreaterThan(3)
  await page.screenshot({ path: test.info().outputPath('flow.png') })

  // The least tower stands in the legend and in the inspector of its row with one number.
  const least = legend.getByRole('button', { name: /least: / })
  const said = (await least.innerText()).match(/least: (\w+), (line \d, station \d+): (\d+\.\d gph)/)
  if (!said) throw new Error(`The legend names no least tower: "${await least.innerText()}"`)
  const [, row, place, flow] = said
  await least.click()
  const part = await planner.tab('Part')
  const water = part.getByRole('region', { name: 'Water', exact: true })
  await expect(part.getByRole('heading', { level: 2 })).toContainText(row!)
  await expect(water).toContainText(`${flow}, ${place}`)
  await expect(water.getByRole('heading')).toContainText(/Even|Drifting|Starved/)

  // Dragged out of its main's reach, the row falls dry, live; Escape brings every number back.
  const before = await legend.innerText()
  await page.getByRole('button', { name: 'Show the whole house' }).click()
  await floor.takeUp(N1, FAR_NORTH, 'Control')
  await expect(carried).toContainText(/N1 from \w+ to no water: no main is in reach/)
  await expect(legend).toContainText('96 towers without water')
  expect(await legend.innerText()).not.toBe(before)
  await page.screenshot({ path: test.info().outputPath('dry.png') })
  await page.keyboard.press('Escape')
  await floor.drop('Control')
  await expect.poll(() => legend.innerText()).toBe(before)

  // Dropped there, its inspector says why; undo brings the water back.
  await floor.drag(N1, FAR_NORTH, 'Control')
  await expect(water).toContainText('No water: no main is in reach.')
  const list = await planner.tab('List')
  await expect(list.getByRole('option', { name: /^N1 / })).toContainText('no water')
  await planner.undo.click()
  await expect.poll(() => legend.innerText()).toBe(before)
})

test('velocity in the pipes, by the keyboard alone', async ({ planner }) => {
  const { page } = planner
  await planner.openSample()
  await page.getByRole('radio', { name: 'Plain' }).focus()
  await page.keyboard.press('ArrowRight')
  await expect(page.getByRole('radio', { name: 'Flow' })).toBeChecked()
  await page.keyboard.press('ArrowRight')
  const legend = page.getByRole('region', { name: 'Legend of the plan' })
  await expect(legend).toContainText('Velocity in the pipes')
  await expect(legend).toContainText('5.0 ft/s at most')
  await page.screenshot({ path: test.info().outputPath('velocity.png') })
  await page.getByTitle('Change units').click()
  await expect(legend).toContainText('1.52 m/s at most')
})

test.describe('on a 10 in tablet at night', () => {
  test.use({ viewport: { width: 1024, height: 768 }, colorScheme: 'dark' })

  test('the legend and the switch are wholly in the window, and nothing of them is cut off', async ({
    planner,
  }) => {
    const { page } = planner
    await planner.openSample()
    await page.getByRole('radio', { name: 'Flow' }).check()
    const legend = page.getByRole('region', { name: 'Legend of the plan' })
    for (const thing of [legend, page.getByRole('group', { name: 'Painted on the plan' })]) {
      const box = await thing.boundingBox()
      expect(box!.x).toBeGreaterThanOrEqual(0)
      expect(box!.x + box!.width).toBeLessThanOrEqual(1024)
      expect(box!.y + box!.height).toBeLessThanOrEqual(768)
      expect(await thing.evaluate(({ scrollWidth, clientWidth }) => scrollWidth <= clientWidth)).toBe(true)
    }
    await page.screenshot({ path: test.info().outputPath('night.png') })
  })
})
