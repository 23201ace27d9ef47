import { expect, type Page } from '@playwright/test'
import { onPage, type Spot } from './support/floor'
import { test, type Planner } from './support/planner'

// A 10 in tablet on its side.
test.use({ viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true })

interface Place {
  readonly x: number
  readonly y: number
}

const STEPS = 8

/** Fingers laid on the page, moved together in straight lines, and lifted. */
const fingers = async (page: Page, from: readonly Place[], to: readonly Place[]): Promise<void> => {
  const browser = await page.context().newCDPSession(page)
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', places: readonly Place[]) =>
    browser.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: places.map((place, id) => ({ ...place, id })),
    })
  await send('touchStart', from)
  for (let step = 1; step <= STEPS; step += 1)
    await send(
      'touchMove',
      from.map(({ x, y }, finger) => ({
        x: x + (((to[finger]?.x ?? x) - x) * step) / STEPS,
        y: y + (((to[finger]?.y ?? y) - y) * step) / STEPS,
      })),
    )
  await send('touchEnd', [])
}

const on = ({ floor }: Planner, spot: Spot): Promise<Place> => onPage(floor.paper, spot)

test('two fingers move the paper and pinch it, and change nothing on it', async ({ planner }) => {
  const { page, undo } = planner
  await planner.openSample()
  const row = await on(planner, [63, 600])
  const beside = { x: row.x + 80, y: row.y }
  await fingers(
    page,
    [row, beside],
    [
      { x: row.x - 40, y: row.y + 30 },
      { x: beside.x + 40, y: beside.y + 30 },
    ],
  )
  // What lay under each finger lies under it still, twice as far apart.
  const after = await on(planner, [63, 600])
  expect(after.x).toBeCloseTo(row.x - 40, 0)
  expect(after.y).toBeCloseTo(row.y + 30, 0)
  await expect(undo).toHaveAccessibleName('Nothing to undo')
  await page.getByRole('button', { name: 'Zoom out' }).tap()
  expect((await on(planner, [63, 600])).x).not.toBeCloseTo(after.x, 0)
})

test('one finger chooses a row, moves it, and carries a part from the shelf on to the floor', async ({
  planner,
}) => {
  const { page, undo, shelfItem } = planner
  await planner.openSample()
  await fingers(page, [await on(planner, [63, 600])], [await on(planner, [63, 560])])
  await expect(undo).toHaveAccessibleName('Undo: Move N1')
  await undo.tap()
  await shelfItem('Tank').scrollIntoViewIfNeeded()
  const tank = (await shelfItem('Tank').boundingBox())!
  await fingers(page, [{ x: tank.x + 20, y: tank.y + tank.height / 2 }], [await on(planner, [180, 800])])
  await expect(undo).toHaveAccessibleName('Undo: Place Tank 1')
})
