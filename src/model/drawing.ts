import type { Point } from '../geometry/point'

/**
 * Drawing operations, in mm. One `draw` a kind gives them; canvas, PNG, SVG and paper are writers of the same marks.
 * Pens and washes are named by meaning; a writer's theme turns them into colours and ISO 128 line types.
 */
export type Pen =
  | 'outline'
  | 'wall'
  | 'timber'
  | 'steel'
  | 'trough'
  | 'drain'
  | 'water'
  | 'crop'
  | 'centre'
  | 'hidden'
  | 'keep-clear'
  | 'dimension'
  | 'grid'
  | 'must-fix'
  | 'note'
  | 'none'

export type Wash =
  | 'none'
  | 'paper'
  | 'house'
  | 'crop'
  | 'timber'
  | 'steel'
  | 'trough'
  | 'drain'
  | 'water'
  | 'pit'
  | 'post'
  | 'keep-clear'
  | 'must-fix'

interface Inked {
  readonly pen: Pen
  readonly wash: Wash
  /** Drawn only when this many mm of floor cover at least one pixel or 0.1 mm of paper: hides small detail from afar. */
  readonly nearMm?: number
}

/** Many upright rectangles in one operation: x0, y0, x1, y1 for each. */
export interface BoxesMark extends Inked {
  readonly as: 'boxes'
  readonly boxes: Float64Array
}

/** Many discs in one operation: x, y, radius for each. */
export interface DiscsMark extends Inked {
  readonly as: 'discs'
  readonly discs: Float64Array
}

/** A poly-line or polygon: x, y for each point. */
export interface PathMark extends Inked {
  readonly as: 'path'
  readonly points: Float64Array
  readonly closed: boolean
  /** Arrow heads along the run, in the direction of the points. */
  readonly arrows?: 'end' | 'middle'
}

/** Words. Their height is in mm of paper; a screen writer never draws them under 12 px. */
export interface TextMark {
  readonly as: 'text'
  readonly pen: Pen
  readonly text: string
  /** Of words that lie along a line: what is written on the screen where they would hide it. */
  readonly short?: string
  readonly at: Point
  readonly paperMm: number
  readonly anchor: 'start' | 'middle' | 'end'
  /** Turned a quarter anticlockwise, to read from the right. */
  readonly upright: boolean
  readonly nearMm?: number
}

/** A dimension line with ticks; the writer makes its words in the units of that sheet. */
export interface DimensionMark {
  readonly as: 'dimension'
  readonly pen: Pen
  readonly from: Point
  readonly to: Point
  /** Shift of the dimension line to the left of from -> to, mm of floor. */
  readonly offsetMm: number
  /** Words after the length, such as ` leaf to leaf`. */
  readonly note: string
}

/** How high something lies over the floor, beside its place; the writer makes its words in the units of that sheet. */
export interface HeightMark {
  readonly as: 'height'
  readonly pen: Pen
  readonly at: Point
  readonly heightMm: number
  readonly nearMm?: number
}

export type Mark = BoxesMark | DiscsMark | PathMark | TextMark | DimensionMark | HeightMark
