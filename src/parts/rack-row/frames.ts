import type { Hole, Stick } from '../../model/built'
import { boardPiece } from './board'
import { cutOf } from './cut'
import { railOutMm } from './joints'
import { tieTopOf } from './levels'
import { SIDES, type Pair } from './pairs'
import type { RackPlan } from './plan'
import { ACROSS, layFrom, layMiddle, UP, type Piece } from './stick'

/** A riser may come out shorter only by what it has over the least riser: its holes are measured from the foot. */
const riserPiece = (plan: RackPlan, mark: string, holes: readonly Hole[]): Piece => {
  const { part, site, boards, materials, levels, lengths } = plan
  return {
    mark,
    stock: materials.lumber.key,
    lengthMm: lengths.riserMm,
    // Along the row and across it: the hole goes through the wide face.
    widthMm: materials.lumber.thickMm,
    heightMm: materials.lumber.wideMm,
    cut: cutOf(lengths.riserMm, boards, site.kerfMm),
    minusMm: part.riserMm === null ? Math.max(0, lengths.riserMm - levels.riserNeededMm) : 0,
    holes,
  }
}

type Side = (typeof SIDES)[number]

/** Which riser stands at a side of a pair. */
type RiserAt = (pair: Pair, side: Side) => Piece

/** J5: each hole stands off its riser's middle by half a rail, and where two rails lap both go through one riser. */
const lappedRisers = (plan: RackPlan): RiserAt => {
  const { part, materials, levels } = plan
  const hole = (rack: number, side: Side): Hole => ({
    centreMm: levels.holes.plainMm,
    diameterMm: levels.holes.plainBitMm,
    asideMm: side * railOutMm(part, rack, materials),
  })
  return ({ rack, isJoint }, side) =>
    isJoint
      ? riserPiece(plan, 'RS-d', [hole(rack - 1, side), hole(rack, side)])
      : riserPiece(plan, 'RS-p', [hole(rack, side)])
}

const risersOf = (plan: RackPlan): RiserAt => {
  if (plan.part.joint === 'J5') return lappedRisers(plan)
  const { plainMm, sleeveMm, plainBitMm, sleeveBitMm } = plan.levels.holes
  const plain = riserPiece(plan, 'RS-p', [{ centreMm: plainMm, diameterMm: plainBitMm }])
  const big = riserPiece(plan, 'RS-s', [{ centreMm: sleeveMm, diameterMm: sleeveBitMm }])
  return ({ isBig }) => (isBig ? big : plain)
}

const risers = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => {
  const riserAt = risersOf(plan)
  const { footPlateMm, railSpacingMm } = plan.part
  return pairs.flatMap((pair) =>
    SIDES.map((side) => {
      const foot = { u: pair.u, v: (side * railSpacingMm) / 2, z: footPlateMm }
      return layFrom(plan.frame, riserAt(pair, side), foot, UP, pair.rack)
    }),
  )
}

/** Boards across, against the risers' faces, their top edge at a level. */
const across = (plan: RackPlan, piece: Piece, topMm: number, atU: readonly Pair[], faces: 1 | 2): Stick[] => {
  const z = topMm - piece.heightMm / 2
  const asideMm = plan.materials.lumber.thickMm
  return atU.flatMap(({ u, rack, face }) =>
    (faces === 1 ? [face] : SIDES).map((side) =>
      layMiddle(plan.frame, piece, { u: u + side * asideMm, v: 0, z }, ACROSS, rack),
    ),
  )
}

/** Low across each pair: one cross-piece between the long runners, or two short runners that hold the risers between them. */
const baseAcross = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => {
  const { crossMm, shortRunnerMm } = plan.lengths
  const topMm = plan.levels.runnerTopMm
  return plan.part.base === 'short-runners'
    ? across(plan, boardPiece(plan, 'BR', shortRunnerMm, 'on-edge'), topMm, pairs, 2)
    : across(plan, boardPiece(plan, 'BX', crossMm, 'on-edge'), topMm, pairs, 1)
}

/** Riser pairs: risers, base, top tie. */
export const frameSticks = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => [
  ...risers(plan, pairs),
  ...baseAcross(plan, pairs),
  ...across(
    plan,
    boardPiece(plan, 'TT', plan.lengths.crossMm, 'on-edge'),
    tieTopOf(plan.part, plan.levels.holes),
    pairs,
    1,
  ),
]
