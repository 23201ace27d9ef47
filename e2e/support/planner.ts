import { readFile } from 'node:fs/promises'
import { expect, test as base, type Download, type Locator, type Page } from '@playwright/test'
import { floorOf, onPage, type Floor, type Spot } from './floor'

/** A file that the page handed over. */
export interface Handed {
  readonly name: string
  readonly bytes: Buffer
}

export interface PlanOptions {
  readonly paper: string
  readonly dpi: 200 | 300
}

/** One line of a cut list: `71-15/16"`, 132, `RS-p RS-s halve a 12 ft board`. */
export interface CutRow {
  readonly stop: string
  readonly count: number
  readonly members: string
}

export type Tab = 'Warnings' | 'Cuts' | 'Bay' | 'Part' | 'List'

/** The planner as a person has it before them; its functions are what that person does and reads. */
export interface Planner {
  readonly page: Page
  readonly floor: Floor
  /** Opens the page for the first time: the sample bay is there. */
  readonly openSample: () => Promise<void>
  readonly newBay: (width: string, length: string, name?: string) => Promise<void>
  /** Drags a thing from the shelf onto the floor; its middle comes to lie at the place, give or take what it lines up with. */
  readonly dropFromShelf: (title: string, at: Spot) => Promise<void>
  readonly shelfItem: (title: string) => Locator
  readonly tab: (name: Tab) => Promise<Locator>
  /** Selects a part in the parts list. */
  readonly pick: (name: string) => Promise<void>
  /** Names of all parts, as the parts list has them. */
  readonly parts: () => Promise<string[]>
  /** Types into a field of the inspector, and Enter. */
  readonly type: (field: string, text: string) => Promise<void>
  readonly warnings: () => Promise<string[]>
  readonly cuts: (material: string) => Promise<CutRow[]>
  /** Live distances of what is dragged, as a screen reader says them. */
  readonly carried: Locator
  readonly towers: Locator
  readonly notice: Locator
  readonly undo: Locator
  readonly redo: Locator
  readonly exportPlan: (options: PlanOptions) => Promise<Handed>
  readonly saveFile: () => Promise<Handed>
  readonly openFile: (path: string) => Promise<void>
  /** Waits until the device keeps the last change, then loads the page anew. */
  readonly reload: () => Promise<void>
}

const handed = async (download: Download): Promise<Handed> => ({
  name: download.suggestedFilename(),
  bytes: await readFile(await download.path()),
})

/** Presses what makes the page hand over a file. */
const handedBy = async (page: Page, press: () => Promise<void>): Promise<Handed> => {
  const [download] = await Promise.all([page.waitForEvent('download'), press()])
  return handed(download)
}

const readCuts = (section: Locator): Promise<CutRow[]> =>
  section.locator('tbody tr').evaluateAll((rows) =>
    rows.map((row) => {
      const [stop, count, members] = [...row.children].map((cell) =>
        (cell as HTMLElement).innerText.replace(/\s+/g, ' ').trim(),
      )
      return { stop: stop ?? '', count: Number(count), members: members ?? '' }
    }),
  )

/** What the undo button would be called on a page that loads what the device keeps now. */
const keptUndo = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const request = indexedDB.open('keyval-store')
        request.onsuccess = () => {
          const db = request.result
          const get = db.transaction('keyval').objectStore('keyval').get('bay')
          get.onsuccess = () => {
            db.close()
            const history = JSON.parse(get.result?.historyText ?? '{"done":[]}')
            const last = history.done.at(-1)
            resolve(last ? `Undo: ${last.label}` : 'Nothing to undo')
          }
        }
      }),
  )

export const plannerOn = (page: Page): Planner => {
  const floor = floorOf(page)
  const side = page.getByRole('complementary', { name: 'Warnings, cuts and parts' })
  const undo = page.getByRole('button', { name: /^(Undo:|Nothing to undo)/ })
  const redo = page.getByRole('button', { name: /^(Redo:|Nothing to redo)/ })
  const isDrawn = () => expect.poll(floor.colours).toBeGreaterThan(3)

  const tab = async (name: Tab) => {
    await side.getByRole('tab', { name: new RegExp(`^${name}`) }).click()
    return side.getByRole('tabpanel')
  }

  const shelfItem = (title: string) =>
    page
      .getByRole('navigation', { name: 'Parts shelf' })
      .getByRole('button', { name: new RegExp(`^${title} ?:`) })

  const pick = async (name: string) => {
    const list = await tab('List')
    await list.getByRole('option', { name: new RegExp(`^${name} `) }).click()
  }

  return {
    page,
    floor,
    carried: page.getByRole('status', { name: 'While dragging' }),
    towers: page.getByText(/^[\d,]+ towers/),
    notice: page.locator('.notice'),
    undo,
    redo,
    tab,
    shelfItem,
    pick,
    openSample: async () => {
      await page.goto('./')
      const floor = page.getByRole('application', { name: 'Kestrel Bend Farm, House 2' })
      // Two browsers that start at once on a busy machine take longer to load a page than any step in it.
      await expect(floor).toBeVisible({ timeout: 60_000 })
      await isDrawn()
    },
    newBay: async (width, length, name = 'New bay') => {
      await page.getByRole('button', { name: 'New', exact: true }).click()
      const dialog = page.getByRole('dialog', { name: 'New bay' })
      await dialog.getByLabel('Name').fill(name)
      await dialog.getByLabel('Width inside').fill(width)
      await dialog.getByLabel('Length inside').fill(length)
      await dialog.getByRole('button', { name: 'Make the bay' }).click()
      await expect(dialog).toBeHidden()
      await expect(page.getByRole('application', { name })).toBeVisible()
    },
    dropFromShelf: async (title, at) => {
      const { x, y } = await onPage(floor.paper, at)
      await shelfItem(title).hover()
      await page.mouse.down()
      await page.mouse.move(x - 20, y, { steps: 4 })
      await page.mouse.move(x, y, { steps: 2 })
      await page.mouse.up()
    },
    parts: async () => {
      const list = await tab('List')
      const names = await list.getByRole('option').locator('b').allInnerTexts()
      return names.map((name) => name.trim())
    },
    type: async (field, text) => {
      const panel = await tab('Part')
      await panel.getByLabel(field, { exact: true }).fill(text)
      await page.keyboard.press('Enter')
    },
    warnings: async () => {
      const panel = await tab('Warnings')
      return panel.locator('.warning > p').allInnerTexts()
    },
    cuts: async (material) => readCuts((await tab('Cuts')).getByRole('region', { name: material })),
    exportPlan: async ({ paper, dpi }) => {
      await page.getByRole('button', { name: 'Plan for the crew' }).click()
      const dialog = page.getByRole('dialog', { name: 'Plan for the crew' })
      await dialog.getByLabel('Paper').selectOption({ label: paper })
      await dialog.getByLabel('Dots an inch').selectOption(String(dpi))
      return handedBy(page, () => dialog.getByRole('button', { name: 'Save the picture' }).click())
    },
    saveFile: () => handedBy(page, () => page.getByRole('button', { name: 'Save', exact: true }).click()),
    openFile: async (path) => {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'Open', exact: true }).click(),
      ])
      await chooser.setFiles(path)
    },
    reload: async () => {
      const shown = await undo.getAttribute('aria-label')
      await expect.poll(() => keptUndo(page)).toBe(shown)
      await page.reload()
      await isDrawn()
    },
  }
}

export const test = base.extend<{ planner: Planner }>({
  planner: async ({ page }, use) => use(plannerOn(page)),
})
