import { boxOf, joined, type Box } from '../geometry/box'
import { along, type Heading } from '../geometry/motion'
import { newcomers } from '../layout/difference'
import { repeatParts } from '../layout/edits'
import type { Part } from '../layout/schema'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import { namesOf } from './partNames'
import type { Edit, Planner, PlannerState } from './planner'

/** Commits an edit that adds parts, and selects what it added. */
const commitAdded = (planner: Planner, label: string, edit: Edit): void => {
  const { layout } = planner.store.getState()
  const after = edit(layout)
  planner.commit(label, () => after, newcomers(layout, after))
}

const repeated =
  (ids: readonly PartId[], times: number, stepMm: number, way: Heading): Edit =>
  (layout) => {
    const { x, y } = along(way)
    return repeatParts(layout, ids, times, x * stepMm, y * stepMm)
  }

/** Lays further sets of the same parts; gives the words for who cannot see it. */
export const repeatNow = (
  planner: Planner,
  ids: readonly PartId[],
  times: number,
  stepMm: number,
  way: Heading,
): string => {
  const names = namesOf(planner.store.getState().layout, ids)
  commitAdded(planner, `Repeat ${names} ${times} times`, repeated(ids, times, stepMm, way))
  return `${names} repeated ${times} times`
}

const extentOf = (built: readonly Built[]): Box | undefined => {
  const boxes = built.flatMap(({ bodies }) => bodies.map(({ outline }) => boxOf(outline)))
  return boxes.length > 0 ? boxes.reduce(joined) : undefined
}

const isEastWest = (way: Heading): boolean => way === 0 || way === 180

/** From one set of parts to the next so that an aisle lies between them, mm: their own extent and the aisle. */
export const stepWithAisle = (built: readonly Built[], way: Heading, aisleMm: number): number => {
  const box = extentOf(built)
  if (!box) return aisleMm
  return (isEastWest(way) ? box.x1 - box.x0 : box.y1 - box.y0) + aisleMm
}

/** Rows are copied sideways, doors along their wall: across the way that the first of them heads. */
const waysAcross = (part: Part | undefined): readonly [Heading, Heading] =>
  part && 'heading' in part && isEastWest(part.heading) ? [90, 270] : [0, 180]

/** Room in the house beyond a box, mm. */
const roomBeyond = ({ evaluation }: PlannerState, box: Box, way: Heading): number => {
  const house = boxOf(evaluation.bay.house.outline)
  switch (way) {
    case 0:
      return house.x1 - box.x1
    case 90:
      return house.y1 - box.y1
    case 180:
      return box.x0 - house.x0
    case 270:
      return box.y0 - house.y0
  }
}

/** Lays a copy beside its original, rows a work aisle apart, to the side where the house has room for it. */
export const copyNow = (planner: Planner, ids: readonly PartId[]): string => {
  const state = planner.store.getState()
  const { layout, evaluation } = state
  const built = ids.flatMap((id) => evaluation.bay.builtOf.get(id) ?? [])
  const isRows = built.some(({ rack }) => rack)
  const [way, back] = waysAcross(layout.parts.find(({ id }) => ids.includes(id)))
  const stepMm = stepWithAisle(built, way, isRows ? layout.settings.workAisleMm : 0)
  const box = extentOf(built)
  const hasRoom = !box || roomBeyond(state, box, way) >= stepMm || roomBeyond(state, box, back) < stepMm
  const names = namesOf(layout, ids)
  commitAdded(planner, `Copy ${names}`, repeated(ids, 1, stepMm, hasRoom ? way : back))
  return `${names} copied`
}
