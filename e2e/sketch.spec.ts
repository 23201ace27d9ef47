import { expect } from '@playwright/test'
import { test, type Planner } from './support/planner'
import { drawerOn } from './support/drawer'

test.beforeEach(async ({ planner }) => {
  await planner.openSample()
  await planner.newBay("30'", '60 ft', 'Sketch')
})

/** Where the row begins, as the inspector has it. */
const startOf = async (planner: Planner): Promise<string> => {
  const part = await planner.tab('Part')
  return part.getByLabel('North of the south string').inputValue()
}

const racksOf = async (planner: Planner): Promise<string> => {
  const part = await planner.tab('Part')
  return part.getByLabel('Racks chained').inputValue()
}

/** A row that runs north from 120 in, on a line 60 in from the west wall. */
const placeRow = async (planner: Planner) => {
  await planner.dropFromShelf('Rack row', [60, 300])
  await planner.type('East of the west string', '60')
  await planner.type('North of the south string', '120')
}

test('what is dragged from the shelf is drawn, counted and cut', async ({ planner }) => {
  const { undo } = planner
  await expect(planner.towers).toHaveText(/^0 towers/)
  await planner.dropFromShelf('Rack row', [60, 360])
  // Three racks of eight bars with four towers each.
  await expect(planner.towers).toHaveText(/^96 towers/)
  await expect(undo).toHaveAccessibleName('Undo: Place Row 1')
  const before = await planner.cuts('2x4 lumber')
  expect(before.length).toBeGreaterThan(2)

  for (const [title, at, label] of [
    ['Rack row', [200, 360], 'Place Row 2'],
    ['Drain line', [150, 180], 'Place Drain 1'],
    ['Small pit', [330, 180], 'Place Pit 1'],
    ['Main', [120, 590], 'Place Main 1'],
    ['Door', [200, 0], 'Place Door 1'],
  ] as const) {
    await planner.dropFromShelf(title, at)
    await expect(undo).toHaveAccessibleName(`Undo: ${label}`)
  }
  // The door went into the south wall.
  const door = await planner.tab('Part')
  await expect(door.getByLabel('North of the south string')).toHaveValue('0"')
  await expect(planner.towers).toHaveText(/^192 towers/)
  await expect.poll(planner.parts).toEqual(['Row 1', 'Row 2', 'Drain 1', 'Pit 1', 'Main 1', 'Door 1'])
  // Two like rows: the same stops, each with twice the pieces.
  await expect
    .poll(() => planner.cuts('2x4 lumber'))
    .toEqual(before.map((row) => ({ ...row, count: 2 * row.count })))
  await planner.page.screenshot({ path: test.info().outputPath('sketch.png') })
})

test('a row in an empty house says what it lacks, and five presses, a door and a valve make a bay of it', async ({
  planner,
}) => {
  const { page, undo } = planner
  await planner.dropFromShelf('Rack row', [60, 300])
  const panel = await planner.tab('Warnings')
  for (const mend of [
    'Lay a drain line under Row 1',
    'Dig a pit at the end of Drain 1',
    'Lay a main to Row 1',
    'Let Row 1 be fed in the middle',
    'Give Pit 1 a small pump',
  ]) {
    await panel.getByRole('button', { name: mend }).click()
    await expect(undo).toHaveAccessibleName(`Undo: ${mend}`)
  }
  await planner.dropFromShelf('Double door', [180, 0])
  await drawerOn(page).turnTo('Zones')
  await page.getByRole('button', { name: 'Set all trim valves so' }).click()
  await planner.tab('Warnings')
  expect(await planner.warnings()).toEqual([])
  // A second row beside the first joins the same drain and the same main; how they share the pump is for their valves.
  await planner.pick('Row 1')
  await planner.tab('Part')
  await page.getByRole('button', { name: 'Copy', exact: true }).click()
  expect((await planner.warnings()).filter((warning) => !/gph/.test(warning))).toEqual([])
})

test('a row grows by its end handle, rack by rack, and takes up another dropped against its end', async ({
  planner,
}) => {
  const { floor, undo } = planner
  await placeRow(planner)
  expect(await racksOf(planner)).toBe('3')
  // A rack is 10 ft, so the row ends 360 in on; the handle at its end is pulled a rack further.
  await floor.drag([60, 480], [60, 600])
  await expect(undo).toHaveAccessibleName('Undo: Reshape Row 1')
  await expect(planner.towers).toHaveText(/^128 towers/)
  expect(await racksOf(planner)).toBe('4')
  await floor.drag([60, 600], [60, 240])
  await expect(planner.towers).toHaveText(/^32 towers/)

  // A single rack set down on the same line where the row ends.
  await planner.dropFromShelf('Single rack', [60, 300])
  await expect(undo).toHaveAccessibleName('Undo: Chain a single rack on to Row 1')
  await expect(planner.towers).toHaveText(/^64 towers/)
  await expect.poll(planner.parts).toEqual(['Row 1'])
  expect(await racksOf(planner)).toBe('2')
  expect(await startOf(planner)).toBe(`10' 0"`)
})

test('copies and repeats', async ({ planner }) => {
  const { page, undo } = planner
  await placeRow(planner)
  const panel = await planner.tab('Part')
  await panel.getByRole('button', { name: 'Copy' }).click()
  await expect(planner.towers).toHaveText(/^192 towers/)
  await expect(undo).toHaveAccessibleName('Undo: Copy Row 1')
  await undo.click()
  await planner.pick('Row 1')
  await planner.tab('Part')
  await panel.getByText('Repeat at a spacing').click()
  await panel.getByLabel('Times').fill('2')
  await page.keyboard.press('Enter')
  await panel.getByRole('button', { name: 'Repeat', exact: true }).click()
  await expect(planner.towers).toHaveText(/^288 towers/)
  await expect.poll(planner.parts).toEqual(['Row 1', 'Row 2', 'Row 3'])
  // What is offered leaves a work aisle between, so nothing is too near.
  await expect.poll(planner.warnings).not.toContainEqual(expect.stringMatching(/leaf to leaf/))
})

test('undo and redo, by button and by key, say what they do and outlive a reload', async ({ planner }) => {
  const { page, undo, redo, towers } = planner
  await planner.dropFromShelf('Rack row', [60, 360])
  await planner.dropFromShelf('Rack row', [200, 360])
  await expect(undo).toHaveAccessibleName('Undo: Place Row 2')
  await undo.click()
  await expect(towers).toHaveText(/^96 towers/)
  await expect(undo).toHaveAccessibleName('Undo: Place Row 1')
  await expect(redo).toHaveAccessibleName('Redo: Place Row 2')
  await page.keyboard.press('Control+z')
  await expect(towers).toHaveText(/^0 towers/)
  await expect(undo).toHaveAccessibleName('Nothing to undo')
  await page.keyboard.press('Control+Shift+z')
  await redo.click()
  await expect(towers).toHaveText(/^192 towers/)
  await expect(redo).toHaveAccessibleName('Nothing to redo')

  await planner.reload()
  await expect(towers).toHaveText(/^192 towers/)
  await expect(undo).toHaveAccessibleName('Undo: Place Row 2')
  await undo.click()
  await expect(towers).toHaveText(/^96 towers/)
})
