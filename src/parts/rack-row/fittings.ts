import { sizeOf } from '../../catalogue/fittings'
import { shimKeys } from '../../catalogue/shims'
import type { Fitting, Stick } from '../../model/built'
import type { Place } from '../../geometry/point'
import { placeAt } from './frame'
import { invertAt, tieTopOf } from './levels'
import { isBracedPair, pairsOf, SIDES, standingPairs, type Pair } from './pairs'
import type { RackPlan } from './plan'
import type { HungTower } from './towers'

/** Screws that fix one piece of each mark: three a joint, four a side of a splice. Common practice, no source. */
const SCREWS: Readonly<Record<string, number>> = {
  'RS-p': 3,
  'RS-s': 3,
  'RS-d': 3,
  BX: 6,
  TT: 6,
  SP: 8,
  SB: 6,
  XB: 6,
  GB: 4,
}

/** Short runners are fixed at both risers, on each face; the risers need no screw of their own. */
const SHORT_RUNNER_SCREWS: Readonly<Record<string, number>> = {
  ...SCREWS,
  'RS-p': 0,
  'RS-s': 0,
  'RS-d': 0,
  BR: 6,
}

/** One fitting, counted as often as it is there. */
const times = (count: number, fitting: Fitting): Fitting[] => Array<Fitting>(count).fill(fitting)

const screws = ({ part }: RackPlan, sticks: readonly Stick[]): Fitting[] => {
  const table = part.base === 'short-runners' ? SHORT_RUNNER_SCREWS : SCREWS
  const all: Fitting[] = []
  for (const { mark, from } of sticks) {
    const screw = { item: 'screw', at: from }
    for (let left = table[mark] ?? 0; left > 0; left--) all.push(screw)
  }
  return all
}

/** A bar stops against both rails, on either side of each. */
const STOPS_A_BAR = 4

/** Two rails are held together, from below: by a screw in each, or where they lap by a clamp on each side of the riser. */
const HELD_A_JOINT = 2

/** An item in the size of a stick of conduit or a section of gutter: `end-cap-3/4`, `gutter-joiner-5in`. */
const fitting = (noun: string, stock: string): string => `${noun}-${sizeOf(stock)}`

const barFittings = (bars: readonly Stick[]): Fitting[] => [
  ...bars.map(({ stock, from }) => ({ item: fitting('end-cap', stock), at: from })),
  ...bars.map(({ stock, to }) => ({ item: fitting('end-cap', stock), at: to })),
  ...bars.flatMap(({ stock, from }) => times(STOPS_A_BAR, { item: fitting('bar-stop', stock), at: from })),
]

/**
 * A rail is capped where the row ends, and wherever it laps, and held where it meets the next; at the first riser a stop keeps
 * the whole line from creeping. Rails come from the high end, side by side.
 */
const railFittings = ({ part }: RackPlan, rails: readonly Stick[]): Fitting[] => {
  const laps = part.joint === 'J5'
  return rails.flatMap(({ stock, from, to }, index) => {
    const isFirst = index < SIDES.length
    const isLast = index >= rails.length - SIDES.length
    const holder = laps ? fitting('rail-clamp', stock) : 'sleeve-screw'
    const cap = fitting('end-cap', stock)
    return [
      ...(isFirst || laps ? [{ item: cap, at: from }] : []),
      ...(isFirst
        ? [{ item: fitting('rail-stop', stock), at: from }]
        : times(HELD_A_JOINT, { item: holder, at: from })),
      ...(isLast || laps ? [{ item: cap, at: to }] : []),
    ]
  })
}

/** Something at the foot of both risers of each pair. */
const atFeet = ({ part, frame }: RackPlan, item: string, pairs: readonly Pair[]): Fitting[] =>
  pairs.flatMap(({ u }) =>
    SIDES.map((side) => ({ item, at: placeAt(frame, u, (side * part.railSpacingMm) / 2, 0) })),
  )

const footPlates = (plan: RackPlan): Fitting[] =>
  plan.part.footPlateMm === 0 ? [] : atFeet(plan, 'foot-plate', standingPairs(plan))

/** What keeps a row from tipping: both risers of each braced pair anchored, or the pair tied at its top. */
const holds = (plan: RackPlan): Fitting[] => {
  const pairs = standingPairs(plan).filter(isBracedPair)
  const { part, frame, levels } = plan
  switch (part.hold) {
    case 'free':
      return []
    case 'anchored':
      return atFeet(plan, 'ground-anchor', pairs)
    case 'tied': {
      const z = tieTopOf(part, levels.holes)
      return pairs.map(({ u }) => ({ item: 'row-tie', at: placeAt(frame, u, 0, z) }))
    }
  }
}

/** The straps that carry both rails, and under them the bearer, wherever a riser pair would stand. */
const houseStraps = (plan: RackPlan): Fitting[] =>
  plan.part.carriedBy === 'house' ? atFeet(plan, 'house-strap', pairsOf(plan)) : []

const paint = ({ part }: RackPlan, conduit: readonly Stick[]): Fitting[] =>
  part.drips === 'painted'
    ? conduit.map(({ from, lengthMm }) => ({ item: 'conduit-paint', at: from, amount: lengthMm }))
    : []

/** A trough is capped at both ends and joined between its sections. */
const sectionFittings = (gutters: readonly Stick[], lines: number): Fitting[] => {
  const sections = gutters.length / lines
  return gutters.flatMap(({ stock, from, to }, index) => [
    { item: fitting(index % sections === 0 ? 'gutter-end-cap' : 'gutter-joiner', stock), at: from },
    ...(index % sections === sections - 1 ? [{ item: fitting('gutter-end-cap', stock), at: to }] : []),
  ])
}

/** The outlet of the trough at v, and on each bearer its shims, thickest first, and its strap. */
const troughFittings = ({ part, frame, positions, levels }: RackPlan, v: number): Fitting[] => {
  const inTrough = (u: number): Place => placeAt(frame, u, v, invertAt(part, levels, u))
  const strap = fitting('gutter-strap', part.gutter)
  return [
    { item: `gutter-outlet-${part.outletBore}`, at: inTrough(positions.outletU) },
    ...positions.bearerU
      .map(inTrough)
      .flatMap((at) => [
        ...shimKeys('gutter-shim', at.z - levels.bearerTopMm).map((item) => ({ item, at })),
        { item: strap, at },
      ]),
  ]
}

/** A hook is shut with a tie, so that a knocked tower does not jump off its bar. */
const towerFittings = (towers: readonly HungTower[]): Fitting[] =>
  ['tower', 'hook', 'hook-tie'].flatMap((item) => towers.map(({ head }) => ({ item, at: head })))

const marked = (sticks: readonly Stick[], ...marks: readonly string[]): Stick[] =>
  sticks.filter(({ mark }) => marks.includes(mark))

/** All that is counted and not cut, but for the water's. */
export const rackFittings = (
  plan: RackPlan,
  sticks: readonly Stick[],
  towers: readonly HungTower[],
): Fitting[] => [
  ...towerFittings(towers),
  ...footPlates(plan),
  ...screws(plan, sticks),
  ...barFittings(marked(sticks, 'HB')),
  ...railFittings(plan, marked(sticks, 'RL', 'RL-b')),
  ...holds(plan),
  ...houseStraps(plan),
  // A dowel is inside the rails.
  ...paint(plan, marked(sticks, 'RL', 'RL-b', 'SV', 'HB')),
  ...sectionFittings(marked(sticks, 'GT'), plan.part.lines),
  ...plan.positions.lineV.flatMap((v) => troughFittings(plan, v)),
]
