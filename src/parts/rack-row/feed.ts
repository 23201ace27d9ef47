import type { Fitting, Mouth, Tube } from '../../model/built'
import { length3, type Place } from '../../geometry/point'
import { feet, inches } from '../../units/length'
import { pathLength } from '../points'
import { placeAt } from './frame'
import type { RackPlan } from './plan'
import type { RackRow } from './schema'
import type { HungTower } from './towers'

/** Header and riser pipe are one size up from the laterals. Common practice, no source. */
const HEADER_OF: Readonly<Record<RackRow['lateral'], string>> = {
  'pe-1/2': 'pe-3/4',
  'pe-3/4': 'pe-1',
  'pe-1': 'pe-1-1/4',
}

const MICROTUBE = 'tube-1/8'

/** Poly pipe grows and creeps: 1 % of slack, and a foot at each end of a lateral. Common practice, no source. */
const SLACK = 1.01
const LATERAL_ENDS_MM = 2 * feet(1)

/** Where the main passes, and where a hand finds the valve; above the rack datum. Common practice, no source. */
const INLET_MM = inches(4)
const VALVE_MM = inches(36)

/** The row's water, laid out from the zone's inlet to the far ends. */
export interface Feed {
  /** In the row's own axes, mm. */
  readonly inletU: number
  readonly farU: number
  readonly riserV: number
  readonly lateralV: readonly number[]
  /** Index of the lateral that feeds each line. */
  readonly lateralOfLine: readonly number[]
}

/** The riser pipe is strapped to the row's left riser at the inlet; a lateral runs midway between the lines it feeds. */
export const feedOf = ({ part, frame, positions }: RackPlan): Feed => {
  const { lineV, lengthMm } = positions
  const laterals = Math.min(part.laterals, lineV.length)
  const lateralOfLine = lineV.map((_, line) => Math.floor((line * laterals) / lineV.length))
  const lateralV = Array.from({ length: laterals }, (_, lateral) => {
    const fed = lineV.filter((_line, line) => lateralOfLine[line] === lateral)
    return fed.reduce((sum, v) => sum + v, 0) / fed.length
  })
  const entersHigh = (part.inlet === 'start') === frame.isFromStart
  return {
    inletU: entersHigh ? 0 : lengthMm,
    farU: entersHigh ? lengthMm : 0,
    riserV: (part.railSpacingMm / 2) * (frame.isFromStart ? -1 : 1),
    lateralV,
    lateralOfLine,
  }
}

const pipe = (role: Tube['role'], stock: string, path: readonly Place[], endsMm: number): Tube => ({
  role,
  stock,
  path,
  lengthMm: pathLength(path) * SLACK + endsMm,
})

const mainPipes = ({ part, frame, levels }: RackPlan, feed: Feed): Tube[] => {
  const { inletU, farU, riserV, lateralV } = feed
  const z = levels.lateralMm
  const header = HEADER_OF[part.lateral]
  const head = placeAt(frame, inletU, riserV, z)
  return [
    pipe('riser-pipe', header, [placeAt(frame, inletU, riserV, INLET_MM), head], 0),
    pipe('header', header, [head, ...lateralV.map((v) => placeAt(frame, inletU, v, z))], 0),
    ...lateralV.map((v) =>
      pipe(
        'lateral',
        part.lateral,
        [placeAt(frame, inletU, v, z), placeAt(frame, farU, v, z)],
        LATERAL_ENDS_MM,
      ),
    ),
  ]
}

/** Where the lateral above a tower is pierced for it. */
const barbOf = ({ frame, levels }: RackPlan, feed: Feed, { u, lineIndex }: HungTower): Place =>
  placeAt(frame, u, feed.lateralV[feed.lateralOfLine[lineIndex] ?? 0] ?? 0, levels.lateralMm)

/** All microtubes are cut alike: their length is what meters the water. */
const microtube = (plan: RackPlan, tower: HungTower, barb: Place): Tube => ({
  role: 'microtube',
  stock: MICROTUBE,
  path: [barb, tower.head],
  lengthMm: Math.max(plan.part.microtubeMm, length3(barb, tower.head)),
})

export const feedTubes = (plan: RackPlan, feed: Feed, towers: readonly HungTower[]): Tube[] => [
  ...mainPipes(plan, feed),
  ...towers.map((tower) => microtube(plan, tower, barbOf(plan, feed, tower))),
]

/** From the main to the header: tee, foot elbow, union, both valves, head elbow. */
const zoneValveSet = ({ frame, levels }: RackPlan, { inletU, riserV }: Feed): Fitting[] => {
  const inlet = placeAt(frame, inletU, riserV, INLET_MM)
  const valve = placeAt(frame, inletU, riserV, VALVE_MM)
  const head = placeAt(frame, inletU, riserV, levels.lateralMm)
  return [
    { item: 'main-tee', at: inlet },
    { item: 'elbow', at: inlet },
    { item: 'union', at: valve },
    { item: 'ball-valve', at: valve },
    { item: 'trim-valve', at: valve },
    { item: 'elbow', at: head },
  ]
}

/** At the header a tee for each lateral but the last, which takes an elbow; at the far end what flushes and shows the head. */
const lateralFittings = ({ frame, levels }: RackPlan, feed: Feed): Fitting[] =>
  feed.lateralV.flatMap((v, index) => {
    const at = placeAt(frame, feed.inletU, v, levels.lateralMm)
    const far = placeAt(frame, feed.farU, v, levels.lateralMm)
    return [
      { item: index === feed.lateralV.length - 1 ? 'elbow' : 'tee', at },
      { item: 'reducing-coupling', at },
      { item: 'sight-tube', at: far },
      { item: 'lateral-flush-cap', at: far },
    ]
  })

export const feedFittings = (plan: RackPlan, feed: Feed, towers: readonly HungTower[]): Fitting[] => [
  ...zoneValveSet(plan, feed),
  ...lateralFittings(plan, feed),
  ...towers.map((tower) => ({ item: 'barb', at: barbOf(plan, feed, tower) })),
]

/** Where the row takes its water from the main. */
export const zoneInlet = ({ frame }: RackPlan, { inletU, riserV }: Feed): Mouth => ({
  role: 'zone-inlet',
  at: placeAt(frame, inletU, riserV, INLET_MM),
  line: 0,
  station: 0,
})
