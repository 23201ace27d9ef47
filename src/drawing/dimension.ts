import type { Point } from '../geometry/point'
import type { DimensionMark, TextMark } from '../model/drawing'
import { textWidth } from './lettering'

/** One line of words as a writer sets it down. `at` is the middle of its capitals' height, in the marks' own mm. */
export interface Lettering {
  readonly text: string
  readonly at: Point
  /** Anticlockwise from east, radians, from over -90 to 90 degrees: never upside down. */
  readonly turn: number
  readonly heightMm: number
  readonly anchor: TextMark['anchor']
}

export interface DimensionStrokes {
  /** Straight strokes: x0, y0, x1, y1 for each. */
  readonly lines: Float64Array
  readonly words: readonly Lettering[]
}

/** Sizes in the marks' own mm, so that one geometry serves every scale. */
export interface DimensionSizes {
  readonly letterMm: number
  /** Length of a tick; gaps and overshoots are shares of it. */
  readonly tickMm: number
}

/** Letter height and tick length on paper, mm. */
export const DIMENSION_LETTER_MM = 2.6
export const DIMENSION_TICK_MM = 2.4

interface Axis {
  readonly from: Point
  readonly to: Point
  readonly lengthMm: number
  /** Unit vectors along the line and to its left. */
  readonly along: Point
  readonly left: Point
}

const axisOf = (mark: DimensionMark): Axis | undefined => {
  const lengthMm = Math.hypot(mark.to.x - mark.from.x, mark.to.y - mark.from.y)
  if (lengthMm === 0) return undefined
  const along = { x: (mark.to.x - mark.from.x) / lengthMm, y: (mark.to.y - mark.from.y) / lengthMm }
  const left = { x: -along.y, y: along.x }
  const shifted = (p: Point) => ({ x: p.x + left.x * mark.offsetMm, y: p.y + left.y * mark.offsetMm })
  return { from: shifted(mark.from), to: shifted(mark.to), lengthMm, along, left }
}

/** The same line read from below or from the right, and the unit vector that is up to that reader. */
export const readable = (along: Point): { turn: number; up: Point } => {
  const backward = along.x < -1e-9 || (Math.abs(along.x) <= 1e-9 && along.y < 0)
  const read = backward ? { x: -along.x, y: -along.y } : along
  return { turn: Math.atan2(read.y, read.x), up: { x: -read.y, y: read.x } }
}

const moved = (p: Point, by: Point, distanceMm: number): Point => ({
  x: p.x + by.x * distanceMm,
  y: p.y + by.y * distanceMm,
})

/** Extension line from the thing measured to just past the dimension line. */
const extension = (foot: Point, end: Point, tickMm: number): number[] => {
  const run = Math.hypot(end.x - foot.x, end.y - foot.y)
  if (run <= tickMm) return []
  const out = { x: (end.x - foot.x) / run, y: (end.y - foot.y) / run }
  const start = moved(foot, out, tickMm / 2)
  const stop = moved(end, out, tickMm / 2)
  return [start.x, start.y, stop.x, stop.y]
}

const tick = (at: Point, axis: Axis, tickMm: number): number[] => {
  const slant = { x: (axis.along.x + axis.left.x) / Math.SQRT2, y: (axis.along.y + axis.left.y) / Math.SQRT2 }
  const a = moved(at, slant, -tickMm / 2)
  const b = moved(at, slant, tickMm / 2)
  return [a.x, a.y, b.x, b.y]
}

const strokes = (mark: DimensionMark, axis: Axis, tickMm: number): Float64Array =>
  Float64Array.from([
    axis.from.x,
    axis.from.y,
    axis.to.x,
    axis.to.y,
    ...extension(mark.from, axis.from, tickMm),
    ...extension(mark.to, axis.to, tickMm),
    ...tick(axis.from, axis, tickMm),
    ...tick(axis.to, axis, tickMm),
  ])

/** Capitals across a line that is this many letter heights long stay between its ends. */
const ACROSS = 0.95
/** Clear of the dimension line by a little over half a letter. */
const BESIDE = 0.78

/**
 * Where the words go, best first: length and note in one line above; length above and note below; the length alone;
 * the length across the line, where that is too short for it; beyond the end, where even a letter is too tall.
 */
const settle = (axis: Axis, length: string, note: string, letterMm: number): Lettering[] => {
  const { turn, up } = readable(axis.along)
  const centre = moved(axis.from, axis.along, axis.lengthMm / 2)
  const fits = (text: string) => textWidth(text, letterMm) <= axis.lengthMm * 0.94
  const line = (text: string, side: number): Lettering => ({
    text,
    at: moved(centre, up, side * BESIDE * letterMm),
    turn,
    heightMm: letterMm,
    anchor: 'middle',
  })
  if (fits(`${length} ${note}`)) return [line(`${length} ${note}`.trim(), 1)]
  if (fits(length)) return note !== '' && fits(note) ? [line(length, 1), line(note, -1)] : [line(length, 1)]
  const across = readable(axis.left)
  if (axis.lengthMm >= letterMm * ACROSS)
    return [{ text: length, at: centre, turn: across.turn, heightMm: letterMm, anchor: 'middle' }]
  const beyond = moved(axis.to, axis.along, letterMm / 2)
  const reads = Math.cos(turn) * axis.along.x + Math.sin(turn) * axis.along.y > 0
  return [{ text: length, at: beyond, turn, heightMm: letterMm, anchor: reads ? 'start' : 'end' }]
}

/** A dimension as strokes and words; undefined where its two ends are one place. `length` is the written length. */
export const dimensionStrokes = (
  mark: DimensionMark,
  length: string,
  sizes: DimensionSizes,
): DimensionStrokes | undefined => {
  const axis = axisOf(mark)
  if (axis === undefined) return undefined
  return {
    lines: strokes(mark, axis, sizes.tickMm),
    words: settle(axis, length, mark.note.trim(), sizes.letterMm),
  }
}

/** What a dimension measures, mm. */
export const dimensionLength = (mark: DimensionMark): number =>
  Math.hypot(mark.to.x - mark.from.x, mark.to.y - mark.from.y)
