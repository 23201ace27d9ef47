/**
 * Keeps the open bay on the device at every commit, with the last good versions behind it. What is kept is the text of
 * the layout file, so that whatever was saved can be read by the same careful reader as a file from a stranger.
 */

/** What stands under the bay's key. */
export interface Saved {
  readonly layoutText: string
  readonly historyText: string
  /** Grows by one at each save. Who saves must have seen the last one: another tab's work is never overwritten unseen. */
  readonly revision: number
}

/** A key-value store on the device. `update` is atomic; every function may reject. */
export interface Shelf {
  readonly get: <T>(key: string) => Promise<T | undefined>
  readonly update: <T>(key: string, change: (held: T | undefined) => T) => Promise<void>
}

export type SaveOutcome =
  | { readonly kind: 'saved'; readonly revision: number }
  /** Another tab saved since this one last looked. */
  | { readonly kind: 'overtaken'; readonly revision: number }
  | { readonly kind: 'refused'; readonly sentence: string }

const BAY_KEY = 'bay'
const KEPT_KEY = 'kept'

/** Versions kept behind the newest, newest first. */
export const VERSIONS_KEPT = 8

export interface KeptVersion {
  readonly layoutText: string
  readonly savedAt: number
}

const REFUSED =
  'This browser would not keep the bay on the device: its storage is full or switched off. Download the bay as a file so that nothing is lost.'

/** Saves over revision `seen`; keeps nothing and says so where another tab has saved in between. */
export const save = async (
  shelf: Shelf,
  seen: number,
  layoutText: string,
  historyText: string,
): Promise<SaveOutcome> => {
  let found = seen
  try {
    await shelf.update<Saved>(BAY_KEY, (held) => {
      found = held?.revision ?? seen
      return held && held.revision !== seen ? held : { layoutText, historyText, revision: seen + 1 }
    })
  } catch {
    return { kind: 'refused', sentence: REFUSED }
  }
  return found === seen ? { kind: 'saved', revision: seen + 1 } : { kind: 'overtaken', revision: found }
}

/** Puts a version behind the newest, and drops the oldest. */
export const keepVersion = async (shelf: Shelf, version: KeptVersion): Promise<void> => {
  await shelf.update<readonly KeptVersion[]>(KEPT_KEY, (held) => {
    const others = (held ?? []).filter(({ layoutText }) => layoutText !== version.layoutText)
    return [version, ...others].slice(0, VERSIONS_KEPT)
  })
}

/** The saved bay, if there is one and the device gives it. */
export const load = async (shelf: Shelf): Promise<Saved | undefined> => {
  try {
    return await shelf.get<Saved>(BAY_KEY)
  } catch {
    return undefined
  }
}

/** The versions behind it, newest first; none where the device gives none. */
export const loadVersions = async (shelf: Shelf): Promise<readonly KeptVersion[]> => {
  try {
    return (await shelf.get<readonly KeptVersion[]>(KEPT_KEY)) ?? []
  } catch {
    return []
  }
}
