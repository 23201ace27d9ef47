import type { Built } from '../../model/built'
import type { FeedFacts, ZoneValves } from '../../model/feedFacts'
import { type Levels, sitePlace } from '../../model/levels'
import type { FlowFigures, FlowState, TowerAt } from '../../model/water'
import type { Settings } from '../../layout/settings'
import { velocityMS } from '../../solvers/water/friction'
import type { Network, Solution, Valves } from '../../solvers/water/network'
import { waterAt } from '../../solvers/water/properties'
import { solve } from '../../solvers/water/solve'
import { tubeHeadM } from '../../solvers/water/tube'
import { lossAtOpening } from '../../solvers/water/valve'
import { toM3PerS } from '../../units/flow'
import { boresOf } from './bores'
import { figuresOf, flowStateOf, indexOfLeast, indexOfMost } from './figures'
import { LPH_PER_M3S, toM, toMm } from './metres'
import { type RowPiece, rowPieceOf } from './rowPiece'

/** What a row's flows depend on besides the row. */
export interface RowAloneContext {
  readonly settings: Pick<Settings, 'targetLph' | 'waterC' | 'tubeScatter' | 'bucket'>
  readonly levels: Levels
}

/** A row by itself, at the head under which its towers get what is wanted on the average. */
export interface RowAlone {
  readonly figures: FlowFigures
  readonly state: FlowState
  /** In the order of the feed's tubes. */
  readonly tubeLph: Float64Array
  /** Head wanted where water enters the row, valves wide open, over the mean of its open ends, mm. */
  readonly inletHeadMm: number
  /** Head where water enters its laterals over the same, mm. */
  readonly entryHeadMm: number
  /** Greatest velocity in its pipes, m/s. */
  readonly fastestMS: number
}

/** Joint 0 is the open level that stands in for the main: the joints of a piece are numbered as the nodes then are. */
const valvesOf = (valves: ZoneValves | undefined): Valves => ({
  from: Int32Array.from(valves ? [valves.from] : []),
  to: Int32Array.from(valves ? [valves.to] : []),
  boreM: Float64Array.from(valves ? [toM(valves.boreMm)] : []),
  lossK: Float64Array.from(valves ? [valves.lossK + lossAtOpening(1)] : []),
  isOpen: Uint8Array.from(valves ? [1] : []),
  isCheck: Uint8Array.from(valves ? [0] : []),
})

const NO_PUMPS = {
  from: new Int32Array(0),
  to: new Int32Array(0),
  curve: new Int32Array(0),
  speed: new Float64Array(0),
  curves: [],
}

const networkOf = ({ joints, pipes, mouths }: RowPiece, { valves }: FeedFacts, headM: number): Network => ({
  levels: Float64Array.of(headM),
  joints: new Float64Array(joints - 1),
  pipes,
  valves: valvesOf(valves),
  pumps: NO_PUMPS,
  mouths,
})

const sumOf = (values: Float64Array): number => {
  let sum = 0
  for (const value of values) sum += value
  return sum
}

const TOLERANCE_M = 1e-6
/** How near to the wanted flow, as a share: far below what a cup and a watch would show. */
const CLOSE_SHARE = 1e-5
const MOST_ROUNDS = 30

/** The head to try next: along the secant through the last two, never down to where all would run dry. */
const nextHead = (
  head: number,
  flow: number,
  before: readonly [number, number],
  want: number,
  floorM: number,
) => {
  const perHead = (flow - before[1]) / (head - before[0])
  const aimed = perHead > 0 ? head + (want - flow) / perHead : head + (head - floorM) / 2
  return Math.max(aimed, floorM + (head - floorM) / 4)
}

interface Found {
  readonly headM: number
  readonly solution: Solution
}

