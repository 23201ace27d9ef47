import type { Point } from '../../geometry/point'
import { NO_SNAP, snapPoint, SNAP_PX, type Snap } from '../snap'
import { sceneOf } from '../snapScene'
import { isDragged, type Gesture, type Pointer, type Step, type Tool, type ToolContext } from './tool'

/** Where the tape's hook catches: on edges, centre lines and walls. It is not laid to whole inches. */
const caught = (pointer: Pointer, { evaluation, units, view }: ToolContext): Snap & { at: Point } => {
  const found = pointer.isFree
    ? NO_SNAP
    : snapPoint(pointer.at, { ...sceneOf(evaluation, [], units), strings: undefined }, SNAP_PX / view.pxPerMm)
  return { ...found, at: { x: pointer.at.x + found.dxMm, y: pointer.at.y + found.dyMm } }
}

const stretch = (from: Point, pointer: Pointer, context: ToolContext) => {
  const { at, guides } = caught(pointer, context)
  return { measure: { from, to: at }, guides }
}

/** The tape lies where it was let go, to be read, until the next press. */
const lying = (from: Point, to: Point): Gesture => {
  const step = (): Step => ({
    gesture: lying(from, to),
    overlay: { measure: { from, to } },
    cursor: 'crosshair',
  })
  return { move: step, end: step }
}

const letGo = (from: Point, pointer: Pointer, context: ToolContext): Step => {
  const { at } = caught(pointer, context)
  return lying(from, at).move(pointer, context)
}

/** Hooked at one end: by a drag the release ends it, by a click the next press does. */
const pulling = (from: Point, pressed: Pointer): Gesture => ({
  move: (pointer, context) => ({
    gesture: pulling(from, pressed),
    overlay: stretch(from, pointer, context),
    cursor: 'crosshair',
  }),
  end: (pointer, context) =>
    isDragged(pressed, pointer)
      ? letGo(from, pointer, context)
      : { gesture: pulling(from, pressed), cursor: 'crosshair' },
  press: (pointer, context) => letGo(from, pointer, context),
})

export const tape: Tool = {
  id: 'tape',
  title: 'Measuring tape',
  hint: 'Drag from one place to another, or click both; edges and centre lines catch the hook',
  cursor: 'crosshair',
  hover: (pointer, context) => ({
    overlay: { guides: caught(pointer, context).guides },
    cursor: 'crosshair',
  }),
  begin: (pointer, context) => ({
    gesture: pulling(caught(pointer, context).at, pointer),
    cursor: 'crosshair',
  }),
}
