import { type Box, corners } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { Built, Stick } from '../../model/built'
import type { PartId } from '../../model/ids'

/** Corners of a rectangle on the papers: A is the one furthest south and west, then anticlockwise. */
export const CORNERS = ['A', 'B', 'C', 'D'] as const
export type Corner = (typeof CORNERS)[number]

/** A row as it is pegged out. All mm on the floor. */
export interface RowSquare {
  readonly part: PartId
  /** Outer faces of the posts at its four corners. */
  readonly box: Box
  readonly runs: 'x' | 'y'
  /** Where each pair of posts stands along the row, at the middle of the post, from the south or the west. */
  readonly pairsMm: readonly number[]
  /** The lines that the middles of its feet stand on, across the row, from the west or the south. */
  readonly feetMm: readonly number[]
}

/** Two posts nearer than this along a row stand beside each other, mm: rounding of sums. */
const SAME_MM = 1

const isPost = ({ mark }: Stick): boolean => mark.startsWith('RS')

/** Numbers in order, each once. */
const eachOnce = (numbers: readonly number[]): readonly number[] =>
  numbers.toSorted((a, b) => a - b).filter((mm, i, all) => i === 0 || mm - (all[i - 1] ?? mm) > SAME_MM)

/** Posts lie flat along the row: their thickness is along it, their width across. */
const boxAbout = (posts: readonly Stick[], runs: 'x' | 'y'): Box => {
  const halves = posts.map(({ widthMm, heightMm }) =>
    runs === 'x' ? { x: widthMm / 2, y: heightMm / 2 } : { x: heightMm / 2, y: widthMm / 2 },
  )
  const edges = (axis: 'x' | 'y', sign: number) =>
    posts.map(({ from }, i) => from[axis] + sign * (halves[i]?.[axis] ?? 0))
  return {
    x0: Math.min(...edges('x', -1)),
    y0: Math.min(...edges('y', -1)),
    x1: Math.max(...edges('x', 1)),
    y1: Math.max(...edges('y', 1)),
  }
}

/** Every row of racks with its posts, in the order of the plan. */
export const rowSquares = (built: readonly Built[]): readonly RowSquare[] =>
  built.flatMap(({ part, rack, sticks }) => {
    const posts = sticks.filter(isPost)
    if (!rack || posts.length === 0) return []
    const { from, to } = rack.leftFace
    const runs = Math.abs(to.x - from.x) > Math.abs(to.y - from.y) ? 'x' : 'y'
    const across = runs === 'x' ? 'y' : 'x'
    return [
      {
        part,
        runs,
        box: boxAbout(posts, runs),
        pairsMm: eachOnce(posts.map((post) => post.from[runs])),
        feetMm: eachOnce(posts.map((post) => post.from[across])),
      },
    ]
  })

/** A rectangle's corners by their letters. */
export const cornersOf = (box: Box): readonly { readonly corner: Corner; readonly at: Point }[] =>
  corners(box).map((at, i) => ({ corner: CORNERS[i] ?? 'A', at }))
