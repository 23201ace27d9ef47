import type { Stick } from '../../model/built'
import { boardPiece } from './board'
import { cutOf } from './cut'
import { tieTopOf } from './levels'
import { SIDES, type Pair } from './pairs'
import type { RackPlan } from './plan'
import { ACROSS, layFrom, layMiddle, UP, type Piece } from './stick'

/** A riser may come out shorter only by what it has over the least riser: its holes are measured from the foot. */
const riserPiece = (plan: RackPlan, isBig: boolean): Piece => {
  const { part, site, boards, materials, levels, lengths } = plan
  const { plainMm, sleeveMm, plainBitMm, sleeveBitMm } = levels.holes
  const hole = isBig
    ? { centreMm: sleeveMm, diameterMm: sleeveBitMm }
    : { centreMm: plainMm, diameterMm: plainBitMm }
  return {
    mark: isBig ? 'RS-s' : 'RS-p',
    stock: materials.lumber.key,
    lengthMm: lengths.riserMm,
    // Along the row and across it: the hole goes through the wide face.
    widthMm: materials.lumber.thickMm,
    heightMm: materials.lumber.wideMm,
    cut: cutOf(lengths.riserMm, boards, site.kerfMm),
    minusMm: part.riserMm === null ? Math.max(0, lengths.riserMm - levels.riserNeededMm) : 0,
    holes: [hole],
  }
}

const risers = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => {
  const plain = riserPiece(plan, false)
  const big = riserPiece(plan, true)
  const { footPlateMm, railSpacingMm } = plan.part
  return pairs.flatMap(({ u, rack, isBig }) =>
    SIDES.map((side) =>
      layFrom(
        plan.frame,
        isBig ? big : plain,
        { u, v: (side * railSpacingMm) / 2, z: footPlateMm },
        UP,
        rack,
      ),
    ),
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
