import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import { rankOf, type Finding } from '../model/finding'
import type { Mark } from '../model/drawing'
import type { ClearWords } from './clearWords'
import { lettered, LETTERS, ruled, shaped } from './ink'

/** Size of a flag about its middle, mm of paper. */
const HALF_MM = 2.5

/** Steps away from the place, mm of paper: first on it, then about it. */
const steps: readonly Point[] = [
  { x: 0, y: 0 },
  ...[6, 10, 15].flatMap((r) =>
    [45, 135, 225, 315, 0, 90, 180, 270].map((degrees) => ({
      x: r * Math.cos((degrees * Math.PI) / 180),
      y: r * Math.sin((degrees * Math.PI) / 180),
    })),
  ),
]

const about = ({ x, y }: Point, half: number): Box => ({
  x0: x - half,
  y0: y - half,
  x1: x + half,
  y1: y + half,
})

/** A triangle must be mended, a diamond is to be watched: a shape each, so that colour is not needed. */
const shapeOf = (finding: Finding, { x, y }: Point, half: number): Mark =>
  rankOf(finding) === 2
    ? shaped(
        [
          { x: x - 1.2 * half, y: y - 0.75 * half },
          { x: x + 1.2 * half, y: y - 0.75 * half },
          { x, y: y + 1.35 * half },
        ],
        'must-fix',
        'paper',
      )
    : shaped(
        [
          { x: x - 1.15 * half, y },
          { x, y: y - 1.15 * half },
          { x: x + 1.15 * half, y },
          { x, y: y + 1.15 * half },
        ],
        'note',
        'paper',
      )

/** Numbered flags where the findings are, with a leader where one had to stand aside. In mm of floor. */
export const flags = (findings: readonly Finding[], ratio: number, words: ClearWords): Mark[] => {
  const half = HALF_MM * ratio
  return findings.flatMap((finding, i) => {
    const tries = steps.map(({ x, y }) => ({ x: finding.at.x + x * ratio, y: finding.at.y + y * ratio }))
    const at = words.first(tries, (place) => [about(place, half)]) ?? finding.at
    const pen = rankOf(finding) === 2 ? 'must-fix' : 'note'
    const leader = at.x === finding.at.x && at.y === finding.at.y ? [] : [ruled(finding.at, at, pen)]
    return [
      ...leader,
      shapeOf(finding, at, half),
      lettered(`${i + 1}`, at, LETTERS.small, { pen, anchor: 'middle' }),
    ]
  })
}
