import {
  LAMINAR_RE,
  ROUGHNESS_M,
  fittingLoss,
  lossNumber,
  lossNumberSlope,
  pipeLossSlope,
  reynoldsNumber,
} from './friction'
import { FIRST_ROOT, type LossTable, STEP, STEPS, lossTable } from './lossTable'

// An imported name is looked up at each use where modules are not bundled. What sweeps ask for each time is bound once.
const SMOOTH_TO = LAMINAR_RE
const TABLE_FROM = FIRST_ROOT
const TABLE_STEP = STEP
const TABLE_STEPS = STEPS

/** What a pipe, a valve or a microtube loses, in numbers that a sweep can use at once. */
export interface Resistances {
  /** Head lost per flow while the flow is smooth, s/m2; 0 for a fitting without length. */
  readonly smooth: Float64Array
  /** Head lost in fittings per square of the flow, s2/m5. */
  readonly square: Float64Array
  /** Reynolds number per flow, s/m3; 0 for a fitting, which then never counts as churned. */
  readonly reynolds: Float64Array
  /** Index into `tables`. */
  readonly law: Int32Array
  readonly tables: LossTable[]
  readonly roughness: number[]
  /** What each was worked out from, to tell what has changed. */
  readonly lengthM: Float64Array
  readonly boreM: Float64Array
  readonly lossK: Float64Array
}

export const roomFor = (count: number): Resistances => ({
  smooth: new Float64Array(count),
  square: new Float64Array(count),
  reynolds: new Float64Array(count),
  law: new Int32Array(count),
  tables: [],
  roughness: [],
  lengthM: new Float64Array(count),
  boreM: new Float64Array(count).fill(NaN),
  lossK: new Float64Array(count),
})

/** Fewer velocity heads are none: their square roots would be flows beyond all measure. */
const NO_LOSS = 1e-9

/** What one bore means at one viscosity: pipes come in runs of one bore, so it is worked out once a run. */
interface Bore {
  readonly boreM: number
  readonly smoothPerM: number
  readonly squarePerK: number
  readonly reynoldsPerFlow: number
  readonly law: number
}

/** Fills in resistances one after the other; every pipe of the network goes through `add`. */
export interface Filling {
  readonly into: Resistances
  readonly kinematicM2S: number
  readonly known: Map<number, Bore>
  bore: Bore
  /** False once something was no length, no bore or no loss. */
  isSound: boolean
}

const NO_BORE: Bore = { boreM: NaN, smoothPerM: 0, squarePerK: 0, reynoldsPerFlow: 0, law: 0 }

export const fillingOf = (into: Resistances, kinematicM2S: number): Filling => ({
  into,
  kinematicM2S,
  known: new Map(),
  bore: NO_BORE,
  isSound: true,
})

const boreOf = ({ into, known, kinematicM2S }: Filling, boreM: number): Bore => {
  const met = known.get(boreM)
  if (met !== undefined) return met
  const roughness = ROUGHNESS_M / boreM
  const law = into.roughness.indexOf(roughness)
  if (law < 0) into.roughness.push(roughness)
  const bore: Bore = {
    boreM,
    smoothPerM: pipeLossSlope(0, { lengthM: 1, boreM, lossK: 0 }, kinematicM2S),
    squarePerK: fittingLoss(1, boreM, 1),
    reynoldsPerFlow: reynoldsNumber(1, boreM, kinematicM2S),
    law: law < 0 ? into.tables.push(lossTable(roughness)) - 1 : law,
  }
  known.set(boreM, bore)
  return bore
}

/** Not NaN either. */
const isSize = (value: number): boolean => value >= 0 && value < Infinity

/** Sets resistance `at` to that of a length of a bore with its fittings, SI. */
const set = (filling: Filling, at: number, lengthM: number, boreM: number, lossK: number): void => {
  if (!(isSize(lengthM) && isSize(boreM) && boreM > 0 && isSize(lossK))) {
    filling.isSound = false
    return
  }
  if (filling.bore.boreM !== boreM) filling.bore = boreOf(filling, boreM)
  const { into, bore } = filling
  into.smooth[at] = lengthM * bore.smoothPerM
  into.square[at] = lossK > NO_LOSS ? lossK * bore.squarePerK : 0
  into.reynolds[at] = lengthM > 0 ? bore.reynoldsPerFlow : 0
  into.law[at] = bore.law
}

