import { overlaps, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import { rankOf, type Finding } from '../../model/finding'
import type { Mark } from '../../model/drawing'
import type { ClearWords } from '../clearWords'
import { isMany, membersOf, type FindingGroup } from './findingGroups'
import { lettered, LETTERS, ruled, shaped } from '../ink'

/** Size of a flag about its middle, mm of paper. */
const HALF_MM = 2.3
/** The same where a group has so many flags that they would hide the plan. */
const SMALL_HALF_MM = 1.6

/** Steps away from the place, mm of paper: first on it, then about it. */
const steps: readonly Point[] = [
  { x: 0, y: 0 },
  ...[4, 6.5, 10, 15].flatMap((r) =>
    [45, 135, 225, 315, 0, 90, 180, 270].map((degrees) => ({
      x: r * Math.cos((degrees * Math.PI) / 180),
      y: r * Math.sin((degrees * Math.PI) / 180),
    })),
  ),
]

/** A small flag stays on its place or in the two rings next to it. */
const NEAR_STEPS = 17

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

const atPlace = ({ at }: Finding, { x, y }: Point, ratio: number): Point => ({
  x: at.x + x * ratio,
  y: at.y + y * ratio,
})

interface Flag {
  readonly finding: Finding
  readonly number: number
  readonly isSmall: boolean
  /** Left out rather than set over words: others bear the same number. */
  readonly isSpare: boolean
}

const flagMarks = (
  { finding, number, isSmall, isSpare }: Flag,
  ratio: number,
  words: ClearWords,
  walls: readonly Box[],
): Mark[] => {
  const half = (isSmall ? SMALL_HALF_MM : HALF_MM) * ratio
  const tries = steps
    .slice(0, isSmall ? NEAR_STEPS : steps.length)
    .map((step) => atPlace(finding, step, ratio))
  const isOffWalls = (place: Point) => !walls.some((wall) => overlaps(about(place, half), wall))
  const clear = [...tries.filter(isOffWalls), ...tries].find((place) => words.take([about(place, half)]))
  if (clear === undefined && isSpare) return []
  const at = clear ?? finding.at
  const pen = rankOf(finding) === 2 ? 'must-fix' : 'note'
  const isAside = at.x !== finding.at.x || at.y !== finding.at.y
  return [
    ...(isAside ? [ruled(finding.at, at, pen)] : []),
    shapeOf(finding, at, half),
    lettered(`${number}`, at, isSmall ? LETTERS.least : LETTERS.small, { pen, anchor: 'middle' }),
  ]
}

/**
 * Flags with the number of their group wherever a finding of it is, with a leader where one had to stand aside. What
 * must be mended finds its place first; a wall is not hidden while there is another place. In mm of floor.
 */
export const flags = (
  groups: readonly FindingGroup[],
  ratio: number,
  words: ClearWords,
  walls: readonly Box[],
): Mark[] =>
  groups.flatMap((group, i) =>
    membersOf(group).flatMap((finding) => {
      const isSmall = isMany(group)
      const isSpare = isSmall && finding !== group.worst
      return flagMarks({ finding, number: i + 1, isSmall, isSpare }, ratio, words, walls)
    }),
  )
