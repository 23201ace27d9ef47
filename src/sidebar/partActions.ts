import { boxOf } from '../geometry/box'
import { along, type Heading } from '../geometry/motion'
import { copyParts, mirrorParts, removeParts, repeatParts, turnParts } from '../layout/edits'
import type { Layout } from '../layout/schema'
import { setField } from '../layout/setField'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import type { Planner } from '../store/planner'
import { inches } from '../units/length'
import { partsTitle } from './words'

/** A copy stands this far north-east of its original, so that both are seen. */
const COPY_STEP_MM = inches(24)

const partsOf = ({ parts }: Layout, ids: readonly PartId[]) => parts.filter(({ id }) => ids.includes(id))

const titleOf = (planner: Planner, ids: readonly PartId[]): string =>
  partsTitle(partsOf(planner.store.getState().layout, ids))

/** Commits an edit that adds parts, and selects what it added. */
const commitAdded = (planner: Planner, label: string, edit: (layout: Layout) => Layout): void => {
  const { layout } = planner.store.getState()
  const after = edit(layout)
  const added = after.parts.slice(layout.parts.length).map(({ id }) => id)
  planner.commit(label, () => after, added)
}

export const copyNow = (planner: Planner, ids: readonly PartId[]): void =>
  commitAdded(planner, `Copy ${titleOf(planner, ids)}`, (layout) =>
    copyParts(layout, ids, COPY_STEP_MM, COPY_STEP_MM),
  )

export const repeatNow = (
  planner: Planner,
  ids: readonly PartId[],
  times: number,
  stepMm: number,
  way: Heading,
): void => {
  const { x, y } = along(way)
  commitAdded(planner, `Repeat ${titleOf(planner, ids)} ${times} times`, (layout) =>
    repeatParts(layout, ids, times, x * stepMm, y * stepMm),
  )
}

export const turnNow = (planner: Planner, ids: readonly PartId[]): void =>
  planner.commit(`Turn ${titleOf(planner, ids)}`, (layout) => turnParts(layout, ids))

/** `x` swaps east and west, `y` north and south. */
export const mirrorNow = (planner: Planner, ids: readonly PartId[], axis: 'x' | 'y'): void =>
  planner.commit(`Mirror ${titleOf(planner, ids)}`, (layout) => mirrorParts(layout, ids, axis))

export const deleteNow = (planner: Planner, ids: readonly PartId[]): void =>
  planner.commit(`Delete ${titleOf(planner, ids)}`, (layout) => removeParts(layout, ids), [])

/** Locks every one of these parts in place, or none. */
export const lockNow = (planner: Planner, ids: readonly PartId[], isLocked: boolean): void =>
  planner.commit(`${isLocked ? 'Lock' : 'Unlock'} ${titleOf(planner, ids)}`, (layout) =>
    ids.reduce((now, id) => {
      const edited = setField(now, id, 'locked', isLocked)
      return edited.ok ? edited.layout : now
    }, layout),
  )

/** From one set of parts to the next so that an aisle lies between them, mm: their own extent and the aisle. */
export const stepWithAisle = (built: readonly Built[], way: Heading, aisleMm: number): number => {
  const outlines = built.flatMap(({ bodies }) => bodies.flatMap(({ outline }) => outline))
  if (outlines.length === 0) return aisleMm
  const box = boxOf(outlines)
  return (way === 0 || way === 180 ? box.x1 - box.x0 : box.y1 - box.y0) + aisleMm
}
