import type { FeedFacts, FeedKind } from '../../../src/model/feedFacts'
import type { FlowFigures, FlowState, RowWater, TowerAt, Water } from '../../../src/model/water'
import { gph } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'

/** A lateral by hand: where water comes in and where its towers hang, inches along the row, with flow and head. */
export interface LateralSketch {
  /** Inches along; the joints at which water comes in. */
  readonly fedAt: readonly number[]
  /** Along, flow of each of its towers in gph (a line each), head over the tube ends in inches. */
  readonly stations: readonly {
    readonly along: number
    readonly gph: readonly number[]
    readonly head: number
  }[]
  /** Head where water comes in, inches. */
  readonly fedHead?: number
  readonly firstLine?: number
}

const tower = (station: number, line: number, flowLph: number): TowerAt => ({
  part: 'row',
  station,
  line,
  at: { x: 0, y: 0, z: 0 },
  flowLph,
})

const figuresBy = (least: number, most: number, mean: number): FlowFigures => ({
  towers: 48,
  meanLph: gph(mean),
  least: tower(24, 2, gph(least)),
  most: tower(1, 1, gph(most)),
  spread: (most - least) / most,
  minOverMean: least / mean,
  variation: 0.05,
  lowQuarter: 0.93,
  christiansen: 0.95,
  emission: 0.82,
  statistical: 0.87,
})

/** Level of the tube ends, in from the benchmark. */
const ENDS = 76

/** A row's feed and its water, both by hand. */
export const handRow = (laterals: readonly LateralSketch[], kind: FeedKind = 'straight') => {
  const joints: { along: number; head: number }[] = []
  const tubes: FeedFacts['tubes'][number][] = []
  const flows: number[] = []
  const joint = (along: number, head: number) => joints.push({ along, head }) - 1
  const laid = laterals.map(({ fedAt, stations, fedHead = 8, firstLine = 1 }) => {
    const fed = fedAt.map((along) => ({ along, joint: joint(along, fedHead), isFed: true }))
    const hung = stations.map(({ along, gph: taken, head }, index) => {
      const own = fed.find((place) => place.along === along)?.joint ?? joint(along, head)
      taken.forEach((flow, line) => {
        tubes.push({
          joint: own,
          station: index + 1,
          line: firstLine + line,
          stock: 'tube-1/8',
          lengthMm: inches(36),
          outlet: { x: 0, y: 0, z: inches(ENDS) },
          group: 0,
        })
        flows.push(gph(flow))
      })
      return { along, joint: own, isFed: false }
    })
    const all = [...new Map([...hung, ...fed].map((place) => [place.joint, place])).values()]
    const inOrder = all.toSorted((a, b) => a.along - b.along)
    return {
      joints: inOrder.map((place) => place.joint),
      alongMm: inOrder.map(({ along }) => inches(along)),
      fedAt: fed.map((place) => place.joint),
      ends: [],
      sagMm: 0,
      riseMm: 0,
    }
  })
  const feed: FeedFacts = {
    kind,
    joints: joints.map(({ along }) => ({ x: inches(along), y: 0, z: inches(ENDS) })),
    pipes: [{ role: 'lateral', from: 0, to: 1, stock: 'pe-1', lengthMm: 0, lossK: 0 }],
    valves: undefined,
    shareJoint: 0,
    tubes,
    laterals: laid,
    inletStock: 'pe-1',
    waterFrom: undefined,
  }
  const water: RowWater = {
    part: 'row',
    zone: 'row',
    state: 'Drifting',
    figures: figuresBy(3.4, 4.4, 3.8),
    totalLph: flows.reduce((sum, flow) => sum + flow, 0),
    tubeLph: Float64Array.from(flows),
    jointHeadMm: Float64Array.from(joints, ({ head }) => inches(ENDS + head)),
    pipeLph: new Float64Array(1),
    outletMm: inches(ENDS),
    entryHeadMm: inches(8),
    tubeReynolds: 1680,
    fastestMS: 0.4,
  }
  return { feed, water }
}

/** The water of a bay whose rows have these states and spreads. */
export const handWater = (
  rows: readonly {
    readonly name: string
    readonly state: FlowState
    readonly spread: number
    readonly ends?: number
  }[],
  more: Partial<Water> = {},
): Water => {
  const { water } = handRow([{ fedAt: [0], stations: [] }])
  return {
    rows: new Map(
      rows.map(({ name, state, spread, ends = ENDS }) => [
        name,
        { ...water, part: name, state, outletMm: inches(ends), figures: { ...water.figures, spread } },
      ]),
    ),
    dry: new Map(),
    mains: new Map(),
    pumps: new Map(),
    boxes: new Map(),
    zones: new Map(),
    bay: figuresBy(3.4, 4.4, 3.8),
    totalLph: 0,
    fault: undefined,
    sweeps: 0,
    ...more,
  }
}
