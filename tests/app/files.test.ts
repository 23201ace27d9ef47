import { describe, expect, test } from 'vitest'
import { fileName } from '../../src/app/files/download'
import { keepBay } from '../../src/app/files/keepBay'
import { startBay } from '../../src/app/files/startBay'
import { writeLayout } from '../../src/layout/file'
import { writeHistory } from '../../src/layout/historyFile'
import { movePartsBy } from '../../src/layout/edits'
import { load, loadVersions, save } from '../../src/store/autosave'
import { createPlanner } from '../../src/store/planner'
import { firstTry } from '../support/firstTry'
import { memoryShelf } from '../support/memoryShelf'

const moveRow = (planner: ReturnType<typeof createPlanner>) =>
  planner.commit('Move', (layout) =>
    movePartsBy(layout, [layout.parts.find(({ kind }) => kind === 'rack-row')!.id], 25.4, 0),
  )

const settled = () => new Promise((resolve) => setTimeout(resolve, 20))

describe('file names', () => {
  test.each([
    ['Kestrel Bend Farm, House 2', 'kestrel-bend-farm-house-2.png'],
    ['Süßwasser №3 / ../..', 'su-wasser-no3.png'],
    ['///', 'bay.png'],
  ])('%s', (title, name) => expect(fileName(title, '.png')).toBe(name))
})

describe('keeping the bay on the device', () => {
  test('every commit is saved, with its history, and opens again with both', async () => {
    const shelf = memoryShelf()
    const planner = createPlanner(firstTry())
    keepBay(planner, shelf, 0)
    moveRow(planner)
    moveRow(planner)
    await settled()
    const start = await startBay(shelf)
    expect(start.isSample).toBe(false)
    expect(start.layout).toEqual(planner.store.getState().layout)
    expect(start.history.done).toHaveLength(2)
  })

  test('a tab that was overtaken says so and stops saving', async () => {
    const shelf = memoryShelf()
    const planner = createPlanner(firstTry())
    keepBay(planner, shelf, 0)
    await save(shelf, 0, 'another tab', '')
    moveRow(planner)
    await settled()
    expect(planner.store.getState().notice?.text).toMatch(/Another tab saved this bay/)
    moveRow(planner)
    await settled()
    expect((await load(shelf))?.layoutText).toBe('another tab')
  })

  test('a full device is said once, with the way out', async () => {
    const shelf = memoryShelf()
    shelf.isFull = true
    const planner = createPlanner(firstTry())
    keepBay(planner, shelf, 0)
    moveRow(planner)
    await settled()
    expect(planner.store.getState().notice?.tone).toBe('trouble')
    expect(planner.store.getState().notice?.text).toMatch(/Download the bay/)
  })

  test('a bay that another takes the place of stays behind as a version, just as it was', async () => {
    const shelf = memoryShelf()
    const planner = createPlanner(firstTry())
    keepBay(planner, shelf, 0)
    moveRow(planner)
    await settled()
    // The first commit has put a version behind; the second comes too soon for one.
    moveRow(planner)
    const left = writeLayout(planner.store.getState().layout)
    planner.open({ ...firstTry(), title: 'Another' })
    // Nobody has worked on this one, so it need not be kept.
    planner.open({ ...firstTry(), title: 'A third' })
    await settled()
    const kept = (await loadVersions(shelf)).map(({ layoutText }) => layoutText)
    expect(kept).toContain(left)
    expect(kept.some((text) => text.includes('"title": "Another"'))).toBe(false)
  })

  test('a damaged bay gives way to the last good version', async () => {
    const shelf = memoryShelf()
    const layout = firstTry()
    const planner = createPlanner(layout)
    keepBay(planner, shelf, 0)
    moveRow(planner)
    await settled()
    await save(shelf, 1, writeLayout(layout).slice(0, 4000), writeHistory({ done: [], undone: [] }))
    const start = await startBay(shelf)
    expect(start.trouble).toMatch(/last good version/)
    expect(start.layout.title).toBe(layout.title)
  })
})
