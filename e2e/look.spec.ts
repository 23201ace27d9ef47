import { expect, type Locator, type Page } from '@playwright/test'
import { test, type Tab } from './support/planner'

/** The page as designed, and a 10 in tablet on its side. */
const screens = [
  { width: 1280, height: 800 },
  { width: 1024, height: 768 },
]

const tabs: readonly Tab[] = ['Warnings', 'Cuts', 'Part', 'List']

/** How much longer and wider than the window the page is, px. */
const pageOver = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement
    return { x: scrollWidth - clientWidth, y: scrollHeight - clientHeight }
  })

/** Things whose content is wider than they are, as their class and words. */
const clipped = (things: Locator): Promise<string[]> =>
  things.evaluateAll((elements) =>
    elements
      .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
      .map(({ className, textContent }) => `${className}: ${textContent?.slice(0, 40)}`),
  )

/** Lengths that break across two lines. */
const broken = (lengths: Locator): Promise<string[]> =>
  lengths.evaluateAll((elements) =>
    elements
      .filter((element) => element.getClientRects().length > 1)
      .map(({ textContent }) => textContent ?? ''),
  )

/** Things that reach over the edge of the window. */
const cutOff = (page: Page, things: Locator): Promise<string[]> => {
  const { width } = page.viewportSize()!
  return things.evaluateAll(
    (elements, edge) =>
      elements
        .filter((element) => {
          const { left, right } = element.getBoundingClientRect()
          return left < 0 || right > edge
        })
        .map(({ className, textContent }) => `${className}: ${textContent?.slice(0, 40)}`),
    width,
  )
}

for (const viewport of screens)
  test.describe(`${viewport.width} x ${viewport.height}`, () => {
    test.use({ viewport })

    test('nothing overflows, nothing is cut off', async ({ planner }) => {
      const { page } = planner
      await planner.openSample()
      await planner.floor.click([63, 600])
      for (const name of tabs) {
        const panel = await planner.tab(name)
        await expect(panel).toBeVisible()
        expect(await pageOver(page), name).toEqual({ x: 0, y: 0 })
        expect(
          await clipped(
            page.locator('.frame-bar, .frame-hint, .frame-shelf, .frame-side *:not(.only-heard)'),
          ),
          name,
        ).toEqual([])
        expect(await broken(page.locator('.unbroken')), name).toEqual([])
        expect(await cutOff(page, page.getByRole('button')), name).toEqual([])
        await page.screenshot({ path: test.info().outputPath(`${name}.png`) })
      }
    })
  })

test.describe('the page zoomed to twice its size', () => {
  // 1280 x 800 at 200 %: WCAG 2.2, 1.4.4.
  test.use({ viewport: { width: 640, height: 400 } })

  test('keeps the floor plan wide enough to work on, and all the rest can be scrolled to', async ({
    planner,
  }) => {
    const { page, floor } = planner
    await planner.openSample()
    const paper = await floor.paper.boundingBox()
    expect(paper?.width).toBeGreaterThan(400)
    expect(paper?.height).toBeGreaterThan(300)
    expect((await pageOver(page)).x).toBe(0)
    await page.getByRole('button', { name: 'Keep the sample' }).click()
    await planner.pick('N1')
    await expect(page.getByRole('option', { name: /^N1 / })).toBeInViewport()
    await planner.shelfItem('Pit').scrollIntoViewIfNeeded()
    await expect(planner.shelfItem('Pit')).toBeInViewport()
  })
})
