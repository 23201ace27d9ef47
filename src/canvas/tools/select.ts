import { replacePart, toggleTower } from '../../layout/edits'
import type { Layout, Part } from '../../layout/schema'
import type { PartId } from '../../model/ids'
import { kindOf } from '../../parts/index'
import { hangingPlaceAt } from '../hangingPlace'
import { handleAt, handlesOf, hitIndexOf, type PartHandle } from '../hit'
import { nameOf } from '../../store/partNames'
import { span } from './marquee'
import { carry } from './moving'
import { pull } from './reshaping'
import {
  isDragged,
  reachOf,
  type Gesture,
  type Pointer,
  type Step,
  type Tool,
  type ToolContext,
} from './tool'

const partOf = ({ parts }: Layout, id: PartId | undefined): Part | undefined =>
  parts.find((part) => part.id === id)

const partUnder = (pointer: Pointer, context: ToolContext): Part | undefined => {
  const index = hitIndexOf(context.evaluation.bay.built, null)
  return partOf(context.layout, index.at(pointer.at, reachOf(pointer, context) / 2))
}

const handleUnder = (pointer: Pointer, context: ToolContext): PartHandle | undefined =>
  handleAt(handlesOf(context.layout, context.selection), pointer.at, reachOf(pointer, context))

const without = (selection: readonly PartId[], id: PartId) => selection.filter((other) => other !== id)

/** What a click without a drag leaves chosen. */
const clicked = (id: PartId, wasChosen: boolean, { shift }: Pointer, selection: readonly PartId[]) => {
  if (!shift) return [id]
  return wasChosen ? without(selection, id) : selection
}

/** A part is pressed, and may yet be dragged. */
const pressing = (id: PartId, wasChosen: boolean, from: Pointer): Gesture => ({
  move: (pointer, context) =>
    isDragged(from, pointer)
      ? carry(context.selection, from, pointer, context)
      : { gesture: pressing(id, wasChosen, from), cursor: 'grab' },
  end: (_, { selection }) => ({ selection: clicked(id, wasChosen, from, selection) }),
})

const pressPart = ({ id }: Part, pointer: Pointer, { selection }: ToolContext): Step => {
  const wasChosen = selection.includes(id)
  const chosen = wasChosen ? selection : [...(pointer.shift ? selection : []), id]
  return { gesture: pressing(id, wasChosen, pointer), selection: chosen, cursor: 'grab' }
}

const changed = (layout: Layout, id: PartId, change: (part: Part) => Part): Layout => {
  const part = partOf(layout, id)
  return part && !part.locked ? replacePart(layout, change(part)) : layout
}

const addPoint = (part: Part, { at }: Pointer): Step => ({
  commit: {
    label: `Add a point to ${nameOf(part)}`,
    edit: (layout) => changed(layout, part.id, (now) => kindOf(now).addPoint?.(now, at) ?? now),
    selection: [part.id],
  },
})

const removePoint = (part: Part, handle: PartHandle): Step => ({
  commit: {
    label: `Take a point off ${nameOf(part)}`,
    edit: (layout) => changed(layout, part.id, (now) => kindOf(now).removePoint?.(now, handle.id) ?? now),
  },
})

/** Takes out the tower under the pointer, or puts it back. */
const toggle = (part: Part, pointer: Pointer, context: ToolContext): Step | undefined => {
  const rack = context.evaluation.bay.builtOf.get(part.id)?.rack
  const place = rack && hangingPlaceAt(rack, pointer.at, reachOf(pointer, context) / 2)
  return (
    place && {
      commit: {
        label: `Tower ${place.station}-${place.line} of ${nameOf(part)} out or back`,
        edit: (layout) => toggleTower(layout, part.id, place.station, place.line),
      },
    }
  )
}

const pressHandle = (handle: PartHandle, pointer: Pointer, context: ToolContext): Step => {
  const part = partOf(context.layout, handle.part)
  return pointer.alt && part && kindOf(part).removePoint
    ? removePoint(part, handle)
    : pull(handle, pointer, context)
}

const begin = (pointer: Pointer, context: ToolContext): Step => {
  const handle = handleUnder(pointer, context)
  if (handle) return pressHandle(handle, pointer, context)
  const part = partUnder(pointer, context)
  if (!part) return span(pointer)
  if (pointer.clicks === 2 && kindOf(part).addPoint) return addPoint(part, pointer)
  return (pointer.alt ? toggle(part, pointer, context) : undefined) ?? pressPart(part, pointer, context)
}

const hover = (pointer: Pointer, context: ToolContext): Step => {
  if (handleUnder(pointer, context)) return { cursor: 'grab' }
  return { cursor: partUnder(pointer, context) ? 'move' : 'default' }
}

export const select: Tool = {
  id: 'select',
  title: 'Select and move',
  hint: 'Press a part and drag it; drag on bare floor to choose several; Shift adds; Alt takes a tower or a point out; Ctrl lets nothing line up',
  cursor: 'default',
  hover,
  begin,
}
