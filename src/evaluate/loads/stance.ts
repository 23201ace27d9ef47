import {
  isTooTall,
  type LoadState,
  type Stance,
  type StanceState,
  STANDS_AT,
  type Tip,
} from '../../model/strength'
import { type HungAt, sticksOf } from './frame'
import { RISERS } from './risersBuilt'
import type { RowInput } from './rowInput'
import { hungIn, onSide, type Piece, piecesOf, sumOf } from './stancePieces'

/** How far out the towers of one side may hang, of half the base. Common practice, no source. */
const ONE_SIDE_SHARE = 0.8

/** With some spans harvested a row weighs something between empty and full. */
const STATES = ['empty', 'one-side', 'full'] as const satisfies readonly LoadState[]

/** How a row stands that tips at so many times the push. */
export const stanceAt = (safety: number): StanceState => {
  if (safety >= STANDS_AT) return 'Stands'
  return safety >= 1 ? 'Shaky' : 'Tips'
}

interface Pushed {
  readonly towerN: number
  readonly railMm: number
  readonly pushN: number
}

/** From the middle of the weight to the nearer edge one way, mm. */
const armMm = (piece: Piece, hung: readonly HungAt[], towerN: number, way: Tip['way']): number => {
  const { low, high } = piece[way]
  const axis = way === 'across' ? 'v' : 'u'
  const ownAt = way === 'across' ? 0 : (piece.reach.from + piece.reach.to) / 2
  const weightN = piece.ownN + towerN * hung.length
  const middle = (piece.ownN * ownAt + towerN * sumOf(hung, (tower) => tower[axis])) / weightN
  return Math.min(high - middle, middle - low)
}

const tipOf = (
  piece: Piece,
  under: LoadState,
  hung: readonly HungAt[],
  way: Tip['way'],
  { towerN, railMm, pushN }: Pushed,
): Tip => {
  const weightN = piece.ownN + towerN * hung.length
  const arm = armMm(piece, hung, towerN, way)
  const tipsAtN = Math.max(0, (weightN * arm) / railMm)
  const safety = tipsAtN / pushN
  return { under, way, weightN, armMm: arm, tipsAtN, safety, state: stanceAt(safety) }
}

/** Every way in which a row may tip in a state of load: piece by piece, across and along, either side hung. */
const tipsIn = (state: LoadState, pieces: readonly Piece[], pushed: Pushed): Tip[] =>
  pieces.flatMap((piece) =>
    hungIn(state, piece.towers).flatMap((hung) =>
      (['across', 'along'] as const).map((way) => tipOf(piece, state, hung, way, pushed)),
    ),
  )

const leastOf = (tips: readonly Tip[]): readonly Tip[] => {
  const [first, ...others] = tips
  return first ? [others.reduce((least, tip) => (tip.tipsAtN < least.tipsAtN ? tip : least), first)] : []
}

/** How far from the centreline the towers of the worse side hang, taken together, mm. */
const oneSideMm = (towers: readonly HungAt[]): number =>
  Math.max(
    ...([-1, 1] as const).map((side) => {
      const hung = onSide(towers, side)
      return hung.length > 0 ? Math.abs(sumOf(hung, ({ v }) => v)) / hung.length : 0
    }),
  )

const worstState = (tips: readonly Tip[], keepsRules: boolean): StanceState => {
  const states = new Set(tips.map(({ state }) => state))
  if (states.has('Tips')) return 'Tips'
  return states.has('Shaky') || !keepsRules ? 'Shaky' : 'Stands'
}

/** Lengths closer than this are alike. */
const CLOSE_MM = 0.01

const leastHalf = (pieces: readonly Piece[]): number =>
  pieces.length > 0 ? Math.min(...pieces.map(({ across }) => (across.high - across.low) / 2)) : 0

/** How high rails and risers reach, mm. */
const heightsOf = ({ frame, rails }: RowInput) => ({
  railMm: Math.max(0, ...rails.map(({ z }) => z)),
  riserMm: Math.max(0, ...sticksOf(frame, ...RISERS).map(({ stick }) => stick.lengthMm)),
})

/**
 * How the row stands against a person who pushes or pulls at the height of its rails: in each state of load its worst piece and
 * way. A row that is held stands by what holds it, and its tips tell what that must bear. What hangs from the house has
 * no tips.
 */
export const stanceOf = (input: RowInput): Stance => {
  const { frame, facts, loads, settings } = input
  const pieces = piecesOf(input)
  const { railMm, riserMm } = heightsOf(input)
  const pushed = { towerN: loads.towerN, railMm, pushN: settings.pushN }
  const tips = railMm > 0 ? STATES.flatMap((state) => leastOf(tipsIn(state, pieces, pushed))) : []
  const baseHalfMm = leastHalf(pieces)
  const sideMm = oneSideMm(frame.towers)
  const oneSideLimitMm = ONE_SIDE_SHARE * baseHalfMm
  const heightToBase = baseHalfMm > 0 ? riserMm / (2 * baseHalfMm) : 0
  const isFree = facts.hold === 'free'
  const keepsRules =
    pieces.length === 0 || (sideMm <= oneSideLimitMm + CLOSE_MM && !isTooTall({ heightToBase }))
  return {
    baseHalfMm,
    railMm,
    riserMm,
    oneSideMm: sideMm,
    oneSideLimitMm,
    heightToBase,
    tips,
    heldBy: facts.hold === 'free' ? undefined : facts.hold,
    state: isFree ? worstState(tips, keepsRules) : 'Stands',
  }
}
