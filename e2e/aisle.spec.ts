import { writeFile } from 'node:fs/promises'
import { expect } from '@playwright/test'
import { writeLayout } from '../src/layout/file'
import { firstTry } from '../tests/support/firstTry'
import { test } from './support/planner'

/** Row N1 of the sample: its centre line lies 63 in from the west wall, its middle about 600 in north. */
const N1 = [63, 600] as const
const EAST = 'East of the west string'

const eastTo = (inches: number) => [inches, N1[1]] as const

test.beforeEach(({ planner }) => planner.openSample())

test('a row dragged east: its aisle goes from Fits to Tight to Clash with the right width', async ({
  planner,
}) => {
  const { floor, carried, page } = planner
  await floor.click(N1)
  await planner.type(EAST, '61')
  await floor.lookCloser([72, 600])
  await floor.lookCloser([72, 600])
  // Rows are 66 in wide, leaf to leaf; N2 stands on 165 in, so the aisle is 36 in where N1 stands on 63.
  await floor.takeUp(eastTo(61), N1)
  await expect(carried).toContainText('aisle to N2 36" Fits')
  await floor.moveTo(eastTo(64))
  await expect(carried).toContainText('aisle to N2 35" Tight')
  await floor.moveTo(eastTo(81))
  await expect(carried).toContainText('aisle to N2 18" Tight')
  await floor.moveTo(eastTo(82))
  await expect(carried).toContainText('aisle to N2 17" Clash')
  await page.screenshot({ path: test.info().outputPath('clash.png') })
  await floor.drop()
  await expect(carried).toBeEmpty()

  const part = await planner.tab('Part')
  await expect(part.getByLabel(EAST)).toHaveValue(`6' 10"`)
  await expect
    .poll(planner.warnings)
    .toContainEqual(expect.stringMatching(/^Clash N1 to N2 is 17" leaf to leaf/))

  // One drag is one step back.
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')
  await planner.undo.click()
  await expect(planner.undo).toHaveAccessibleName('Undo: Place of N1')
  await planner.tab('Part')
  await expect(part.getByLabel(EAST)).toHaveValue(`5' 1"`)
})

test('Escape drops the drag as if it had never begun', async ({ planner }) => {
  const { floor, carried, page } = planner
  await floor.takeUp(N1, eastTo(90), 'Control')
  await expect(carried).toContainText('N1: aisle to N2')
  await page.keyboard.press('Escape')
  await expect(carried).toBeEmpty()
  await floor.drop('Control')
  await expect(planner.undo).toHaveAccessibleName('Nothing to undo')
  const part = await planner.tab('Part')
  await expect(part.getByLabel(EAST)).toHaveValue(`5' 3"`)
})

test('arrow keys move 1 in, with Shift 1/16 in, and say what became of the aisle', async ({ planner }) => {
  const { floor, page } = planner
  await floor.click(N1)
  const part = await planner.tab('Part')
  await floor.click(N1)
  await page.keyboard.press('ArrowRight')
  await expect(page.getByText('N1 moved 1" east; aisle to N2 35", Tight')).toBeAttached()
  await expect(part.getByLabel(EAST)).toHaveValue(`5' 4"`)
  await page.keyboard.press('Shift+ArrowRight')
  await expect(part.getByLabel(EAST)).toHaveValue(`5' 4-1/16"`)
  await page.keyboard.press('ArrowUp')
  await expect(part.getByLabel('North of the south string')).toHaveValue(`34' 3"`)
})

test('a typed place beats the mouse, to the 1/16 in', async ({ planner }) => {
  const { floor } = planner
  await floor.drag(N1, eastTo(75))
  await planner.type(EAST, '62 7/16')
  const part = await planner.tab('Part')
  await expect(part.getByLabel(EAST)).toHaveValue(`5' 2-7/16"`)
  await expect(planner.undo).toHaveAccessibleName('Undo: Place of N1')
  await planner.type(EAST, 'five feet')
  await expect(part.getByRole('alert')).toContainText('five feet')
  await expect(planner.undo).toHaveAccessibleName('Undo: Place of N1')
})

test('the 22 in that the first try leaves at the post is mended in one press', async ({ planner }) => {
  const file = test.info().outputPath('first-try.json')
  await writeFile(file, writeLayout(firstTry()))
  await planner.openFile(file)
  await expect(planner.notice).toContainText('is open')
  const tooNear = expect.stringMatching(/^Tight N2 to Post is 22" leaf to leaf/)
  await expect.poll(planner.warnings).toContainEqual(tooNear)
  // The first try had its north block 14 in too far south; moved there, its outlets hang over the drain as well.
  const panel = await planner.tab('Warnings')
  const mend = `Move N1, N2 and N3 14" north`
  await panel.getByRole('button', { name: mend }).click()
  await expect(planner.undo).toHaveAccessibleName(`Undo: ${mend}`)
  await expect.poll(planner.warnings).not.toContainEqual(tooNear)
  await expect.poll(planner.warnings).not.toContainEqual(expect.stringContaining('miss the drain line'))
  await planner.pick('N2')
  const part = await planner.tab('Part')
  await expect(part.getByLabel('North of the south string')).toHaveValue(`34' 2"`)
})
