import { bench, describe } from 'vitest'
import { type Box, corners } from '../../src/geometry/box'
import type { Heading } from '../../src/geometry/motion'
import type { Face } from '../../src/geometry/cartStand'
import { widestPassage } from '../../src/geometry/passage'
import { inches } from '../../src/units/length'

/*
 * One acre: six bays of 360 in, six blocks of three rows in each, posts on the bay lines between, and eighteen boxes of heaters,
 * panels and pits along the walls. All rows stand in line but for the scenes that say otherwise.
 */
const BAYS = 6
const BAY_IN = 360
const HOUSE_IN = 2904
const ROW_MIDDLES_IN = [78, 180, 282]
const BLOCKS_FROM_IN = [144, 584, 1048, 1488, 1952, 2392]
const BLOCK_IN = 368
const HALF_CANOPY_IN = 33
const POSTS_A_LINE = 26
const POST_STEP_IN = 112

const boxIn = (x0: number, y0: number, x1: number, y1: number): Box => ({
  x0: inches(x0),
  y0: inches(y0),
  x1: inches(x1),
  y1: inches(y1),
})

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i)

const rows = range(BAYS).flatMap((bay) =>
  ROW_MIDDLES_IN.flatMap((middle) =>
    BLOCKS_FROM_IN.map((from) => {
      const x = bay * BAY_IN + middle
      return boxIn(x - HALF_CANOPY_IN, from, x + HALF_CANOPY_IN, from + BLOCK_IN)
    }),
  ),
)
const posts = range(BAYS - 1).flatMap((line) =>
  range(POSTS_A_LINE).map((step) => {
    const x = (line + 1) * BAY_IN
    const y = step * POST_STEP_IN + 48
    return boxIn(x - 2, y - 2, x + 2, y + 2)
  }),
)
const atWalls = range(BAYS).flatMap((bay) =>
  [40, 150, 270].map((x, i) =>
    boxIn(bay * BAY_IN + x, HOUSE_IN - 30 - 6 * i, bay * BAY_IN + x + 30, HOUSE_IN),
  ),
)
const outline = corners(boxIn(0, 0, BAYS * BAY_IN, HOUSE_IN))
const doors = range(BAYS).map((bay) => boxIn(bay * BAY_IN + 132, 0, bay * BAY_IN + 228, 0))

const sidesOf = ({ x0, y0, x1, y1 }: Box): Face[] =>
  ([0, 90, 180, 270] as const satisfies Heading[]).map((facing) => ({
    from: { x: facing === 0 ? x1 : x0, y: facing === 90 ? y1 : y0 },
    to: { x: facing === 180 ? x0 : x1, y: facing === 270 ? y0 : y1 },
    facing,
  }))

const longSidesOf = (row: Box): Face[] => sidesOf(row).filter(({ facing }) => facing === 0 || facing === 180)

const moved = ({ x0, y0, x1, y1 }: Box, dx: number, dy: number): Box => ({
  x0: x0 + dx,
  y0: y0 + dy,
  x1: x1 + dx,
  y1: y1 + dy,
})

/** The same chance every time: a linear congruence with the multiplier and increment of Numerical Recipes (from memory). */
const seeded = (seed: number) => () => {
  seed = (1664525 * seed + 1013904223) % 2 ** 32
  return seed / 2 ** 32
}

const dragged = rows.map((row, i) => (i === 40 ? moved(row, 61.3, -17.9) : row))
const chance = seeded(7)
const crooked = rows.map((row) => moved(row, 150 * (chance() - 0.5), 300 * (chance() - 0.5)))

const ask = (standing: readonly Box[], sides: (row: Box) => Face[]) => {
  const blocks = [...standing, ...posts, ...atWalls]
  const faces = standing.flatMap(sides)
  return () => {
    widestPassage({ blocks, outline }, doors, faces)
  }
}

describe('widest cart on one acre, 108 rows and 130 posts', () => {
  bench('in line, 216 long sides', ask(rows, longSidesOf))
  bench('one row dragged, 216 long sides', ask(dragged, longSidesOf))
  bench('one row dragged, all 432 sides', ask(dragged, sidesOf))
  bench('every row crooked, 216 long sides', ask(crooked, longSidesOf), { iterations: 5, time: 0 })
})
