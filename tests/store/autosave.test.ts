import { describe, expect, test } from 'vitest'
import { keepVersion, load, loadVersions, save, VERSIONS_KEPT } from '../../src/store/autosave'
import { memoryShelf } from '../support/memoryShelf'

describe('autosave', () => {
  test('what was saved is loaded, with its history', async () => {
    const shelf = memoryShelf()
    expect(await save(shelf, 0, 'layout', 'history')).toEqual({ kind: 'saved', revision: 1 })
    expect(await load(shelf)).toEqual({ layoutText: 'layout', historyText: 'history', revision: 1 })
  })

  test('two tabs on one bay: the one that has not seen the last save does not overwrite it', async () => {
    const shelf = memoryShelf()
    await save(shelf, 0, 'first tab', '')
    const late = await save(shelf, 0, 'second tab', '')
    expect(late).toEqual({ kind: 'overtaken', revision: 1 })
    expect((await load(shelf))?.layoutText).toBe('first tab')
  })

  test('a full device is said in a sentence, and what was kept stays', async () => {
    const shelf = memoryShelf()
    await save(shelf, 0, 'kept', '')
    shelf.isFull = true
    const outcome = await save(shelf, 1, 'lost?', '')
    expect(outcome.kind).toBe('refused')
    expect(outcome.kind === 'refused' && outcome.sentence).toMatch(/Download the bay as a file/)
    expect((await load(shelf))?.layoutText).toBe('kept')
  })

  test('the last good versions are kept, newest first, each once', async () => {
    const shelf = memoryShelf()
    for (let n = 0; n < VERSIONS_KEPT + 3; n++) await keepVersion(shelf, { layoutText: `v${n}`, savedAt: n })
    await keepVersion(shelf, { layoutText: 'v9', savedAt: 99 })
    const kept = await loadVersions(shelf)
    expect(kept).toHaveLength(VERSIONS_KEPT)
    expect(kept[0]).toEqual({ layoutText: 'v9', savedAt: 99 })
    expect(kept.filter(({ layoutText }) => layoutText === 'v9')).toHaveLength(1)
  })
})
