import { expect, type Page } from '@playwright/test'
import { test, type Planner } from './support/planner'

/** More stops than this before the shelf, and nobody would get there. */
const MOST_TABS = 40

/** Presses Tab until the thing has the focus. */
const tabTo = async (page: Page, thing: ReturnType<Planner['shelfItem']>): Promise<void> => {
  for (let n = 0; n < MOST_TABS; n += 1) {
    if (await thing.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`Not reached with ${MOST_TABS} presses of Tab.`)
}

/** Whether what has the focus is outlined for who cannot see a pointer. */
const isFocusSeen = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const seen = document.querySelector(':focus-visible')
    const style = seen && getComputedStyle(seen)
    return style !== null && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
  })

test('a row is placed, moved, turned, taken out and brought back with keys alone', async ({ planner }) => {
  const { page, shelfItem, undo } = planner
  const keys = page.keyboard
  await planner.openSample()
  await planner.newBay('40 ft', '60 ft', 'By keys')

  await tabTo(page, shelfItem('Rack row'))
  expect(await isFocusSeen(page)).toBe(true)
  await keys.press('Enter')
  await expect(planner.floor.paper).toBeFocused()
  // The part hangs from the middle of the plan; it is live before it is dropped.
  await expect(planner.towers).toHaveText(/^96 towers/)
  for (let n = 0; n < 5; n += 1) await keys.press('ArrowLeft')
  await keys.press('Enter')
  await expect(undo).toHaveAccessibleName('Undo: Place Row 1')
  expect(await isFocusSeen(page)).toBe(true)

  await keys.press('ArrowUp')
  await expect(undo).toHaveAccessibleName('Undo: Move Row 1')
  await expect(page.getByText(/^Row 1 moved 1" north/)).toBeAttached()
  await keys.press('r')
  await expect(undo).toHaveAccessibleName('Undo: Turn Row 1')
  await keys.press('Delete')
  await expect(planner.towers).toHaveText(/^0 towers/)
  await keys.press('Control+z')
  await expect(planner.towers).toHaveText(/^96 towers/)
  await expect(undo).toHaveAccessibleName('Undo: Turn Row 1')
  await keys.press('Control+z')
  await expect(undo).toHaveAccessibleName('Undo: Move Row 1')
  await keys.press('Control+Shift+z')
  await expect(undo).toHaveAccessibleName('Undo: Turn Row 1')
})

test('the parts list mirrors the plan: what stands where, how it fares, what is selected', async ({
  planner,
}) => {
  const { page, floor } = planner
  await planner.openSample()
  const list = await planner.tab('List')
  const n1 = list.getByRole('option', { name: /^N1 / })
  await expect(n1).toHaveAccessibleName(
    `N1 Fits Within 93.2 % Stands 5' 3" east, 34' 2" north Starved 34.2 %`,
  )
  await expect(n1).toHaveAttribute('aria-selected', 'false')
  await floor.click([63, 600])
  await expect(n1).toHaveAttribute('aria-selected', 'true')
  await floor.drag([63, 600], [98, 600])
  await expect(n1).toHaveAccessibleName(/^N1 Clash/)

  await n1.focus()
  await page.keyboard.press('ArrowDown')
  await expect(list.getByRole('option', { name: /^S1 / })).toHaveAttribute('aria-selected', 'true')
  await expect(n1).toHaveAttribute('aria-selected', 'false')
})
