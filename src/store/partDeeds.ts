import { atRest } from '../layout/atRest'
import { mirrorParts, movePartsBy, removeParts, turnParts } from '../layout/edits'
import type { Layout } from '../layout/schema'
import { setField } from '../layout/setField'
import type { PartId } from '../model/ids'
import { nameOf, namesOf } from './partNames'
import type { Edit, Planner } from './planner'

/**
 * What a person does to parts, whether by a key, a button or a drag: one entry of the history each. Every deed gives the
 * words for who cannot see it.
 */

const lockedOf = ({ parts }: Layout, ids: readonly PartId[]): readonly PartId[] =>
  parts.filter(({ id, locked }) => locked && ids.includes(id)).map(({ id }) => id)

const looseOf = ({ parts }: Layout, ids: readonly PartId[]): readonly PartId[] =>
  parts.filter(({ id, locked }) => !locked && ids.includes(id)).map(({ id }) => id)

/** `; N1 is locked in place and stays`, or nothing. */
const stayWords = (layout: Layout, ids: readonly PartId[]): string => {
  const locked = lockedOf(layout, ids)
  if (locked.length === 0) return ''
  const stay = locked.length > 1 ? 'are locked in place and stay' : 'is locked in place and stays'
  return `; ${namesOf(layout, locked)} ${stay}`
}

/** Says on screen why nothing happens to what is locked. True where none of these parts is loose. */
const isRefused = ({ store, set }: Planner, ids: readonly PartId[]): boolean => {
  const { layout } = store.getState()
  if (looseOf(layout, ids).length > 0) return false
  const text = `Locked in place: ${namesOf(layout, ids)}. Nothing was changed; unlock first.`
  set({ notice: { tone: 'trouble', text } })
  return true
}

interface Deed {
  /** `Turn`, as undo names it. */
  readonly verb: string
  /** `turned a quarter`, as it is said. */
  readonly done: string
  readonly edit: Edit
  readonly selection?: readonly PartId[]
}

/** Does it to those of these parts that are loose. */
const onLoose = (planner: Planner, ids: readonly PartId[], { verb, done, edit, selection }: Deed): string => {
  if (isRefused(planner, ids)) return ''
  const { layout } = planner.store.getState()
  const names = namesOf(layout, looseOf(layout, ids))
  planner.commit(`${verb} ${names}`, edit, selection)
  return planner.store.getState().layout === layout
    ? `${names} stays as it was`
    : `${names} ${done}${stayWords(layout, ids)}`
}

/** An edit of what stands somewhere, and then lets it come to rest. */
const resting =
  (ids: readonly PartId[], edit: Edit): Edit =>
  (layout) =>
    atRest(layout, edit(layout), ids).layout

/**
 * Moves parts by so much, as the arrow keys do; a row chains on to another that it comes to stand against. Gives the
 * words where they did not simply move.
 */
export const moveNow = (
  planner: Planner,
  ids: readonly PartId[],
  dxMm: number,
  dyMm: number,
): string | undefined => {
  if (isRefused(planner, ids)) return ''
  const { layout } = planner.store.getState()
  const names = namesOf(layout, ids)
  const moved: Edit = (before) => movePartsBy(before, ids, dxMm, dyMm)
  const { onto } = atRest(layout, moved(layout), ids)
  const label = onto ? `Chain ${names} on to ${nameOf(onto)}` : `Move ${names}`
  planner.commit(label, resting(ids, moved), onto ? [onto.id] : ids)
  if (planner.store.getState().layout === layout) return `${names} cannot move`
  return onto && label
}

export const turnNow = (planner: Planner, ids: readonly PartId[]): string =>
  onLoose(planner, ids, {
    verb: 'Turn',
    done: 'turned a quarter',
    edit: resting(ids, (layout) => turnParts(layout, ids)),
  })

/** `x` swaps east and west, `y` north and south. */
export const mirrorNow = (planner: Planner, ids: readonly PartId[], axis: 'x' | 'y'): string =>
  onLoose(planner, ids, {
    verb: 'Mirror',
    done: axis === 'x' ? 'mirrored east-west' : 'mirrored north-south',
    edit: resting(ids, (layout) => mirrorParts(layout, ids, axis)),
  })

export const deleteNow = (planner: Planner, ids: readonly PartId[]): string =>
  onLoose(planner, ids, {
    verb: 'Delete',
    done: 'deleted',
    edit: (layout) => removeParts(layout, ids),
    selection: lockedOf(planner.store.getState().layout, ids),
  })

/** Locks every one of these parts in place, or none. */
export const lockNow = (planner: Planner, ids: readonly PartId[], isLocked: boolean): string => {
  const names = namesOf(planner.store.getState().layout, ids)
  planner.commit(`${isLocked ? 'Lock' : 'Unlock'} ${names}`, (layout) =>
    ids.reduce((now, id) => {
      const edited = setField(now, id, 'locked', isLocked)
      return edited.ok ? edited.layout : now
    }, layout),
  )
  return `${names} ${isLocked ? 'locked in place' : 'unlocked'}`
}

/** Locks these parts, or unlocks them where all of them are locked. */
export const toggleLockNow = (planner: Planner, ids: readonly PartId[]): string => {
  const { layout } = planner.store.getState()
  return lockNow(planner, ids, lockedOf(layout, ids).length < ids.length)
}
