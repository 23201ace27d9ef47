import { bay, type Sketch, type Spot } from '../bay'

const LENGTH = 2904
const BAY_WIDTH = 360
const BAYS = [0, 1, 2, 3, 4, 5] as const

/** Row centrelines from a bay's west line: half a 90 in valley aisle, then canopies of 66 in with 36 in between. */
const CENTRES = [78, 180, 282] as const

/**
 * Starts of the blocks of 360 in, southmost first: an end aisle of 144, then blocks that fall in pairs to a drain aisle
 * of 72 between them, with a cross aisle of 96 between pairs.
 */
const PAIRS = [
  { south: 144, north: 576 },
  { south: 1032, north: 1464 },
  { south: 1920, north: 2352 },
] as const

/** Split once, with the riser pipe where the main passes: straight, 24 stations would differ by a third. */
const FEED = { feed: 'centre-split', riserAt: 'inlet-end' } as const

/** Turns that trim valves stand open of 5: the nearer to the pump, the less; the furthest row is the neediest. */
const TURNS = [null, 3, 2.5] as const

const BLOCK_LENGTH = 360

/** Outlets are 15 in short of a block's low end. */
const OUTLET = 15

/** The floor falls 1 in per 40 ft to the south; levels count from the north wall. */
const floorAt = (y: number): number => (y - LENGTH) / 480

/** Valley posts stand on the lines between bays, every 144 in, clear of the pits. */
const POSTS = BAYS.slice(1).flatMap((bayIndex) =>
  Array.from({ length: 20 }, (_, k): Spot => [bayIndex * BAY_WIDTH, 36 + 144 * k]),
)

/** Levels of a pit below the floor beside it. */
const PIT_BELOW = {
  rim: -2,
  overflow: 11.5,
  drainBack: 12.5,
  running: 25,
  makeUp: 26,
  lowAlarm: 29,
  pumpOff: 31,
  bottom: 39,
} as const

const pitLevels = (floor: number) =>
  Object.fromEntries(Object.entries(PIT_BELOW).map(([level, below]) => [level, floor - below]))

const withPair = (
  sketch: Sketch,
  west: number,
  name: string,
  { south, north }: (typeof PAIRS)[number],
): Sketch => {
  const [southDrain, northDrain] = [south + BLOCK_LENGTH - OUTLET, north + OUTLET]
  const middle = (southDrain + northDrain) / 2
  const rows = CENTRES.reduce(
    (at, x, k) =>
      at
        .row(`${name}S${k + 1}`, [west + x, south], {
          racks: 3,
          fallsTo: 'end',
          inlet: 'end',
          ...FEED,
          trimTurns: TURNS[k] ?? null,
        })
        .row(`${name}N${k + 1}`, [west + x, north], {
          racks: 3,
          fallsTo: 'start',
          inlet: 'start',
          ...FEED,
          trimTurns: TURNS[k] ?? null,
        }),
    sketch,
  )
  return rows
    .drain(`Drain ${name}S`, [
      [west + 45, southDrain],
      [west + 318, southDrain],
    ])
    .drain(`Drain ${name}N`, [
      [west + 45, northDrain],
      [west + 318, northDrain],
    ])
    .pit(
      `Pit ${name}`,
      { x: [west + 318, west + 348], y: [middle - 57, middle + 57] },
      pitLevels(floorAt(middle)),
    )
    .main(
      `Main ${name}`,
      [
        [west + 333, middle],
        [west + 78, middle],
      ],
      { height: 84 },
    )
}

const house = (): Sketch =>
  bay('180 x 242 ft', 'Sallow Flats, six connected bays')
    .house({ headroom: 144 })
    .level([0, 0], floorAt(0))
    .level([2160, 0], floorAt(0))
    .level([2160, LENGTH], 0)
    .level([0, LENGTH], 0)
    .benchmark('Bolt on the north-west footing', [0, LENGTH], 0)
    .door('South door, west', [540, 0], { width: 96, height: 96, leaves: 'double', heading: 90 })
    .door('South door, east', [1620, 0], { width: 96, height: 96, leaves: 'double', heading: 90 })
    .door('North door', [1080, LENGTH], { width: 120, height: 120, leaves: 'none', heading: 270 })

/** One acre: six bays, each three pairs of blocks named A to C from the south; 108 rows of three racks. */
export const sallowFlats = (): Sketch => {
  const posts = POSTS.reduce(
    (at, spot, k) => at.post(`Valley post ${k + 1}`, spot, { top: 144, footing: 12, footingDeep: 36 }),
    house(),
  )
  return BAYS.reduce<Sketch>(
    (at, bayIndex) =>
      PAIRS.reduce<Sketch>(
        (inBay, pair, k) => withPair(inBay, bayIndex * BAY_WIDTH, `${bayIndex + 1}${'ABC'.charAt(k)}`, pair),
        at,
      ),
    posts,
  ).settings({ place: 'Sallow Flats', datum: 'row' })
}
