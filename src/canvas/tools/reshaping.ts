import type { Point } from '../../geometry/point'
import { replacePart } from '../../layout/edits'
import type { Layout, Part } from '../../layout/schema'
import { kindOf } from '../../parts/index'
import type { PartHandle } from '../hit'
import { nameOf } from '../../store/partNames'
import { keptGuides, NO_SNAP, snapPoint, SNAP_PX } from '../snap'
import { sceneOf, type SnapScene } from '../snapScene'
import { isDragged, type Commit, type Gesture, type Pointer, type Step, type ToolContext } from './tool'

/** A handle in hand; the pointer may have taken it a little off its middle. */
interface Grip {
  readonly handle: PartHandle
  readonly offset: Point
  readonly scene: SnapScene
}

const partOf = ({ parts }: Layout, { part }: PartHandle): Part | undefined =>
  parts.find(({ id }) => id === part)

const dragged = (layout: Layout, handle: PartHandle, to: Point): Layout => {
  const part = partOf(layout, handle)
  return part ? replacePart(layout, kindOf(part).drag(part, handle.id, to)) : layout
}

const handlePlace = (layout: Layout, handle: PartHandle): Point | undefined => {
  const part = partOf(layout, handle)
  return (
    part &&
    kindOf(part)
      .handles(part)
      .find(({ id }) => id === handle.id)?.at
  )
}

const commitOf = (handle: PartHandle, to: Point, layout: Layout): Commit => {
  const part = partOf(layout, handle)
  return { label: `Reshape ${part ? nameOf(part) : 'part'}`, edit: (before) => dragged(before, handle, to) }
}

const pulled = ({ handle, offset, scene }: Grip, pointer: Pointer, { layout, view }: ToolContext) => {
  const at = { x: pointer.at.x + offset.x, y: pointer.at.y + offset.y }
  const { dxMm, dyMm, guides } = pointer.isFree ? NO_SNAP : snapPoint(at, scene, SNAP_PX / view.pxPerMm)
  const commit = commitOf(handle, { x: at.x + dxMm, y: at.y + dyMm }, layout)
  const place = handlePlace(commit.edit(layout), handle)
  return { commit, guides: place ? keptGuides(guides, place) : [] }
}

const pulling = (grip: Grip): Gesture => ({
  move: (pointer, context) => {
    const { commit, guides } = pulled(grip, pointer, context)
    return { gesture: pulling(grip), preview: commit.edit, overlay: { guides }, cursor: 'grabbing' }
  },
  end: (pointer, context) => ({ commit: pulled(grip, pointer, context).commit }),
})

/** The handle is pressed, and may yet be dragged: a press alone must not line it up with what is near. */
const gripping = (grip: Grip, from: Pointer): Gesture => ({
  move: (pointer, context) =>
    isDragged(from, pointer)
      ? pulling(grip).move(pointer, context)
      : { gesture: gripping(grip, from), cursor: 'grabbing' },
  end: () => ({}),
})

/** Takes a handle, which then follows the pointer as far as its part allows. */
export const pull = (handle: PartHandle, from: Pointer, { evaluation, units }: ToolContext): Step => {
  const offset = { x: handle.at.x - from.at.x, y: handle.at.y - from.at.y }
  const grip = { handle, offset, scene: sceneOf(evaluation, [handle.part], units) }
  return { gesture: gripping(grip, from), cursor: 'grabbing' }
}
