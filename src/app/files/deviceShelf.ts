import { get, update } from 'idb-keyval'
import type { Shelf } from '../../store/autosave'

/** The browser's own database, as a shelf. */
export const deviceShelf: Shelf = {
  get: (key) => get(key),
  update: (key, change) => update(key, change),
}
