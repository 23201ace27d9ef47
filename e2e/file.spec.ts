import { readFile, writeFile } from 'node:fs/promises'
import { expect, type Page } from '@playwright/test'
import { plannerOn, test } from './support/planner'

const SAMPLE = 'Kestrel Bend Farm, House 2'

/** A file for the page to open, in a folder of this test alone. */
const written = async (name: string, text: string): Promise<string> => {
  const path = test.info().outputPath(name)
  await writeFile(path, text)
  return path
}

/** Drops a file on the floor plan as a file manager would. */
const dropFile = async (page: Page, name: string, text: string): Promise<void> => {
  const dataTransfer = await page.evaluateHandle(
    ([title, content]) => {
      const carried = new DataTransfer()
      carried.items.add(new File([content], title, { type: 'application/json' }))
      return carried
    },
    [name, text] as const,
  )
  const paper = page.getByRole('application')
  await paper.dispatchEvent('dragover', { dataTransfer })
  await paper.dispatchEvent('drop', { dataTransfer })
}

test('saved, reloaded, opened from the file: the same bay, to the last letter', async ({ planner }) => {
  await planner.openSample()
  await planner.floor.drag([63, 600], [50, 610])
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')
  const saved = await planner.saveFile()
  expect(saved.name).toBe('kestrel-bend-farm-house-2.bay.json')

  await planner.reload()
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')
  expect((await planner.saveFile()).bytes.equals(saved.bytes)).toBe(true)

  await planner.undo.click()
  await expect(planner.redo).toHaveAccessibleName('Redo: Move N1')
  expect((await planner.saveFile()).bytes.equals(saved.bytes)).toBe(false)
  await planner.openFile(await written('again.json', saved.bytes.toString()))
  await expect(planner.notice).toHaveText(`“${SAMPLE}” is open.`)
  expect((await planner.saveFile()).bytes.equals(saved.bytes)).toBe(true)
})

test('a file dropped on the page opens', async ({ planner }) => {
  await planner.openSample()
  const leanTo = await readFile(new URL('../public/bays/lintel-lane-lean-to.json', import.meta.url), 'utf8')
  const own = leanTo.replace('Lintel Lane lean-to', 'Our lean-to')
  await dropFile(planner.page, 'lean-to.json', own)
  await expect(planner.page.getByRole('application', { name: 'Our lean-to' })).toBeVisible()
  await expect(planner.page.getByText('This is a sample bay')).toBeHidden()
  await expect(planner.towers).toHaveText(/^12 towers/)
  expect((await planner.saveFile()).bytes.toString()).toBe(own)
})

/** Files that must not be opened, each made from a good one, and what is said of them. */
const bad: readonly (readonly [what: string, spoil: (good: string) => string, says: RegExp])[] = [
  ['broken', (good) => good.replace('"parts": [', '"parts": [,'), /is not JSON from line \d+, column \d+/],
  ['cut short', (good) => good.slice(0, good.indexOf('"S2"')), /ends in the middle of part \d+/],
  ['foreign', () => '{"type": "FeatureCollection", "features": []}', /is JSON, but not a Kerf & Fall layout/],
  ['a picture', () => '\u0089PNG\r\n\u001a\n', /is not JSON from line 1, column 1/],
  ['empty', () => '', /is empty/],
  ['newer', (good) => good.replace('"version": 1', '"version": 7'), /newer Kerf & Fall \(version 7/],
  [
    'absurd',
    (good) => good.replace('"racks": 3', '"racks": 4000'),
    /part \d+, the rack row "N1": Racks chained is 4000; it can be 1 to \d+/,
  ],
]

test('a file that is no good gets a sentence, and the bay stays', async ({ planner }) => {
  await planner.openSample()
  await planner.floor.drag([63, 600], [50, 610])
  const before = await planner.saveFile()
  const good = before.bytes.toString()
  for (const [what, spoil, says] of bad) {
    await planner.openFile(await written('bad.json', spoil(good)))
    await expect(planner.notice, what).toHaveText(says)
    await expect(planner.notice, what).toHaveText(/not opened\b.*Your bay is untouched\.$/)
    await planner.notice.getByRole('button', { name: 'Put away' }).click()
    await expect(planner.notice).toBeHidden()
  }
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N1')
  expect((await planner.saveFile()).bytes.equals(before.bytes)).toBe(true)
})

test('two tabs on one bay: the second to save is told, and the first one’s work is kept', async ({
  planner,
  context,
}) => {
  await planner.openSample()
  await planner.floor.drag([63, 600], [50, 600])
  await planner.reload()
  const other = plannerOn(await context.newPage())
  await other.openSample()
  await expect(other.undo).toHaveAccessibleName('Undo: Move N1')

  await planner.floor.drag([165, 600], [166, 650])
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N2')
  await other.floor.drag([267, 600], [270, 650])
  await expect(other.notice).toContainText('Another tab saved this bay')

  await planner.reload()
  await expect(planner.undo).toHaveAccessibleName('Undo: Move N2')
})

test('where the browser keeps nothing, the page says so and the bay can be saved as a file', async ({
  planner,
}) => {
  await planner.page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('Storage is switched off.', 'SecurityError')
    }
  })
  await planner.openSample()
  await planner.floor.drag([63, 600], [50, 610])
  await expect(planner.notice).toContainText('would not keep the bay')
  await expect(planner.notice).toContainText('as a file')
  const [download] = await Promise.all([
    planner.page.waitForEvent('download'),
    planner.notice.getByRole('button', { name: 'Save as a file' }).click(),
  ])
  expect(await readFile(await download.path(), 'utf8')).toBe((await planner.saveFile()).bytes.toString())
})
