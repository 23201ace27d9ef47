import { settingsSchema, type Settings } from '../../src/layout/settings'
import type { Built } from '../../src/model/built'
import type { FeedFacts, FeedPipe, FeedTube, ZoneValves } from '../../src/model/feedFacts'
import type { Join } from '../../src/model/levels'
import type { PumpFacts, PumpPoint } from '../../src/model/supplyFacts'
import type { WaterInputs } from '../../src/evaluate/water/plan'
import { gph, gpm } from '../../src/units/flow'
import { feet, inches } from '../../src/units/length'

/**
 * A bay's water as one would sketch it, in inches, with all built things made by hand, so that no part kind is asked.
 * `waterBay().pit({ ... }).main('M', [[0, 0], [480, 0]]).row('A', { along: 120 }).inputs()`
 */

const bare = (part: string, more: Partial<Built>): Built => ({
  part,
  zFrom: 'benchmark',
  sticks: [],
  tubes: [],
  fittings: [],
  bodies: [],
  mouths: [],
  supports: [],
  ...more,
})

export interface RowSketch {
  /** Where on its main it joins, in from the main's first point. */
  readonly along?: number
  readonly main?: string
  /** Another row, behind whose valve it is. */
  readonly behind?: string
  readonly kind?: 'straight' | 'centre-split'
  readonly stations?: number
  /** Towers a station, all on one lateral. */
  readonly towers?: number
  readonly pitch?: number
  /** From the inlet to the first station. */
  readonly first?: number
  readonly lateral?: string
  readonly tube?: string
  readonly tubeIn?: number
  /** Height of the open ends over the zero. */
  readonly outlet?: number
  readonly valves?: Partial<ZoneValves> | undefined
  readonly lossK?: number
}

const at = (x: number, y: number, z: number) => ({ x: inches(x), y: inches(y), z: inches(z) })

const VALVES: ZoneValves = {
  from: 0,
  to: 1,
  boreMm: inches(1.049),
  lossK: 0.2,
  isOpen: true,
  trimTurns: 8,
  trimTurnsAll: 8,
}

/** One lateral, straight away from the main, with its stations at joints 3 and on; joint 2 is where water enters it. */
const feedOf = (sketch: RowSketch): FeedFacts => {
  const {
    kind = 'straight',
    stations = 24,
    towers = 2,
    pitch = 15,
    first = pitch,
    lateral = 'pe-3/4',
    tube = 'tube-1/8',
    tubeIn = 36,
    outlet = 76,
    lossK = 0,
  } = sketch
  const { along = 120 } = sketch
  const joints = [at(along, 24, 4), at(along, 24, 40), at(along, 24, 76)]
  const station = (i: number) => at(along, 24 + first + i * pitch, 76)
  for (let i = 0; i < stations; i += 1) joints.push(station(i))
  const pipe = (from: number, to: number, length: number): FeedPipe => ({
    role: 'lateral',
    from,
    to,
    stock: lateral,
    lengthMm: inches(length),
    lossK,
  })
  const middle = Math.floor(stations / 2)
  const pipes: FeedPipe[] = [
    { role: 'riser-pipe', from: 1, to: 2, stock: 'pe-1', lengthMm: inches(36), lossK: 0 },
  ]
  if (kind === 'straight')
    for (let i = 0; i < stations; i += 1) pipes.push(pipe(2 + i, 3 + i, i === 0 ? first : pitch))
  else {
    pipes.push(pipe(2, 2 + middle, pitch / 2), pipe(2, 3 + middle, pitch / 2))
    for (let i = 0; i < stations - 1; i += 1) if (i !== middle - 1) pipes.push(pipe(3 + i, 4 + i, pitch))
  }
  const tubes: FeedTube[] = []
  for (let i = 0; i < stations; i += 1)
    for (let line = 1; line <= towers; line += 1)
      tubes.push({
        joint: 3 + i,
        station: i + 1,
        line,
        stock: tube,
        lengthMm: inches(tubeIn),
        outlet: { ...station(i), z: inches(outlet) },
        group: 0,
      })
  const isBehind = sketch.behind !== undefined
  return {
    kind,
    joints,
    pipes: isBehind ? [...pipes, { ...pipe(0, 1, 36), role: 'riser-pipe' }] : pipes,
    valves: isBehind ? undefined : { ...VALVES, ...sketch.valves },
    shareJoint: 2,
    tubes,
    laterals: [
      {
        joints: joints.map((_, i) => i).slice(3),
        alongMm: joints.slice(3).map(({ y }) => y),
        fedAt: [2],
        ends: [{ joint: joints.length - 1, flush: 'cap', hasSightTube: true }],
        sagMm: 0,
        riseMm: 0,
      },
    ],
    inletStock: 'pe-1',
    waterFrom: undefined,
  }
}

