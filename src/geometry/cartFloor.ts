import type { Box } from './box'

/*
 * Where the centre of a cart can be. A square cart of width w stands clear of a box exactly if its centre is not inside the
 * box grown by w/2, so carts become points among grown boxes. Only the lines through the sides of grown boxes matter:
 *
 *      line  gap  line   gap   line          Cells are the lines, the gaps between them, and their crossings,
 *        0    1     2     3     4            numbered alternately along each axis. A grown box (open, since touching is
 *        |          |###########|            allowed) blocks the gap 3 but not the lines 2 and 4, so that a lane as wide
 *        |          |###########|            as the cart stays open as a line.
 *
 * Typed arrays hold a number at every index that is asked for here; `?? 0` says so to the compiler.
 */

/** One axis: where boxes begin and end (ascending, each once), which of these each box has, and the floor's own ends. */
interface Axis {
  readonly begins: Float64Array
  readonly ends: Float64Array
  readonly beginOf: Int32Array
  readonly endOf: Int32Array
  readonly low: number
  readonly high: number
}

/** A floor among boxes that block; any length unit in which coordinates and widths add without rounding. */
export interface CartFloor {
  readonly x: Axis
  readonly y: Axis
  readonly boxes: number
  /** Cells of the last flood and the places still to visit: one piece of memory for all floods of a floor. */
  readonly cells: Int32Array
  readonly stack: Int32Array
}

const distinct = (values: Float64Array): Float64Array =>
  values.sort().filter((value, i, sorted) => i === 0 || value !== sorted[i - 1])

/** Index of the last of the ascending `values` that is not above `value`; -1 before the first. */
const lastNotAbove = (values: Float64Array, value: number): number => {
  let low = 0
  let high = values.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((values[middle] ?? 0) <= value) low = middle + 1
    else high = middle
  }
  return low - 1
}

const axisOf = (from: readonly number[], to: readonly number[], low: number, high: number): Axis => {
  const begins = distinct(Float64Array.from(from))
  const ends = distinct(Float64Array.from(to))
  return {
    begins,
    ends,
    beginOf: Int32Array.from(from, (value) => lastNotAbove(begins, value)),
    endOf: Int32Array.from(to, (value) => lastNotAbove(ends, value)),
    low,
    high,
  }
}

/** Most cells along an axis, a fence at both sides included. */
const mostCells = ({ begins, ends }: Axis): number => 2 * (begins.length + ends.length + 2) + 1

/** The floor inside of `inside`, less the blocking boxes. */
export const cartFloorOf = (inside: Box, blocks: readonly Box[]): CartFloor => {
  const x = axisOf(
    blocks.map((b) => b.x0),
    blocks.map((b) => b.x1),
    inside.x0,
    inside.x1,
  )
  const y = axisOf(
    blocks.map((b) => b.y0),
    blocks.map((b) => b.y1),
    inside.y0,
    inside.y1,
  )
  const size = mostCells(x) * mostCells(y)
  return { x, y, boxes: blocks.length, cells: new Int32Array(size), stack: new Int32Array(size) }
}

/** The lines of one axis for one cart, ascending, the first and last where the cart touches the floor's ends. */
const linesOf = ({ begins, ends, low, high }: Axis, halfWidth: number): Float64Array => {
  const first = low + halfWidth
  const last = high - halfWidth
  const lines = new Float64Array(begins.length + ends.length + 2)
  let count = 0
  lines[count++] = first
  lines[count++] = last
  for (const begin of begins) {
    const line = begin - halfWidth
    if (line > first && line < last) lines[count++] = line
  }
  for (const end of ends) {
    const line = end + halfWidth
    if (line > first && line < last) lines[count++] = line
  }
  return distinct(lines.subarray(0, count))
}

const cellCount = (lines: Float64Array): number => 2 * lines.length - 1

/** The cell in which a coordinate lies; -1 before the first line, the count of cells past the last. */
const cellAt = (lines: Float64Array, value: number): number => {
  const line = lastNotAbove(lines, value)
  if (line < 0) return -1
  return lines[line] === value ? 2 * line : 2 * line + 1
}

/** A flooded floor for one cart: cells row by row, a fence of blocked cells all round. */
export interface Flood {
  readonly xLines: Float64Array
  readonly yLines: Float64Array
  readonly stride: number
  readonly cells: Int32Array
}

const FREE = 0
const REACHED = -1
const FENCE = 1

