import { stockOf } from '../../catalogue/stock'
import type { CutList, CutStock } from '../../model/cutList'
import { firstPlan } from '../../solvers/cutting/firstPlan'
import { roomOf, type Piece } from '../../solvers/cutting/problem'
import { inches, toTicks } from '../../units/length'
import type { Members } from './members'

/** A length this far above one that a board gives once more is within reach of a shave. Common practice, no source. */
export const REACH_MM = inches(2)

/** Like pieces that are a little too long for a board of one length to give one more of them. */
export interface NearMiss {
  readonly members: Members
  /** What the board is called and sold by, mm. */
  readonly stockMm: number
  /** How long they may be for one more of them a board. */
  readonly targetTicks: number
  /** How many a board gives now; one more then. 0: they are longer than the board. */
  readonly fromABoard: number
}

/** How much is to come off each piece, ticks. */
export const offTicks = ({ members, targetTicks }: NearMiss): number => members.lengthTicks - targetTicks

const nearMiss = (members: Members, { stockMm, measuredMm }: CutStock, { problem }: CutList): NearMiss => {
  const { kerfTicks } = problem.saw
  const roomTicks = roomOf(toTicks(measuredMm), problem.saw)
  const fromABoard = Math.floor(roomTicks / (members.lengthTicks + kerfTicks))
  const targetTicks = Math.floor(roomTicks / (fromABoard + 1)) - kerfTicks
  return { members, stockMm, targetTicks, fromABoard }
}

/** A piece is not shaved to less than half. */
const isInReach = (near: NearMiss): boolean =>
  offTicks(near) > 0 && offTicks(near) <= toTicks(REACH_MM) && near.targetTicks * 2 > near.members.lengthTicks

/** Pieces of a list that are at such a length, cut already or not at all where none is left to cut. */
const indexOf = ({ problem }: CutList, { lengthTicks }: Members): number =>
  problem.pieces.findIndex((piece) => piece.lengthTicks === lengthTicks)

/** The pieces of a list with as many as there are of a near miss cut to its target instead. */
export const shavenPieces = (list: CutList, near: NearMiss): Piece[] => {
  let left = near.members.count
  const { lengthTicks } = near.members
  const shaven: Piece[] = []
  const rest = list.problem.pieces.map((piece) => {
    if (piece.lengthTicks !== lengthTicks) return piece
    const count = Math.min(left, piece.count)
    left -= count
    shaven.push({ ...piece, lengthTicks: near.targetTicks, count, rule: { kind: 'exact' } })
    return { ...piece, count: piece.count - count }
  })
  return [...rest, ...shaven].filter(({ count }) => count > 0)
}

/** What planning anew with the shaven length would save of a list, in the unit of its cost; geometry has no say yet. */
const costSaved = (list: CutList, near: NearMiss): number =>
  list.cost - firstPlan({ ...list.problem, pieces: shavenPieces(list, near) }).cost

/** A near miss and what it would save of its list, in the unit of the list's cost, if the pieces could be shorter. */
export interface WorthAShave {
  readonly near: NearMiss
  readonly list: CutList
  readonly worth: number
}

/** How many are looked into for a list: the dearest first, so that nothing of weight is left out. */
const MOST_TRIED = 12

/** The near misses of a list of boards or sticks whose shaving would make its plan cheaper, the dearest first. */
export const nearMissesOf = (list: CutList, all: readonly Members[]): readonly WorthAShave[] => {
  if (stockOf(list.stock).form !== 'stick') return []
  const yard = list.stocks.filter(({ isLeftover }) => !isLeftover)
  return all
    .filter((members) => members.stock === list.stock && indexOf(list, members) >= 0)
    .flatMap((members) => yard.map((stock) => nearMiss(members, stock, list)))
    .filter(isInReach)
    .map((near) => ({ near, list, worth: costSaved(list, near) }))
    .filter(({ worth }) => worth > 0)
    .sort((a, b) => b.worth - a.worth)
    .slice(0, MOST_TRIED)
}
