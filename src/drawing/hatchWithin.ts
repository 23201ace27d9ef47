import { boxOf } from '../geometry/box'
import { hatchLines } from './hatch'
import type { ShapeMark } from './markReach'
import type { Hatch } from './theme'

/** Corners of a disc that its hatch is cut off at: the eye tells no more of them at the size of a post. */
const DISC_CORNERS = 24

const boxRings = (boxes: Float64Array): Float64Array[] =>
  Array.from({ length: Math.floor(boxes.length / 4) }, (_, i) => {
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = boxes.subarray(4 * i, 4 * i + 4)
    return Float64Array.of(x0, y0, x1, y0, x1, y1, x0, y1)
  })

const discRings = (discs: Float64Array): Float64Array[] =>
  Array.from({ length: Math.floor(discs.length / 3) }, (_, i) => {
    const [x = 0, y = 0, radius = 0] = discs.subarray(3 * i, 3 * i + 3)
    return Float64Array.from(
      Array.from({ length: DISC_CORNERS }, (_corner, n) => (2 * Math.PI * n) / DISC_CORNERS).flatMap(
        (turn) => [x + radius * Math.cos(turn), y + radius * Math.sin(turn)],
      ),
    )
  })

/** The outlines that a mark is washed within, as x, y of their corners. */
export const ringsOf = (mark: ShapeMark): readonly Float64Array[] => {
  if (mark.as === 'boxes') return boxRings(mark.boxes)
  return mark.as === 'discs' ? discRings(mark.discs) : [mark.points]
}

const cornersOf = (ring: Float64Array) =>
  Array.from({ length: ring.length / 2 }, (_, i) => ({ x: ring[2 * i] ?? 0, y: ring[2 * i + 1] ?? 0 }))

/** Shares of the line at which it goes in or out of the ring, in order. */
const crossings = (ring: Float64Array, x0: number, y0: number, dx: number, dy: number): number[] => {
  const aside = (i: number) => ((ring[i] ?? 0) - x0) * dy - ((ring[i + 1] ?? 0) - y0) * dx
  const along = (x: number, y: number) => ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy)
  const shares: number[] = []
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const j = (i + 2) % ring.length
    const [from, to] = [aside(i), aside(j)]
    if (from < 0 === to < 0) continue
    const share = from / (from - to)
    const [xi = 0, yi = 0, xj = 0, yj = 0] = [ring[i], ring[i + 1], ring[j], ring[j + 1]]
    shares.push(along(xi + share * (xj - xi), yi + share * (yj - yi)))
  }
  return shares.toSorted((a, b) => a - b)
}

/**
 * Hatch lines cut off at a ring of corners x, y, even-odd: x0, y0, x1, y1 for each. Printers draw a pattern or a clip as dots; these
 * stay lines. `spacingMm` is square to the lines, in the ring's mm.
 */
export const hatchWithin = (ring: Float64Array, lean: Hatch['lean'], spacingMm: number): Float64Array => {
  const lines = hatchLines(boxOf(cornersOf(ring)), lean, spacingMm)
  const cut: number[] = []
  for (let i = 0; i + 3 < lines.length; i += 4) {
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = lines.subarray(i, i + 4)
    const [dx, dy] = [x1 - x0, y1 - y0]
    const shares = crossings(ring, x0, y0, dx, dy)
    for (let n = 0; n + 1 < shares.length; n += 2) {
      const [a = 0, b = 0] = shares.slice(n, n + 2)
      cut.push(x0 + a * dx, y0 + a * dy, x0 + b * dx, y0 + b * dy)
    }
  }
  return Float64Array.from(cut)
}
