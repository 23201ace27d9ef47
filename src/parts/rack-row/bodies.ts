import type { Body, BodyRole, Support } from '../../model/built'
import { inches } from '../../units/length'
import { outlineOf, placeAt, type Extent } from './frame'
import { SIDES, standingPairs } from './pairs'
import type { RackPlan } from './plan'

/** A foot plate is an 8 x 16 in block, its long side across the row. */
const PLATE_HALF_MM = { along: inches(4), across: inches(8) }

/** Half of what bears on the floor: the plate, or the riser itself where there is none; mm along and across the row. */
const footHalf = ({ part, materials: { lumber } }: RackPlan) =>
  part.footPlateMm > 0 ? PLATE_HALF_MM : { along: lumber.thickMm / 2, across: lumber.wideMm / 2 }

interface FootAt {
  readonly u: number
  readonly v: number
}

const feetOf = (plan: RackPlan): FootAt[] =>
  standingPairs(plan).flatMap(({ u }) =>
    SIDES.map((side) => ({ u, v: (side * plan.part.railSpacingMm) / 2 })),
  )

const around = (u: number, v: number, alongMm: number, acrossMm: number): Extent => ({
  fromU: u - alongMm,
  toU: u + alongMm,
  fromV: v - acrossMm,
  toV: v + acrossMm,
})

/** Half of the row's width, leaves included, mm. */
export const canopyHalfMm = ({ part, site }: RackPlan): number =>
  ((part.lines - 1) * part.lineSpacingMm) / 2 + site.leafReachMm

const canopyExtent = (plan: RackPlan): Extent => {
  const halfMm = canopyHalfMm(plan)
  const { leafReachMm } = plan.site
  return {
    fromU: -leafReachMm,
    toU: plan.positions.lengthMm + leafReachMm,
    fromV: -halfMm,
    toV: halfMm,
  }
}

/** Outer face to outer face of what lies on the floor along or across the row, splices and bearers included, mm. */
const baseWidth = ({ part, lengths, materials: { lumber } }: RackPlan): number => {
  if (part.carriedBy === 'house') return lengths.bearerMm
  if (part.base === 'short-runners') return lengths.shortRunnerMm
  const isSpliced = lengths.runners.length > 1 || (lengths.runners[0]?.pieces.count ?? 0) > 1
  const boardsASide = isSpliced ? 2 : 1
  return Math.max(lengths.bearerMm, lengths.crossMm + 2 * boardsASide * lumber.thickMm)
}

/** How far the rails, and the boards on the outer face, reach past the centre of an end pair, mm. */
const pastEndPair = ({ part, materials: { lumber } }: RackPlan): number => {
  const boardsOutside = part.base === 'short-runners' ? 2 : 1
  return Math.max(part.railEndMm, lumber.thickMm / 2 + boardsOutside * lumber.thickMm)
}

/** The widest of bars, bearers and runners; the longest of rails, end pairs and gutters. */
const frameExtent = (plan: RackPlan): Extent => {
  const { positions, lengths } = plan
  const { insetMm, lengthMm, gutterFromU, gutterToU } = positions
  const pastMm = pastEndPair(plan)
  const halfMm = Math.max(lengths.barMm, baseWidth(plan)) / 2
  return {
    fromU: Math.min(insetMm - pastMm, gutterFromU),
    toU: Math.max(lengthMm - insetMm + pastMm, gutterToU),
    fromV: -halfMm,
    toV: halfMm,
  }
}

/** What hangs from the house ends over the floor with the bearers of its gutters, mm. */
const lowestMm = ({ part, levels, materials }: RackPlan): number =>
  part.carriedBy === 'house' ? levels.bearerTopMm - materials.lumber.thickMm : 0

export const bodiesOf = (plan: RackPlan): Body[] => {
  const { part, frame, positions, levels, materials } = plan
  const foot = footHalf(plan)
  const body = (role: BodyRole, extent: Extent, fromMm: number, toMm: number): Body => ({
    part: part.id,
    role,
    outline: outlineOf(frame, extent),
    fromMm,
    toMm,
  })
  const middleU = (positions.gutterFromU + positions.gutterToU) / 2
  return [
    body('canopy', canopyExtent(plan), levels.tipMm, levels.barTopMm),
    body('frame', frameExtent(plan), lowestMm(plan), levels.barTopMm),
    ...feetOf(plan).map(({ u, v }) =>
      body('foot', around(u, v, foot.along, foot.across), 0, part.footPlateMm),
    ),
    ...positions.lineV.map((v) =>
      body(
        'trough',
        around(middleU, v, positions.lengthMm / 2, materials.gutter.topMm / 2),
        levels.invertLowMm,
        levels.lipHighMm,
      ),
    ),
  ]
}

/** One rest on the floor for each riser; it is shimmed in the levels step. */
export const floorSupports = (plan: RackPlan): Support[] => {
  const { frame } = plan
  const { along, across } = footHalf(plan)
  const isAlongX = frame.downhill % 180 === 0
  return feetOf(plan).map(({ u, v }) => ({
    rests: 'floor',
    at: placeAt(frame, u, v, 0),
    halfXMm: isAlongX ? along : across,
    halfYMm: isAlongX ? across : along,
  }))
}