/** The head at the inlet, m above the rack datum, at which all tubes together give `wantM3S`. */
const headFor = (network: Network, wantM3S: number, floorM: number, waterC: number): Found | undefined => {
  let before: readonly [number, number] = [floorM, 0]
  let last: Solution | undefined
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const headM = network.levels[0] ?? 0
    const solution = solve(network, { temperatureC: waterC, toleranceM: TOLERANCE_M }, last)
    if (!solution.ok || !solution.isSettled) return undefined
    last = solution
    const flow = sumOf(solution.mouthM3S)
    if (Math.abs(flow - wantM3S) <= CLOSE_SHARE * wantM3S) return { headM, solution }
    network.levels[0] = nextHead(headM, flow, before, wantM3S, floorM)
    before = [headM, flow]
  }
  return undefined
}

/** A first guess: what the first tube needs for its flow, and half as much again for the pipes. */
const guessM = ({ mouths, outletM }: RowPiece, flowM3S: number, waterC: number): number => {
  const tube = { lengthM: mouths.lengthM[0] ?? 1, boreM: mouths.boreM[0] ?? 1, lossK: mouths.lossK[0] ?? 0 }
  return outletM + 1.5 * tubeHeadM(flowM3S, tube, waterAt(waterC).kinematicM2S)
}

const fastest = ({ pipes }: RowPiece, { pipeM3S }: Solution): number => {
  let most = 0
  pipeM3S.forEach((flow, i) => {
    most = Math.max(most, velocityMS(Math.abs(flow), pipes.boreM[i] ?? 1))
  })
  return most
}

const entryM = ({ laterals }: FeedFacts, { headM }: Solution): number => {
  const heads = laterals.flatMap(({ fedAt }) => fedAt.map((joint) => headM[joint] ?? 0))
  return heads.reduce((sum, head) => sum + head, 0) / Math.max(1, heads.length)
}

const towerOf = (built: Built, feed: FeedFacts, levels: Levels, tube: number, flowLph: number): TowerAt => {
  const { station, line, outlet } = feed.tubes[tube] ?? { station: 0, line: 0, outlet: { x: 0, y: 0, z: 0 } }
  return { part: built.part, station, line, at: sitePlace(levels, built, outlet), flowLph }
}

const read = (
  built: Built,
  feed: FeedFacts,
  piece: RowPiece,
  found: Found,
  { settings, levels }: RowAloneContext,
): RowAlone => {
  const { headM, solution } = found
  const tubeLph = solution.mouthM3S.map((flow) => flow * LPH_PER_M3S)
  const at = (tube: number) => towerOf(built, feed, levels, tube, tubeLph[tube] ?? 0)
  const figures = figuresOf(
    tubeLph,
    at(indexOfLeast(tubeLph)),
    at(indexOfMost(tubeLph)),
    settings.tubeScatter,
  )
  return {
    figures,
    state: flowStateOf(figures, settings.targetLph),
    tubeLph,
    inletHeadMm: toMm(headM - piece.outletM),
    entryHeadMm: toMm(entryM(feed, solution) - piece.outletM),
    fastestMS: fastest(piece, solution),
  }
}

/** The row's piece of a network, as the bay's own network has it. */
export const pieceAlone = (
  { part }: Pick<Built, 'part'>,
  feed: FeedFacts,
  { settings, levels }: RowAloneContext,
): RowPiece => rowPieceOf(feed, { boreOf: boresOf(settings.bucket), grade: levels.grades.get(part) })

/**
 * A row fed by itself, valves wide open, at the head that gives its towers the flow wanted on the average: what its own
 * pipes do to them, whatever pump and main do. Undefined for a row without towers.
 */
export const rowAlone = (built: Built, context: RowAloneContext): RowAlone | undefined => {
  const { feed } = built
  if (!feed || feed.tubes.length === 0) return undefined
  const { targetLph, waterC } = context.settings
  const piece = pieceAlone(built, feed, context)
  const flowM3S = toM3PerS(targetLph)
  const network = networkOf(piece, feed, guessM(piece, flowM3S, waterC))
  const floorM = Math.min(...piece.mouths.levelM)
  const found = headFor(network, feed.tubes.length * flowM3S, floorM, waterC)
  return found && read(built, feed, piece, found, context)
}
