import { expect, type Locator } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { type Planner, test } from './support/planner'

/** The number that some words begin with, without its unit; signs as the page writes them. */
const numberIn = (words: string): number => Number.parseFloat(words.replace('−', '-').replace(',', ''))

/** A line of what the inspector says of a row's water. */
const waterLine = async (water: Locator, name: string): Promise<string> =>
  water.locator('.readouts > div', { hasText: name }).locator('dd').first().innerText()

/** Selects a row and gives back what the inspector says of its water. */
const waterOf = async ({ pick, tab }: Planner, row: string): Promise<Locator> => {
  await pick(row)
  return (await tab('Part')).getByRole('region', { name: 'Water', exact: true })
}

/** How many of all counted things the bay takes, by what they are called. */
const counted = async ({ tab }: Planner): Promise<ReadonlyMap<string, number>> => {
  const cuts = await tab('Cuts')
  const fold = cuts.locator('details', { hasText: 'Counted things' })
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click()
  const lines = await fold.locator('tbody tr').allInnerTexts()
  return new Map(
    lines.map((line) => {
      const [title = '', count = ''] = line.split('\t')
      return [title.trim(), numberIn(count)] as const
    }),
  )
}

const piecesOf = (counts: ReadonlyMap<string, number>): number =>
  [...counts.values()].reduce((sum, count) => sum + count, 0)

test('a split feed: the worst tower, the evenness and the counts change, and undo brings all back', async ({
  planner,
}) => {
  test.slow()
  const { page, undo } = planner
  await planner.openSample()
  const water = await waterOf(planner, 'N2')
  const before = {
    least: await waterLine(water, 'Least tower'),
    spread: await waterLine(water, 'Spread'),
    counts: await counted(planner),
  }
  await expect(page.getByRole('option', { name: /^N2 / })).toBeHidden()

  const { turnTo, line } = drawerOn(page)
  const feeds = await turnTo('Feeds')
  await expect(feeds.getByRole('combobox', { name: 'Row' })).toContainText('N2')
  const name = 'Split once, 3/4 in poly pipe'
  const [spread, state, least, , pieces] = await line('Feeds of the row', name)
  expect(state).toContain('Even')
  await page.screenshot({ path: test.info().outputPath('feeds.png') })
  await feeds.getByRole('button', { name: `Feed it so: ${name}` }).click()
  await expect(undo).toHaveAccessibleName(`Undo: ${name} for N2`)
  await expect(feeds.getByRole('row', { name: /As drawn$/ })).toContainText(name)

  // In the bay the row is as even as it was said to be by itself, and its worst tower is another with more water.
  const after = await waterOf(planner, 'N2')
  await expect(after.getByRole('heading')).toContainText('Even')
  expect(Math.abs(numberIn(await waterLine(after, 'Spread')) - numberIn(spread!))).toBeLessThan(2)
  const leastNow = await waterLine(after, 'Least tower')
  expect(numberIn(leastNow)).toBeGreaterThan(numberIn(before.least))
  expect(leastNow.split(',').slice(1)).not.toEqual(before.least.split(',').slice(1))
  expect(numberIn(least!)).toBeGreaterThan(0)
  await page.screenshot({ path: test.info().outputPath('split.png') })

  // The whole bay takes as many pieces more as the comparison said, tees among them.
  const counts = await counted(planner)
  expect(piecesOf(counts) - piecesOf(before.counts)).toBe(numberIn(pieces!))
  const tees = (of: ReadonlyMap<string, number>) =>
    [...of].filter(([title]) => /\btee\b/i.test(title)).reduce((sum, [, count]) => sum + count, 0)
  expect(tees(counts)).toBeGreaterThan(tees(before.counts))

  await undo.click()
  expect(await counted(planner)).toEqual(before.counts)
  const again = await waterOf(planner, 'N2')
  expect(await waterLine(again, 'Least tower')).toBe(before.least)
  expect(await waterLine(again, 'Spread')).toBe(before.spread)
})

test('the valve card: one press sets all trim valves, and every zone gives its towers the same', async ({
  planner,
}) => {
  // It walks through the tabs of many rows.
  test.slow()
  const { page, undo } = planner
  await planner.openSample()
  const rows = ['N1', 'N2', 'N3', 'S1', 'S2', 'S3']
  const means = async (): Promise<number[]> => {
    const found: number[] = []
    for (const row of rows) found.push(numberIn(await waterLine(await waterOf(planner, row), 'Mean tower')))
    return found
  }
  const apart = (values: readonly number[]): number => Math.max(...values) / Math.min(...values) - 1

  // The sample's valves stand as the card says; one that is opened wide in the inspector puts all zones out.
  const { turnTo, line } = drawerOn(page)
  const zones = await turnTo('Zones')
  await expect(zones).toContainText('All trim valves are set so.')
  await planner.pick('S1')
  const part = await planner.tab('Part')
  await part.locator('summary', { hasText: 'Valves' }).click()
  await part.getByLabel('Trim valve: wide open').check()
  await expect(undo).toHaveAccessibleName('Undo: Trim valve, turns open of S1')
  expect(apart(await means())).toBeGreaterThan(0.05)

  await turnTo('Zones')
  const [, turns] = await line('Valve card', 'S1')
  await zones.getByRole('button', { name: 'Set all trim valves so' }).click()
  await expect(undo).toHaveAccessibleName('Undo: Trim valves set by the valve card')
  expect(apart(await means())).toBeLessThan(0.05)
  await expect(zones).toContainText('All trim valves are set so.')

  // The row's inspector says how far its valve stands open, and takes another number, but none that the valve has not.
  await planner.pick('S1')
  await planner.tab('Part')
  await part.locator('summary', { hasText: 'Valves' }).click()
  const field = part.getByLabel('Trim valve, turns open', { exact: true })
  await expect(field).toHaveValue(numberIn(turns!).toFixed(1))
  await field.fill('9')
  await page.keyboard.press('Enter')
  await expect(part.getByRole('alert')).toContainText('has 5 turns from shut to open, and not 9')
  await page.keyboard.press('Escape')
  await part.getByLabel('Trim valve: wide open').check()
  await expect(field).toBeHidden()
  await page.screenshot({ path: test.info().outputPath('valves.png') })
  await undo.click()
  await undo.click()
  await expect(zones.getByRole('button', { name: 'Set all trim valves so' })).toBeVisible()
})

