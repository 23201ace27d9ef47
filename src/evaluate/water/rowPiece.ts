import { polyOf } from '../../catalogue/pipe'
import type { FeedFacts, FeedPipe, FeedTube } from '../../model/feedFacts'
import { climbAt, type RowGrade } from '../../model/levels'
import { rememberEach } from '../../model/remember'
import type { Mouths, Pipes } from '../../solvers/water/network'
import { TUBE_LOSS_K } from '../../solvers/water/tube'
import { toM } from './metres'

/** Bore of a microtube's stock, m: the catalogue's, or what a bucket test says of it. */
export type BoreOf = (stock: string) => number

/** What a piece depends on besides the feed: bores of tubes, and how the row climbs with the floor. */
export interface PieceContext {
  readonly boreOf: BoreOf
  readonly grade: RowGrade | undefined
}

/** A row's own pipes and tubes in the solver's arrays, joints numbered from its own inlet on. */
export interface RowPiece {
  readonly joints: number
  readonly pipes: Pipes
  /** 1 for each pipe that towers or quarter runs hang on, 0 for riser pipe and header. */
  readonly isLateral: Uint8Array
  /** Heights of the open ends are above the rack datum at the row's start, m. */
  readonly mouths: Mouths
  /** Mean height of the open ends over the same, m. */
  readonly outletM: number
}

/** A pipe is never shorter: a millimetre loses nothing, and no link is without any resistance. */
export const SHORTEST_M = 0.001

const boreM = (stock: string): number => toM(polyOf(stock).idMm)

const pipesOf = (pipes: readonly FeedPipe[]): Pipes => ({
  from: Int32Array.from(pipes, ({ from }) => from),
  to: Int32Array.from(pipes, ({ to }) => to),
  lengthM: Float64Array.from(pipes, ({ lengthMm }) => Math.max(SHORTEST_M, toM(lengthMm))),
  boreM: Float64Array.from(pipes, ({ stock }) => boreM(stock)),
  lossK: Float64Array.from(pipes, ({ lossK }) => lossK),
})

const mouthsOf = (tubes: readonly FeedTube[], { boreOf, grade }: PieceContext): Mouths => ({
  from: Int32Array.from(tubes, ({ joint }) => joint),
  lengthM: Float64Array.from(tubes, ({ lengthMm }) => Math.max(SHORTEST_M, toM(lengthMm))),
  boreM: Float64Array.from(tubes, ({ stock }) => boreOf(stock)),
  lossK: new Float64Array(tubes.length).fill(TUBE_LOSS_K),
  levelM: Float64Array.from(tubes, ({ outlet }) => toM(outlet.z + climbAt(grade, outlet))),
})

/** Mean of some numbers; 0 of none. */
export const meanOf = (values: Float64Array): number => {
  let sum = 0
  for (const value of values) sum += value
  return values.length === 0 ? 0 : sum / values.length
}

const isLateral = ({ role }: FeedPipe): number => (role === 'lateral' || role === 'sub-header' ? 1 : 0)

const isSameContext = (a: PieceContext, b: PieceContext): boolean =>
  a.boreOf === b.boreOf && a.grade === b.grade

/** The row's piece of the network, remembered for as long as its feed is the same: moving one row makes one piece. */
export const rowPieceOf = rememberEach<FeedFacts, PieceContext, RowPiece>((feed, context) => {
  const mouths = mouthsOf(feed.tubes, context)
  return {
    joints: feed.joints.length,
    pipes: pipesOf(feed.pipes),
    isLateral: Uint8Array.from(feed.pipes, isLateral),
    mouths,
    outletM: meanOf(mouths.levelM),
  }
}, isSameContext)
