import { boxOf } from '../../geometry/box'
import type { PartId } from '../../model/ids'
import { hitIndexOf } from '../hit'
import { isDragged, type Gesture, type Pointer, type Step, type ToolContext } from './tool'

const chosen = (from: Pointer, to: Pointer, { evaluation, selection }: ToolContext): readonly PartId[] => {
  const inside = isDragged(from, to)
    ? hitIndexOf(evaluation.bay.built, null).within(boxOf([from.at, to.at]))
    : []
  return from.shift ? [...new Set([...selection, ...inside])] : inside
}

const spanning = (from: Pointer): Gesture => ({
  move: (pointer) => ({
    gesture: spanning(from),
    ...(isDragged(from, pointer) && { overlay: { marquee: boxOf([from.at, pointer.at]) } }),
    cursor: 'crosshair',
  }),
  end: (pointer, context) => ({ selection: chosen(from, pointer, context) }),
})

/** Draws a box on the floor and chooses what stands wholly in it; with Shift it adds. A click on bare floor lets go. */
export const span = (from: Pointer): Step => ({ gesture: spanning(from) })