/** Mark the corners of every grown box, so that sums along rows and columns count the boxes over each cell. */
const markCorners = (
  { x, y, boxes }: CartFloor,
  { xLines, yLines, stride, cells }: Flood,
  halfWidth: number,
) => {
  const firstX = x.begins.map((begin) => Math.max(0, cellAt(xLines, begin - halfWidth) + 1))
  const firstY = y.begins.map((begin) => Math.max(0, cellAt(yLines, begin - halfWidth) + 1))
  const pastX = x.ends.map((end) => cellAt(xLines, end + halfWidth))
  const pastY = y.ends.map((end) => cellAt(yLines, end + halfWidth))
  for (let box = 0; box < boxes; box++) {
    const x0 = firstX[x.beginOf[box] ?? 0] ?? 0
    const x1 = pastX[x.endOf[box] ?? 0] ?? 0
    const y0 = firstY[y.beginOf[box] ?? 0] ?? 0
    const y1 = pastY[y.endOf[box] ?? 0] ?? 0
    if (x0 >= x1 || y0 >= y1) continue
    const south = (y0 + 1) * stride + 1
    const north = (y1 + 1) * stride + 1
    cells[south + x0] = (cells[south + x0] ?? 0) + 1
    cells[south + x1] = (cells[south + x1] ?? 0) - 1
    cells[north + x0] = (cells[north + x0] ?? 0) - 1
    cells[north + x1] = (cells[north + x1] ?? 0) + 1
  }
}

const countBoxes = ({ stride, cells }: Flood): void => {
  for (let row = stride; row < cells.length; row += stride) {
    let along = 0
    for (let cell = row; cell < row + stride; cell++) {
      along += cells[cell] ?? 0
      cells[cell] = along + (cells[cell - stride] ?? 0)
    }
  }
}

const fence = ({ stride, cells }: Flood): void => {
  cells.fill(FENCE, 0, stride)
  cells.fill(FENCE, cells.length - stride)
  for (let row = 0; row < cells.length; row += stride) {
    cells[row] = FENCE
    cells[row + stride - 1] = FENCE
  }
}

/** The cells, as columns and rows of the fenced floor, that meet a closed box of centres; first past last where none does. */
const windowOf = ({ xLines, yLines }: Flood, { x0, y0, x1, y1 }: Box) => ({
  west: Math.max(0, cellAt(xLines, x0)) + 1,
  east: Math.min(cellCount(xLines) - 1, cellAt(xLines, x1)) + 1,
  south: Math.max(0, cellAt(yLines, y0)) + 1,
  north: Math.min(cellCount(yLines) - 1, cellAt(yLines, y1)) + 1,
})

/** Reach every free cell that joins a start. A free cell's own edges are free too, so four neighbours tell all. */
const spread = (flood: Flood, stack: Int32Array, starts: readonly Box[]): void => {
  const { cells, stride } = flood
  let waiting = 0
  const reach = (cell: number): void => {
    if (cells[cell] !== FREE) return
    cells[cell] = REACHED
    stack[waiting++] = cell
  }
  for (const start of starts) {
    const { west, east, south, north } = windowOf(flood, start)
    for (let row = south; row <= north; row++)
      for (let column = west; column <= east; column++) reach(row * stride + column)
  }
  while (waiting > 0) {
    const cell = stack[--waiting] ?? 0
    reach(cell - 1)
    reach(cell + 1)
    reach(cell - stride)
    reach(cell + stride)
  }
}

/**
 * Where a cart of `width`, no wider than the floor, comes to from any of the closed boxes of centres in which it may start.
 * The flood borrows the floor's memory: ask it before the next.
 */
export const floodFrom = (floor: CartFloor, width: number, starts: readonly Box[]): Flood => {
  const halfWidth = width / 2
  const xLines = linesOf(floor.x, halfWidth)
  const yLines = linesOf(floor.y, halfWidth)
  const stride = cellCount(xLines) + 2
  const cells = floor.cells.subarray(0, stride * (cellCount(yLines) + 2)).fill(FREE)
  const flood = { xLines, yLines, stride, cells }
  markCorners(floor, flood, halfWidth)
  countBoxes(flood)
  fence(flood)
  spread(flood, floor.stack, starts)
  return flood
}

/** True where the flood reached any centre of the closed box. */
export const isReached = (flood: Flood, centres: Box): boolean => {
  const { cells, stride } = flood
  const { west, east, south, north } = windowOf(flood, centres)
  for (let row = south; row <= north; row++)
    for (let cell = row * stride + west; cell <= row * stride + east; cell++)
      if (cells[cell] === REACHED) return true
  return false
}