/** As `set`, where it is not so already; whether it was changed. */
export const fill = (
  filling: Filling,
  at: number,
  lengthM: number,
  boreM: number,
  lossK: number,
): boolean => {
  const { into } = filling
  if (into.lengthM[at] === lengthM && into.boreM[at] === boreM && into.lossK[at] === lossK) return false
  into.lengthM[at] = lengthM
  into.boreM[at] = boreM
  into.lossK[at] = lossK
  set(filling, at, lengthM, boreM, lossK)
  return true
}

/** Forgets all resistances, as where water has another temperature. */
export const forget = ({ boreM, tables, roughness }: Resistances): void => {
  boreM.fill(NaN)
  tables.length = 0
  roughness.length = 0
}

/** Where `lossOf` leaves what it found: a pair written over and over, so that a sweep allocates nothing. */
export const found = { loss: 0, slope: 0 }

/** f Re^2 and its slope in Re, where `readLoss` leaves them. */
const read = { number: 0, slope: 0 }

/** Reads f Re^2 and its slope for a Reynolds number over `LAMINAR_RE` out of a table; beyond it the law itself is asked. */
const readLoss = (table: LossTable, relativeRoughness: number, reynolds: number): void => {
  const root = Math.sqrt(reynolds)
  const at = (root - TABLE_FROM) / TABLE_STEP
  const step = at | 0
  if (step >= TABLE_STEPS) {
    read.number = lossNumber(reynolds, relativeRoughness)
    read.slope = lossNumberSlope(reynolds, relativeRoughness)
    return
  }
  const t = at - step
  const i = 4 * step
  const c1 = table[i + 1] ?? 0
  const c2 = table[i + 2] ?? 0
  const c3 = table[i + 3] ?? 0
  read.number = (table[i] ?? 0) + t * (c1 + t * (c2 + t * c3))
  read.slope = (c1 + t * (2 * c2 + 3 * t * c3)) / (2 * root * TABLE_STEP)
}

/** Head lost at a flow >= 0 through resistance `at`, m, and how fast it grows, s/m2, into `found`. */
export const lossOf = (of: Resistances, at: number, flowM3S: number): void => {
  const smooth = of.smooth[at] ?? 0
  const perFlow = of.reynolds[at] ?? 0
  const drag = (of.square[at] ?? 0) * flowM3S
  const reynolds = flowM3S * perFlow
  if (reynolds <= SMOOTH_TO) {
    found.loss = (smooth + drag) * flowM3S
    found.slope = smooth + 2 * drag
    return
  }
  const law = of.law[at] ?? 0
  readLoss(of.tables[law] ?? NO_TABLE, of.roughness[law] ?? 0, reynolds)
  found.loss = (smooth * read.number) / (64 * perFlow) + drag * flowM3S
  found.slope = (smooth * read.slope) / 64 + 2 * drag
}

/** As `lossOf`, with a flow that may run either way: the loss is negative where the flow is. */
export const lossEitherWay = (of: Resistances, at: number, flowM3S: number): void => {
  lossOf(of, at, Math.abs(flowM3S))
  if (flowM3S < 0) found.loss = -found.loss
}

const NO_TABLE = new Float64Array(0)

/** A step of Newton that changes the flow by a smaller share ends the search. */
const CLOSE_SHARE = 1e-10
const MOST_STEPS = 40

/** Where `flowUnder` leaves what it found. */
export const passed = { flow: 0, perHead: 0 }

/** Flow through resistance `at` that a head > 0 drives, m3/s, and how fast it grows, m2/s, into `passed`. */
export const flowUnder = (of: Resistances, at: number, headM: number): void => {
  const smooth = of.smooth[at] ?? 0
  const root = Math.sqrt(smooth * smooth + 4 * (of.square[at] ?? 0) * headM)
  const flow = (2 * headM) / (smooth + root)
  passed.flow = flow
  passed.perHead = 1 / root
  if (flow * (of.reynolds[at] ?? 0) > SMOOTH_TO) churnedFlow(of, at, headM, flow)
}

/** Churned flow loses more than smooth flow would, so `most`, the smooth answer, is the most it can be. */
const churnedFlow = (of: Resistances, at: number, headM: number, most: number): void => {
  let low = SMOOTH_TO / (of.reynolds[at] ?? 0)
  let high = most
  let flow = most
  for (let step = 0; step < MOST_STEPS; step += 1) {
    lossOf(of, at, flow)
    const missing = headM - found.loss
    if (missing > 0) low = flow
    else high = flow
    const aimed = flow + missing / found.slope
    const next = aimed >= low && aimed <= high ? aimed : (low + high) / 2
    const isClose = Math.abs(next - flow) <= CLOSE_SHARE * next
    flow = next
    if (isClose) break
  }
  passed.flow = flow
  passed.perHead = 1 / found.slope
}
