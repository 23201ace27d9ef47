import { expect, type Locator, type Page } from '@playwright/test'
import { inches } from '../src/units/length'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'

/** Px of a level's mm on the drawing, from two grips whose levels are known. */
const pxPerMm = async (upper: Locator, lower: Locator): Promise<number> => {
  const [above, below] = await Promise.all([upper.boundingBox(), lower.boundingBox()])
  const [high, low] = await Promise.all(
    [upper, lower].map(async (grip) => Number(await grip.getAttribute('aria-valuenow'))),
  )
  return (below!.y + below!.height / 2 - above!.y - above!.height / 2) / (high! - low!)
}

const dragUp = async (page: Page, grip: Locator, px: number): Promise<void> => {
  const box = (await grip.boundingBox())!
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x, y - px / 2, { steps: 3 })
  await page.mouse.move(x, y - px, { steps: 3 })
}

// Inlets of the sample's drains by the trade notes' worked example (hand arithmetic): N at -11.08 in, S at -11.32 in; overflow
// at -13.0. Up 2 in the overflow stands at -11.0: over S by 0.32 and over N by 0.08 in. So the drains back up, S first.
test('the pit is dragged up 2 in on the long cut: the drain that breaks first is named, and undo takes it back', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { foot, turnTo } = drawerOn(page)
  await turnTo('Long cut', 'Falls home')
  await foot.getByLabel('Cut', { exact: true }).selectOption({ label: 'Drain N' })
  const said = foot.getByRole('status', { name: 'What breaks first' })
  await expect(said).not.toContainText('Breaks first')

  const pit = foot.getByRole('slider', { name: 'Pit up or down, all but its rim' })
  const [start, fall] = [
    foot.getByRole('slider', { name: 'Start level of Drain N' }),
    foot.getByRole('slider', { name: 'Fall of Drain N' }),
  ]
  await expect(pit).toHaveAttribute('aria-valuetext', `-1' 1"`)
  const px = inches(2) * (await pxPerMm(start, fall))
  await dragUp(page, pit, px)
  await expect(pit).toHaveAttribute('aria-valuetext', '-11"')
  await expect(said).toContainText('Breaks first: Backs up Drain S comes into Pit 5/16" under the overflow')
  await page.mouse.up()
  await expect(undo).toHaveAccessibleName('Undo: Levels of Pit')
  await expect(said).toContainText('Worst on this way home')
  await undo.click()
  await expect(pit).toHaveAttribute('aria-valuetext', `-1' 1"`)
})

test('Escape drops a drag, arrow keys move a level by an eighth, a typed number beats both', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const { foot, turnTo } = drawerOn(page)
  await turnTo('Long cut', 'Falls home')
  const running = foot.getByRole('slider', { name: 'Running of Pit' })
  await expect(running).toHaveAttribute('aria-valuetext', `-1' 10-1/2"`)
  await dragUp(page, running, 20)
  await expect(running).not.toHaveAttribute('aria-valuetext', `-1' 10-1/2"`)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await expect(running).toHaveAttribute('aria-valuetext', `-1' 10-1/2"`)
  await expect(undo).toHaveAccessibleName('Nothing to undo')

  await running.focus()
  await running.press('ArrowUp')
  await expect(running).toHaveAttribute('aria-valuetext', `-1' 10-3/8"`)
  await running.press('Shift+ArrowUp')
  await expect(running).toHaveAttribute('aria-valuetext', `-1' 9-3/8"`)
  await expect(undo).toHaveAccessibleName('Undo: Running of Pit')

  await foot.getByLabel('Level', { exact: true }).fill('-22')
  await page.keyboard.press('Enter')
  await expect(running).toHaveAttribute('aria-valuetext', `-1' 10"`)

  await foot.getByLabel('Grip', { exact: true }).selectOption({ label: 'Fall of Drain N' })
  await foot.getByLabel('Fall', { exact: true }).fill('1/4')
  await page.keyboard.press('Enter')
  await expect(foot.getByRole('slider', { name: 'Fall of Drain N' })).toHaveAttribute(
    'aria-valuetext',
    /^1\/4 in\/ft/,
  )
})

test('a row is cut down to the pit, and the same in a table', async ({ planner }) => {
  const { page } = planner
  await planner.openSample()
  const { foot, turnTo } = drawerOn(page)
  await turnTo('Long cut', 'Falls home')
  await foot.getByLabel('Cut', { exact: true }).selectOption({ label: 'N1' })
  await expect(foot.getByRole('img', { name: /^Section along N1, Drain N, Pit/ })).toBeVisible()
  await foot.getByRole('button', { name: 'Show as table' }).click()
  const table = foot.getByRole('region', { name: 'Long cut, as a table' })
  await expect(table.getByRole('row', { name: /^Running/ })).toContainText(`-1' 10-1/2"`)
})
