import type { FeedFacts, FeedLateral, FeedPipe } from '../../model/feedFacts'
import type { Pipe } from '../../solvers/water/friction'
import type { UncutLateral } from '../../solvers/water/gradedCut'
import { toM } from './metres'
import { type RowPiece, SHORTEST_M } from './rowPiece'

/** A lateral from where water enters it to where no more comes from there, one way, station by station. */
export interface Branch extends UncutLateral {
  /** The row's number of each station, first the one that the water comes to first. */
  readonly stations: readonly number[]
}

/** What hangs at a joint. */
interface Hung {
  readonly station: number
  towers: number
  outletM: number
}

const hungAt = (feed: FeedFacts, { mouths }: RowPiece): ReadonlyMap<number, Hung> => {
  const hung = new Map<number, Hung>()
  feed.tubes.forEach(({ joint, station }, i) => {
    const here = hung.get(joint) ?? { station, towers: 0, outletM: 0 }
    const levelM = mouths.levelM[i] ?? 0
    here.outletM = (here.outletM * here.towers + levelM) / (here.towers + 1)
    here.towers += 1
    hung.set(joint, here)
  })
  return hung
}

const pairKey = (a: number, b: number): string => `${Math.min(a, b)}-${Math.max(a, b)}`

type PipeAt = (a: number, b: number) => FeedPipe | undefined

const pipesOf = ({ pipes }: FeedFacts): PipeAt => {
  const between = new Map(pipes.map((pipe) => [pairKey(pipe.from, pipe.to), pipe]))
  return (a, b) => between.get(pairKey(a, b))
}

/**
 * Indexes along a lateral from where water enters it, one way: outward, and no further than where another way in is
 * nearer. A ring's far end is where the way outward ends.
 */
const wayFrom = ({ joints, alongMm, fedAt }: FeedLateral, start: number, step: 1 | -1): number[] => {
  const fedMm = joints.flatMap((joint, i) => (fedAt.includes(joint) ? (alongMm[i] ?? 0) : []))
  const here = alongMm[start] ?? 0
  const apart = (i: number, from = here) => Math.abs((alongMm[i] ?? 0) - from)
  const way = [start]
  for (let i = start + step; i >= 0 && i < joints.length; i += step) {
    const isOutward = apart(i) > apart(i - step)
    if (!isOutward || fedMm.some((other) => apart(i, other) < apart(i))) break
    way.push(i)
  }
  return way
}

const NO_PIPE: Pipe = { lengthM: 0, boreM: 1, lossK: 0 }

/** Pipes one behind the other as one: they are of one bore. */
const joinedOn = (before: Pipe, { lengthMm, lossK }: FeedPipe, boreM: number): Pipe => ({
  lengthM: before.lengthM + Math.max(SHORTEST_M, toM(lengthMm)),
  boreM,
  lossK: before.lossK + lossK,
})

interface Along {
  readonly stations: number[]
  readonly pipes: Pipe[]
  readonly towers: number[]
  readonly outletM: number[]
}

/** A station that all towers were taken out of has no joint, and still counts in its colour group. */
const addEmptyUpTo = (along: Along, station: number): void => {
  const last = along.stations.at(-1)
  if (last === undefined) return
  const step = Math.sign(station - last)
  for (let empty = last + step; empty !== station; empty += step) {
    along.stations.push(empty)
    along.pipes.push(NO_PIPE)
    along.towers.push(0)
    along.outletM.push(along.outletM.at(-1) ?? 0)
  }
}

const branchOf = (
  { joints }: FeedLateral,
  way: readonly number[],
  hung: ReadonlyMap<number, Hung>,
  pipeAt: PipeAt,
  boreM: number,
): Branch => {
  const along: Along = { stations: [], pipes: [], towers: [], outletM: [] }
  let pipe = NO_PIPE
  way.forEach((index, i) => {
    const joint = joints[index] ?? 0
    const led = i > 0 ? pipeAt(joints[way[i - 1] ?? 0] ?? 0, joint) : undefined
    if (led) pipe = joinedOn(pipe, led, boreM)
    const here = hung.get(joint)
    if (!here) return
    addEmptyUpTo(along, here.station)
    along.stations.push(here.station)
    along.pipes.push(pipe)
    along.towers.push(here.towers)
    along.outletM.push(here.outletM)
    pipe = NO_PIPE
  })
  return along
}

/** All branches of a row's laterals, as the solver's march takes them; heights of open ends as in the row's piece. */
export const branchesOf = (feed: FeedFacts, piece: RowPiece, boreM: number): readonly Branch[] => {
  const hung = hungAt(feed, piece)
  const pipeAt = pipesOf(feed)
  return feed.laterals
    .flatMap((lateral) =>
      lateral.joints.flatMap((joint, index) =>
        lateral.fedAt.includes(joint)
          ? ([-1, 1] as const).map((step) =>
              branchOf(lateral, wayFrom(lateral, index, step), hung, pipeAt, boreM),
            )
          : [],
      ),
    )
    .filter(({ stations }) => stations.length > 0)
}
