import type { Shelf } from '../../src/store/autosave'

/** A shelf in memory; `isFull` makes every write fail, as a full disk does. */
export const memoryShelf = (): Shelf & { isFull: boolean } => {
  const held = new Map<string, unknown>()
  const shelf = {
    isFull: false,
    get: async <T>(key: string) => held.get(key) as T | undefined,
    update: async <T>(key: string, change: (now: T | undefined) => T) => {
      const next = change(held.get(key) as T | undefined)
      if (shelf.isFull) throw new DOMException('Quota exceeded', 'QuotaExceededError')
      held.set(key, next)
    },
  }
  return shelf
}
