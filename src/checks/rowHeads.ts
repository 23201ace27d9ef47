import { polyOf } from '../catalogue/pipe'
import type { Built } from '../model/built'
import type { FeedFacts, FeedTube } from '../model/feedFacts'
import { climbAt, type Levels, type RowGrade } from '../model/levels'
import { rememberEach, rememberLast } from '../model/remember'
import type { RowWater } from '../model/water'
import { waterAt } from '../solvers/water/properties'
import { pipeLossSlope, reynoldsNumber, type Pipe } from '../solvers/water/friction'
import { TUBE_LOSS_K, tubeFlowM3S, tubeHeadM } from '../solvers/water/tube'
import { fromM3PerS, toM3PerS } from '../units/flow'
import { headM, toHeadM } from '../units/head'
import type { Bay } from './context'

/** What stands over the open ends of a row's tubes, mm of water. */
export interface RowHeads {
  readonly leastMm: number
  readonly mostMm: number
  /** From the barb with the most head to that with the least, along laterals and header. */
  readonly dropMm: number
  /** Lost along one lateral: the most of any. */
  readonly alongMm: number
  /** Between the best-fed barb of one lateral and that of another. */
  readonly betweenMm: number
  /** How far apart the open ends hang. */
  readonly levelMm: number
}

/** A row's tubes as bare numbers, for a loop over all of them in every frame of a drag. */
interface TubeEnds {
  readonly joint: Int32Array
  /** Barbs of each lateral, by their joints. */
  readonly barbs: readonly Int32Array[]
  readonly x: Float64Array
  readonly y: Float64Array
  readonly z: Float64Array
}

/** Joints of each lateral that tubes hang on. */
const barbsOf = ({ tubes, laterals }: FeedFacts): Int32Array[] => {
  const hung = new Set(tubes.map(({ joint }) => joint))
  return laterals.map(({ joints }) => Int32Array.from(joints.filter((joint) => hung.has(joint))))
}

const tubeEnds = rememberEach<FeedFacts, null, TubeEnds>((feed) => tubeEndsOf(feed, feed.tubes))

const tubeEndsOf = (feed: FeedFacts, tubes: readonly FeedTube[]): TubeEnds => ({
  barbs: barbsOf(feed),
  joint: Int32Array.from(tubes, ({ joint }) => joint),
  x: Float64Array.from(tubes, ({ outlet }) => outlet.x),
  y: Float64Array.from(tubes, ({ outlet }) => outlet.y),
  z: Float64Array.from(tubes, ({ outlet }) => outlet.z),
})

/** Levels of the open ends over where the row starts to be reckoned, mm; those of a row on grade climb with it. */
const endLevels = ({ x, y, z }: TubeEnds, grade: RowGrade | undefined): Float64Array =>
  grade === undefined ? z : z.map((level, i) => level + climbAt(grade, { x: x[i] ?? 0, y: y[i] ?? 0 }))

/** What is lost along laterals and between them, mm. */
const lostIn = (
  barbs: readonly Int32Array[],
  headMm: Float64Array,
): Pick<RowHeads, 'alongMm' | 'betweenMm'> => {
  let [alongMm, leastTop, mostTop] = [0, Infinity, -Infinity]
  for (const joints of barbs) {
    let [least, most] = [Infinity, -Infinity]
    for (const joint of joints) {
      const head = headMm[joint] ?? 0
      least = Math.min(least, head)
      most = Math.max(most, head)
    }
    if (joints.length === 0) continue
    alongMm = Math.max(alongMm, most - least)
    leastTop = Math.min(leastTop, most)
    mostTop = Math.max(mostTop, most)
  }
  return { alongMm, betweenMm: Math.max(0, mostTop - leastTop) }
}

const headsOf = ({ jointHeadMm }: RowWater, { part, feed, zFrom }: Built, levels: Levels): RowHeads => {
  if (!feed) throw new RangeError(`${part} has no feed, and so no tubes`)
  const isSite = zFrom === 'benchmark'
  const datumMm = isSite ? 0 : (levels.datums.get(part) ?? 0)
  const ends = tubeEnds(feed, null)
  const level = endLevels(ends, isSite ? undefined : levels.grades.get(part))
  let [least, most, leastBarb, mostBarb] = [Infinity, -Infinity, Infinity, -Infinity]
  let [leastEnd, mostEnd] = [Infinity, -Infinity]
  for (let i = 0; i < level.length; i += 1) {
    const end = (level[i] ?? 0) + datumMm
    const head = jointHeadMm[ends.joint[i] ?? 0] ?? 0
    least = Math.min(least, head - end)
    most = Math.max(most, head - end)
    leastBarb = Math.min(leastBarb, head)
    mostBarb = Math.max(mostBarb, head)
    leastEnd = Math.min(leastEnd, end)
    mostEnd = Math.max(mostEnd, end)
  }
  return {
    leastMm: least,
    mostMm: most,
    dropMm: mostBarb - leastBarb,
    ...lostIn(ends.barbs, jointHeadMm),
    levelMm: mostEnd - leastEnd,
  }
}

