import type { Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Layout } from '../../layout/schema'
import type { PartId } from '../../model/ids'
import type { Edit, ToolId } from '../../store/planner'
import type { View } from '../../store/view'
import type { Units } from '../../units/length'
import type { Guide } from '../snapCandidates'

/** The pointer as tools see it. */
export interface Pointer {
  /** On the floor that is on screen, mm; a pointer that has left the paper counts at its edge. */
  readonly at: Point
  /** From the canvas's top left corner, px, wherever that is. */
  readonly px: Point
  readonly shift: boolean
  readonly alt: boolean
  /** Nothing lines up while Ctrl or Meta is held, nor while arrow keys move the pointer. */
  readonly isFree: boolean
  readonly isTouch: boolean
  /** 2 for the second press of a double click. */
  readonly clicks: number
}

/** What a tool may know: the layout as it was committed, never its own preview. */
export interface ToolContext {
  readonly layout: Layout
  /** Of that layout. */
  readonly evaluation: Evaluation
  readonly selection: readonly PartId[]
  /** Shelf item in hand, as `kind/preset`. */
  readonly placing: string | undefined
  readonly view: View
  readonly units: Units
}

/** A straight distance that is shown with its length. */
export interface Measure {
  readonly from: Point
  readonly to: Point
}

/** What is shown over the floor while a gesture lasts. */
export interface Overlay {
  readonly guides?: readonly Guide[]
  readonly measure?: Measure
  readonly marquee?: Box
  /** One line beside the pointer, such as why nothing moves. */
  readonly note?: string
}

/** A change worth keeping, with the name that undo shows. */
export interface Commit {
  readonly label: string
  readonly edit: Edit
  readonly selection?: readonly PartId[]
}

/** A gesture under way. It is a value: each move gives the next one. */
export interface Gesture {
  readonly move: (pointer: Pointer, context: ToolContext) => Step
  /** The pointer is let go; a gesture may go on without it. */
  readonly end: (pointer: Pointer, context: ToolContext) => Step
  /** The pointer is pressed again; without this the press begins a new gesture. */
  readonly press?: (pointer: Pointer, context: ToolContext) => Step
}

/**
 * What comes of one event. A step without a gesture ends it. `preview` lasts until the next step; leaving it out drops
 * it, and so a cancelled gesture is a step with nothing in it.
 */
export interface Step {
  readonly gesture?: Gesture
  readonly preview?: Edit
  readonly overlay?: Overlay
  readonly cursor?: string
  readonly commit?: Commit
  readonly selection?: readonly PartId[]
  readonly view?: View
  /** The tool to go on with. */
  readonly tool?: ToolId
}

/** A tool: a small state machine without a page, driven by pointers in mm. It holds nothing between two gestures. */
export interface Tool {
  readonly id: ToolId
  readonly title: string
  /** What a press or a drag does, for the help line. */
  readonly hint: string
  readonly cursor: string
  /** The pointer moves and nothing is pressed. */
  readonly hover: (pointer: Pointer, context: ToolContext) => Step
  readonly begin: (pointer: Pointer, context: ToolContext) => Step
}

/** Half of a target: 24 px by mouse, 44 px by touch (WCAG 2.2, 2.5.8 and 2.5.5). */
const TARGET_HALF_PX = 12
const TOUCH_HALF_PX = 22

/** How far from a handle a press still takes it, mm of floor. */
export const reachOf = ({ isTouch }: Pointer, { view }: ToolContext): number =>
  (isTouch ? TOUCH_HALF_PX : TARGET_HALF_PX) / view.pxPerMm

/** Less than this is a shaky click, more is a drag, px. */
const DRAG_PX = 4
const TOUCH_DRAG_PX = 10

export const isDragged = (from: Pointer, to: Pointer): boolean =>
  Math.hypot(to.px.x - from.px.x, to.px.y - from.px.y) >= (to.isTouch ? TOUCH_DRAG_PX : DRAG_PX)
