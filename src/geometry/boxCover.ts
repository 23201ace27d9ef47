import { boxOf, type Box } from './box'
import type { Point } from './point'

/** Slanted edges become stairs that stand off by at most this much, mm. */
export const STAIR_MM = 25

/** All edges of a polygon together get no more stairs than about this: those of a house a mile long are coarser. */
const MOST_STAIRS = 600

/** The part of an edge inside one slab: how far west and east it comes. */
interface Span {
  readonly west: number
  readonly east: number
}

interface Slab {
  readonly south: number
  readonly north: number
  /** The outline's edges through the slab, from west to east, so inside lies between the first and the second, and so on. */
  readonly spans: readonly Span[]
}

type Edge = readonly [Point, Point]

const edgesOf = (polygon: readonly Point[]): Edge[] =>
  polygon.map((from, i) => [from, polygon[i + 1] ?? polygon[0] ?? from])

/** Levels at which one edge is cut: its end, and as many between as keep every stair low or narrow enough, up to `most`. */
const cutsOf = ([from, to]: Edge, most: number): number[] => {
  const dx = Math.abs(to.x - from.x)
  const dy = Math.abs(to.y - from.y)
  const stairs = Math.min(Math.max(1, Math.ceil(Math.min(dx, dy) / STAIR_MM)), most)
  return Array.from({ length: stairs }, (_, i) => to.y + ((from.y - to.y) * i) / stairs)
}

const xAt = ([a, b]: Edge, y: number): number => a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)

const spanOf = (edge: Edge, south: number, north: number): Span => {
  const xSouth = xAt(edge, south)
  const xNorth = xAt(edge, north)
  return { west: Math.min(xSouth, xNorth), east: Math.max(xSouth, xNorth) }
}

const isThrough = ([a, b]: Edge, south: number, north: number): boolean =>
  Math.min(a.y, b.y) <= south && Math.max(a.y, b.y) >= north

/** The polygon in level slabs between its cuts. */
const slabsOf = (polygon: readonly Point[]): Slab[] => {
  const edges = edgesOf(polygon)
  const most = Math.ceil(MOST_STAIRS / edges.length)
  const levels = [...new Set(edges.flatMap((edge) => cutsOf(edge, most)))].sort((a, b) => a - b)
  return levels.slice(1).map((north, i) => {
    const south = levels[i] ?? north
    const spans = edges
      .filter((edge) => isThrough(edge, south, north))
      .map((edge) => spanOf(edge, south, north))
      .sort((a, b) => a.west + a.east - b.west - b.east)
    return { south, north, spans }
  })
}

/** Boxes that together cover a simple polygon: exactly if its edges are upright and level, else up to `STAIR_MM` more. */
export const boxesOver = (polygon: readonly Point[]): Box[] =>
  slabsOf(polygon).flatMap(({ south, north, spans }) =>
    spans.flatMap(({ west }, i) => {
      const far = i % 2 === 0 ? spans[i + 1] : undefined
      return far ? [{ x0: west, y0: south, x1: far.east, y1: north }] : []
    }),
  )

/**
 * Boxes that together cover what of a simple polygon's bounding box lies outside of the polygon: exactly if its edges are
 * upright and level, else up to `STAIR_MM` more, taken from the inside.
 */
export const boxesAround = (polygon: readonly Point[]): Box[] => {
  const { x0, x1 } = boxOf(polygon)
  return slabsOf(polygon).flatMap(({ south, north, spans }) =>
    [{ west: x0, east: x0 }, ...spans].flatMap(({ west }, i) => {
      const east = spans[i]?.east ?? x1
      return i % 2 === 0 && west < east ? [{ x0: west, y0: south, x1: east, y1: north }] : []
    }),
  )
}