interface Standing {
  readonly built: Built
  readonly levels: Levels
}

const isSameStanding = (a: Standing, b: Standing): boolean => a.built === b.built && a.levels === b.levels

/** Heads of a row's tubes, found once for all rules that ask. */
export const rowHeadsOf = (row: RowWater, built: Built, levels: Levels): RowHeads =>
  remembered(row, { built, levels })

const remembered = rememberEach<RowWater, Standing, RowHeads>(
  (row, { built, levels }) => headsOf(row, built, levels),
  isSameStanding,
)

/** A row that water comes to, with what it is made of. */
export interface WateredRow {
  readonly row: RowWater
  readonly built: Built
  readonly feed: FeedFacts
}

/** Every row that water comes to, in the order of the bay's parts; listed once for all rules that ask. */
export const wateredRows = rememberLast(({ water, built }: Bay): readonly WateredRow[] =>
  built.flatMap((each) => {
    const row = water.rows.get(each.part)
    return row && each.feed && each.feed.tubes.length > 0 ? [{ row, built: each, feed: each.feed }] : []
  }),
)

/**
 * Bore of a row's fastest tube, m, from its Reynolds number: as the flows were solved, whatever a bucket test says of it.
 * The tube's own where nothing flows.
 */
const boreM = (row: RowWater, { stock }: FeedTube, kinematicM2S: number): number => {
  const catalogueM = toHeadM(polyOf(stock).idMm)
  const flow = toM3PerS(row.figures.most.flowLph)
  const reynolds = reynoldsNumber(flow, catalogueM, kinematicM2S)
  return reynolds > 0 && row.tubeReynolds > 0 ? (catalogueM * reynolds) / row.tubeReynolds : catalogueM
}

/** What a row's tubes pass: flows in litres an hour, heads over the open end in mm. */
export interface TubeLaw {
  readonly flowAt: (headMm: number) => number
  readonly headAt: (flowLph: number) => number
  /** The power of the head with which the flow goes near a flow: 1 for smooth flow alone, 1/2 for losses at the ends alone. */
  readonly powerAt: (flowLph: number) => number
}

const lawOf = (tube: Pipe, kinematicM2S: number): TubeLaw => ({
  flowAt: (headMm) => fromM3PerS(tubeFlowM3S(toHeadM(headMm), tube, kinematicM2S)),
  headAt: (flowLph) => headM(tubeHeadM(toM3PerS(flowLph), tube, kinematicM2S)),
  powerAt: (flowLph) => {
    const flow = toM3PerS(flowLph)
    return tubeHeadM(flow, tube, kinematicM2S) / (flow * pipeLossSlope(flow, tube, kinematicM2S))
  },
})

/** The law of a row's first tube, in the bay's water; or of one of another stock or length in its place. */
export const tubeLawOf = (
  { row, feed }: WateredRow,
  waterC: number,
  other: { readonly stock?: string; readonly lengthMm?: number } = {},
): TubeLaw => {
  const { kinematicM2S } = waterAt(waterC)
  const own = feed.tubes[0]
  const lengthMm = other.lengthMm ?? own?.lengthMm ?? 0
  const isOther = other.stock !== undefined && other.stock !== own?.stock
  const bore =
    isOther || !own ? toHeadM(polyOf(other.stock ?? 'tube-1/8').idMm) : boreM(row, own, kinematicM2S)
  return lawOf({ lengthM: toHeadM(lengthMm), boreM: bore, lossK: TUBE_LOSS_K }, kinematicM2S)
}

/** How unlike the tubes of a row are in length, as a share of their mean: the way from barb to tower may ask for more than was cut. */
export const lengthSpread = rememberEach<FeedFacts, null, number>(({ tubes }) => {
  const lengths = tubes.map(({ lengthMm }) => lengthMm)
  const mean = lengths.reduce((sum, mm) => sum + mm, 0) / lengths.length
  return lengths.length > 0 ? (Math.max(...lengths) - Math.min(...lengths)) / mean : 0
})

/** Tubes cut in groups of different lengths suit one feed, and no other. */
export const isGraded = ({ tubes }: FeedFacts): boolean => tubes.some(({ group }) => group > 0)