test('a zone shut: its towers run dry and say why, the others get more', async ({ planner }) => {
  const { page, undo } = planner
  await planner.openSample()
  const { turnTo, line } = drawerOn(page)
  const zones = await turnTo('Zones')
  const open = 'Zones opened and shut'
  const [before] = await line(open, 'S1')

  // Asked first: what would move, and nothing has.
  await zones.getByRole('button', { name: 'What shutting N1 would do' }).click()
  await expect(zones).toContainText(/Shutting N1 changes \w+ most, by \+\d/)
  const [, foretold] = await line(open, 'S1')
  expect(await planner.undo.getAttribute('aria-label')).toBe('Nothing to undo')

  await zones.getByRole('button', { name: 'Shut the valve of N1' }).click()
  await expect(undo).toHaveAccessibleName('Undo: Shut N1')
  await expect.poll(async () => (await line(open, 'N1'))[0]).toBe('shut')
  await turnTo('Zones')
  const [after] = await line(open, 'S1')
  expect(numberIn(after!)).toBeGreaterThan(numberIn(before!))
  const change = 100 * (numberIn(after!) / numberIn(before!) - 1)
  // Flows are read to a tenth of a gallon a minute.
  expect(Math.abs(change - numberIn(foretold!))).toBeLessThan(3)

  const water = await waterOf(planner, 'N1')
  await expect(water).toContainText(/No water: .*shut/)
  await water.getByRole('button', { name: 'Open in the water run' }).click()
  await expect(drawerOn(page).foot).toContainText(
    'N1 is behind a valve that is shut. Open it in the row’s inspector, under Valves.',
  )
  await expect((await planner.tab('List')).getByRole('option', { name: /^N1 / })).toContainText('no water')
  await undo.click()
  await turnTo('Zones')
  expect((await line(open, 'S1'))[0]).toBe(before)
})

test('tubes cut by station make a row more even; a bucket test changes what the bay is reckoned with', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.openSample()
  const before = await waterOf(planner, 'N2')
  const spread = numberIn(await waterLine(before, 'Spread'))
  const { turnTo } = drawerOn(page)
  const tubes = await turnTo('Tubes')
  await tubes.getByRole('button', { name: 'Cut the tubes so' }).click()
  await expect(tubes).toContainText('The row’s tubes are cut so.')
  expect(numberIn(await waterLine(before, 'Spread'))).toBeLessThan(spread / 2)

  // The same groups stand in the row's inspector; a longer first one is typed there.
  const part = await planner.tab('Part')
  await part.locator('summary', { hasText: /^Tubes$/ }).click()
  const first = part.getByLabel('Group A, cut to')
  await first.fill('60"')
  await page.keyboard.press('Enter')
  await expect(undo).toHaveAccessibleName('Undo: Tubes cut by station of N2')
  await expect(tubes.getByRole('button', { name: 'Cut the tubes so' })).toBeVisible()
  await part.getByLabel('Group A, stations').fill('0')
  await page.keyboard.press('Enter')
  await expect(part.getByRole('alert')).toContainText('Stations is 0; it can be 1 to 240')
  await page.keyboard.press('Escape')
  await page.screenshot({ path: test.info().outputPath('groups.png') })
  await undo.click()
  await undo.click()
  expect(numberIn(await waterLine(before, 'Spread'))).toBe(spread)

  await tubes.getByRole('button', { name: 'Write down a bucket test' }).click()
  await tubes.getByLabel('Flow into the bucket').fill('6 gph')
  await page.keyboard.press('Enter')
  await expect(tubes).toContainText(/The tube runs as one of .* bore/)
  // A wider tube holds less head back, so that the laterals tell more.
  await expect.poll(async () => numberIn(await waterLine(before, 'Spread'))).toBeGreaterThan(spread + 5)
  await page.screenshot({ path: test.info().outputPath('bucket.png') })
  await tubes.getByRole('button', { name: 'Go by the catalogue' }).click()
  await expect.poll(async () => numberIn(await waterLine(before, 'Spread'))).toBe(spread)
})
