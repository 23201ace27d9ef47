import { shift } from '../../geometry/motion'
import { fittedIn } from '../../layout/atRest'
import type { Layout, Part } from '../../layout/schema'
import { kindOf, type ShelfItem } from '../../parts/index'
import { shelfItemOf } from '../../store/inHand'
import { partFrom, withDropped } from '../dropping'
import { nameOf } from '../../store/partNames'
import { keptGuides, NO_SNAP, snap, SNAP_PX, type Snap } from '../snap'
import type { Guide } from '../snapCandidates'
import { movingOf } from '../snapMoving'
import { sceneOf } from '../snapScene'
import { anchorOf } from '../standing'
import type { Commit, Gesture, Pointer, Step, Tool, ToolContext } from './tool'

const snapOf = (part: Part, pointer: Pointer, { evaluation, units, view }: ToolContext): Snap => {
  const built = kindOf(part).derive(part, evaluation.bay.site)
  const moving = pointer.isFree ? undefined : movingOf([built], anchorOf(part))
  return moving ? snap(moving, sceneOf(evaluation, [], units), SNAP_PX / view.pxPerMm) : NO_SNAP
}

const dropOf = (
  item: ShelfItem,
  pointer: Pointer,
  context: ToolContext,
): { commit: Commit; guides: readonly Guide[] } => {
  const { layout } = context
  const loose = partFrom(item, layout, pointer.at)
  const snapped = snapOf(loose, pointer, context)
  const lined = kindOf(loose).move(loose, shift(snapped.dxMm, snapped.dyMm))
  const part = fittedIn(lined, layout)
  const { onto } = withDropped(layout, part)
  const edit = (before: Layout) => withDropped(before, part).layout
  const label = onto
    ? `Chain a ${item.preset.title.toLowerCase()} on to ${nameOf(onto)}`
    : `Place ${nameOf(part)}`
  const at = part === lined ? undefined : anchorOf(part)
  const guides = at ? keptGuides(snapped.guides, at) : snapped.guides
  return { commit: { label, edit, selection: [onto?.id ?? part.id] }, guides }
}

const NOTHING: Step = { tool: 'select' }

/** The part hangs from the pointer, complete, with every check live. */
const show = (pointer: Pointer, context: ToolContext): Step => {
  const item = shelfItemOf(context.placing)
  if (!item) return NOTHING
  const { commit, guides } = dropOf(item, pointer, context)
  return { preview: commit.edit, overlay: { guides }, cursor: 'copy' }
}

/** Drops it; with Shift the next one is in hand at once. */
const drop = (pointer: Pointer, context: ToolContext): Step => {
  const item = shelfItemOf(context.placing)
  if (!item) return NOTHING
  const { commit } = dropOf(item, pointer, context)
  return { commit, tool: pointer.shift ? 'place' : 'select' }
}

const holding: Gesture = {
  move: (pointer, context) => ({ gesture: holding, ...show(pointer, context) }),
  end: drop,
}

export const place: Tool = {
  id: 'place',
  title: 'Place a part',
  hint: 'Click or press Enter to drop it, arrow keys move it, Escape puts it back on the shelf; Shift keeps another in hand',
  cursor: 'copy',
  hover: show,
  begin: (pointer, context) => ({ gesture: holding, ...show(pointer, context) }),
}