/** A pump for a few zones: 24 ft at no flow, 16 ft at 37 gpm, invented. */
export const CURVE: readonly PumpPoint[] = [
  { flowLph: 0, headMm: feet(24) },
  { flowLph: gpm(20), headMm: feet(21) },
  { flowLph: gpm(37), headMm: feet(16) },
  { flowLph: gpm(60), headMm: feet(5) },
]

export interface PumpSketch extends Partial<Omit<PumpFacts, 'at' | 'suctionMm'>> {
  readonly at?: readonly [number, number]
  readonly suction?: number
  readonly main?: string
  /** Where on the main it joins, inches from its first point. */
  readonly along?: number
}

export interface WaterSketch {
  settings(values: Partial<Settings>): WaterSketch
  pit(name: string, sketch?: PumpSketch): WaterSketch
  /** A head box with its water so high, inches. */
  box(name: string, water: number, place: { readonly main: string; readonly along: number }): WaterSketch
  main(name: string, points: readonly (readonly [number, number])[], stock?: string): WaterSketch
  /** An end of one main to a place on another. */
  joined(from: string, end: readonly [number, number], to: string, along: number): WaterSketch
  row(name: string, sketch?: RowSketch): WaterSketch
  inputs(): WaterInputs
}

const MAIN_Z = 84

const sketchOf = (
  built: readonly Built[],
  joins: readonly Join[],
  values: Partial<Settings>,
): WaterSketch => {
  const more = (made: readonly Built[], joined: readonly Join[]) =>
    sketchOf([...built, ...made], [...joins, ...joined], values)
  const join = (
    kind: Join['kind'],
    from: string,
    to: string | undefined,
    along: number,
    spot: readonly number[] = [0, 0],
  ): Join => ({
    kind,
    from,
    to,
    at: at(spot[0] ?? 0, spot[1] ?? 0, MAIN_Z),
    alongMm: inches(along),
    gapMm: 0,
    line: 0,
  })
  return {
    settings: (given) => sketchOf(built, joins, { ...values, ...given }),
    pit: (name, { at: spot = [0, 0], suction = -24, main = 'M', along = 0, ...facts } = {}) => {
      const pump: PumpFacts = {
        at: at(spot[0], spot[1], 0),
        pumps: 1,
        curve: CURVE,
        suctionMm: inches(suction),
        stock: 'pe-2',
        lossK: 3,
        filterCleanK: 2,
        filterDirtyK: 12,
        isFilterDirty: false,
        hasCheckValve: true,
        bypass: undefined,
        ...facts,
      }
      return more([bare(name, { pump })], [join('pump-to-main', name, main, along)])
    },
    box: (name, water, { main, along }) =>
      more(
        [bare(name, { headBox: { at: at(0, 0, MAIN_Z), waterMm: inches(water) } })],
        [join('box-to-main', name, main, along)],
      ),
    main: (name, points, stock = 'pe-2') => {
      const path = points.map(([x, y]) => at(x, y, MAIN_Z))
      return more([bare(name, { tubes: [{ role: 'main', stock, path, lengthMm: 0 }] })], [])
    },
    joined: (from, end, to, along) => more([], [join('main-to-main', from, to, along, end)]),
    row: (name, sketch = {}) => {
      const { along = 120, main = 'M', behind } = sketch
      const built = bare(name, { zFrom: 'rack-datum', feed: feedOf(sketch) })
      const joined = behind ? join('zone-to-zone', name, behind, 0) : join('zone-to-main', name, main, along)
      return more([built], [joined])
    },
    inputs: () => ({
      built,
      builtOf: new Map(built.map((each) => [each.part, each])),
      joins,
      joinedPipes: [],
      levels: {
        datums: new Map(),
        grades: new Map(),
        highest: undefined,
        feet: new Map(),
        drains: new Map(),
      },
      settings: { ...settingsSchema.parse({}), targetLph: gph(4), ...values },
    }),
  }
}

export const waterBay = (): WaterSketch => sketchOf([], [], {})
