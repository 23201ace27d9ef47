import { atRest, type Rested } from '../../layout/atRest'
import { movePartsBy } from '../../layout/edits'
import type { Layout } from '../../layout/schema'
import type { PartId } from '../../model/ids'
import { namesOf, nameOf } from '../../store/partNames'
import { keptGuides, NO_SNAP, snap, SNAP_PX, type Snap } from '../snap'
import { movedBy, movingOf, type Moving } from '../snapMoving'
import { sceneOf, type SnapScene } from '../snapScene'
import { anchorOf } from '../standing'
import type { Commit, Gesture, Pointer, Step, ToolContext } from './tool'

/** What is carried, as it stood when it was taken up. */
interface Load {
  readonly ids: readonly PartId[]
  readonly from: Pointer
  readonly scene: SnapScene
  readonly moving: Moving | undefined
}

const loadOf = ({ layout, evaluation }: ToolContext, ids: readonly PartId[]): Moving | undefined => {
  const [first, ...others] = layout.parts.filter(({ id, locked }) => !locked && ids.includes(id))
  if (!first) return undefined
  const built = [first, ...others].flatMap(({ id }) => evaluation.bay.builtOf.get(id) ?? [])
  return movingOf(built, anchorOf(first))
}

const snapOf = ({ moving, scene }: Load, dx: number, dy: number, pointer: Pointer, pxPerMm: number): Snap =>
  moving && !pointer.isFree ? snap(movedBy(moving, dx, dy), scene, SNAP_PX / pxPerMm) : NO_SNAP

const movedLayout = (layout: Layout, ids: readonly PartId[], dxMm: number, dyMm: number): Rested =>
  atRest(layout, movePartsBy(layout, ids, dxMm, dyMm), ids)

const commitOf = ({ ids }: Load, layout: Layout, { onto }: Rested, dxMm: number, dyMm: number): Commit => {
  const edit = (before: Layout) => movedLayout(before, ids, dxMm, dyMm).layout
  const names = namesOf(layout, ids)
  return onto
    ? { label: `Chain ${names} on to ${nameOf(onto)}`, edit, selection: [onto.id] }
    : { label: `Move ${names}`, edit, selection: ids }
}

/** What the load would become with the pointer where it is now. */
const carried = (load: Load, pointer: Pointer, { layout, view }: ToolContext) => {
  const dx = pointer.at.x - load.from.at.x
  const dy = pointer.at.y - load.from.at.y
  const { dxMm, dyMm, guides } = snapOf(load, dx, dy, pointer, view.pxPerMm)
  const moved = movedLayout(layout, load.ids, dx + dxMm, dy + dyMm)
  const at = moved.fitted && anchorOf(moved.fitted)
  return {
    commit: commitOf(load, layout, moved, dx + dxMm, dy + dyMm),
    guides: at ? keptGuides(guides, at) : guides,
  }
}

const LOCKED = 'Locked in place'

const carrying = (load: Load): Gesture => ({
  move: (pointer, context) => {
    if (!load.moving) return { gesture: carrying(load), overlay: { note: LOCKED }, cursor: 'not-allowed' }
    const { commit, guides } = carried(load, pointer, context)
    return { gesture: carrying(load), preview: commit.edit, overlay: { guides }, cursor: 'grabbing' }
  },
  end: (pointer, context) => (load.moving ? { commit: carried(load, pointer, context).commit } : {}),
})

/** Takes parts up where the pointer was pressed, and carries them with it. */
export const carry = (ids: readonly PartId[], from: Pointer, to: Pointer, context: ToolContext): Step => {
  const { evaluation, units } = context
  const load: Load = { ids, from, scene: sceneOf(evaluation, ids, units), moving: loadOf(context, ids) }
  return carrying(load).move(to, context)
}
