import { copyNow } from '../store/copying'
import { deleteNow, mirrorNow, moveNow, toggleLockNow, turnNow } from '../store/partDeeds'
import { namesOf } from '../store/partNames'
import type { PartId } from '../model/ids'
import type { Planner } from '../store/planner'
import { panned, zoomedAt } from '../store/view'
import { writerFor } from '../units/writer'
import type { KeyDeed } from './keys'
import { movedWords } from './spoken'
import { toolOf } from './tools/index'

const nudge = (planner: Planner, ids: readonly PartId[], dxMm: number, dyMm: number): string => {
  const said = moveNow(planner, ids, dxMm, dyMm)
  const { evaluation, units } = planner.store.getState()
  return said ?? movedWords(evaluation, ids, dxMm, dyMm, writerFor(units))
}

/** The part after or before the one that is selected, in the order of the layout, round and round. */
const step = (planner: Planner, by: 1 | -1): string => {
  const { layout, selection } = planner.store.getState()
  const count = layout.parts.length
  const now = layout.parts.findIndex(({ id }) => id === selection.at(-1))
  const start = now < 0 && by < 0 ? 0 : now
  const part = layout.parts[(start + by + count) % count]
  if (!part) return ''
  planner.select([part.id])
  return namesOf(layout, [part.id])
}

const zoom = (planner: Planner, factor: number): void => {
  const { view, size } = planner.store.getState()
  planner.set({ view: zoomedAt(view, { x: size.width / 2, y: size.height / 2 }, factor) })
}

/** Deeds on what is selected; each says what was done. */
const onSelection = (planner: Planner, deed: KeyDeed): string | undefined => {
  const { selection: ids } = planner.store.getState()
  if (ids.length === 0) return undefined
  switch (deed.does) {
    case 'nudge':
      return nudge(planner, ids, deed.dxMm, deed.dyMm)
    case 'turn':
      return turnNow(planner, ids)
    case 'mirror':
      return mirrorNow(planner, ids, deed.axis)
    case 'copy':
      return copyNow(planner, ids)
    case 'remove':
      return deleteNow(planner, ids)
    case 'lock':
      return toggleLockNow(planner, ids)
    default:
      return undefined
  }
}

/** Does what a key asks of the planner, and gives the words for a screen reader; undefined where the key did nothing. */
export const perform = (planner: Planner, deed: KeyDeed): string | undefined => {
  const { layout, view } = planner.store.getState()
  switch (deed.does) {
    case 'pan':
      planner.set({ view: panned(view, deed.dxPx, deed.dyPx) })
      return ''
    case 'zoom':
      zoom(planner, deed.factor)
      return deed.factor > 1 ? 'Zoomed in' : 'Zoomed out'
    case 'fit':
      planner.fit()
      return 'The whole house is shown'
    case 'tool':
      planner.set({ tool: deed.tool, placing: undefined })
      return toolOf(deed.tool).title
    case 'all':
      planner.select(layout.parts.map(({ id }) => id))
      return `${layout.parts.length} parts selected`
    case 'next':
      return step(planner, 1)
    case 'previous':
      return step(planner, -1)
    default:
      return onSelection(planner, deed)
  }
}
