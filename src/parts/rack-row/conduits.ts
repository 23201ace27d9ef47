import type { Conduit } from '../../catalogue/conduit'
import type { Stick } from '../../model/built'
import { inches } from '../../units/length'
import { cutOf } from './cut'
import { railOutMm, railRuns, sleeveLengthMm, type RailRun } from './joints'
import { barTopOf } from './levels'
import { SIDES } from './pairs'
import type { RackPlan } from './plan'
import { ACROSS, ALONG, layFrom, layMiddle, type Piece } from './stick'

/** How much shorter conduit may come: common practice, no source. */
const RAIL_MINUS_MM = inches(1 / 16)
const BAR_MINUS_MM = inches(1 / 8)

/** A tubing cutter parts conduit without a kerf. */
const CUTTER_KERF_MM = 0

const conduitPiece = (
  { materials }: RackPlan,
  mark: string,
  conduit: Conduit,
  lengthMm: number,
  minusMm: number,
): Piece => ({
  mark,
  stock: conduit.key,
  lengthMm,
  widthMm: conduit.odMm,
  heightMm: conduit.odMm,
  cut: cutOf(lengthMm, [materials.stickOf(conduit)], CUTTER_KERF_MM),
  minusMm,
  holes: [],
})

/** Centre of a rail: under the bars of its rack, mm. */
const railCentreMm = ({ part, materials, levels }: RackPlan, rack: number, conduit: Conduit): number =>
  barTopOf(part, levels, rack) - materials.bar.odMm - conduit.odMm / 2

const rails = (plan: RackPlan, runs: readonly RailRun[]): Stick[] => {
  return runs.flatMap(({ rack, fromU, toU, isBig }) => {
    const conduit = isBig ? plan.materials.big : plan.materials.rail
    const piece = conduitPiece(plan, isBig ? 'RL-b' : 'RL', conduit, toU - fromU, RAIL_MINUS_MM)
    const z = railCentreMm(plan, rack, conduit)
    const halfMm = plan.part.railSpacingMm / 2 + railOutMm(plan.part, rack, plan.materials)
    return SIDES.map((side) => layFrom(plan.frame, piece, { u: fromU, v: side * halfMm, z }, ALONG, rack))
  })
}

/** What joins two rails end to end, and how much its centre lies over theirs, mm. */
interface Joiner {
  readonly mark: 'SV' | 'DW'
  readonly conduit: Conduit
  readonly overRailMm: number
}

const joinerOf = ({ part, materials }: RackPlan): Joiner | undefined => {
  const { rail, big, dowel } = materials
  const looseMm = (big.idMm - rail.odMm) / 2
  switch (part.joint) {
    // The rails lie on the inside bottom of a sleeve that lies in its riser.
    case 'J1':
      return { mark: 'SV', conduit: big, overRailMm: looseMm }
    // Between risers it hangs on the rails.
    case 'J2':
      return { mark: 'SV', conduit: big, overRailMm: -looseMm }
    // Tape shims it to the middle.
    case 'J4':
      return { mark: 'DW', conduit: dowel, overRailMm: 0 }
    case 'J3':
    case 'J5':
      return undefined
  }
}

/** A sleeve or a dowel on every line between two racks. */
const joiners = (plan: RackPlan): Stick[] => {
  const { part, materials, frame } = plan
  const joiner = joinerOf(plan)
  if (!joiner) return []
  const piece = conduitPiece(plan, joiner.mark, joiner.conduit, sleeveLengthMm(part), RAIL_MINUS_MM)
  const z = railCentreMm(plan, 0, materials.rail) + joiner.overRailMm
  return Array.from({ length: part.racks - 1 }, (_, rack) => rack).flatMap((rack) =>
    SIDES.map((side) => {
      const middle = { u: (rack + 1) * part.rackLengthMm, v: (side * part.railSpacingMm) / 2, z }
      return layMiddle(frame, piece, middle, ALONG, rack)
    }),
  )
}

const bars = (plan: RackPlan): Stick[] => {
  const { part, materials, positions, levels, lengths, frame } = plan
  const piece = conduitPiece(plan, 'HB', materials.bar, lengths.barMm, BAR_MINUS_MM)
  return positions.barU.map((u, index) => {
    const rack = Math.floor(index / part.barsPerRack)
    const z = barTopOf(part, levels, rack) - materials.bar.odMm / 2
    return layMiddle(frame, piece, { u, v: 0, z }, ACROSS, rack)
  })
}

/** Rails, what joins them, and hanger bars. */
export const conduitSticks = (plan: RackPlan): Stick[] => [
  ...rails(plan, railRuns(plan.part, plan.materials, plan.positions.insetMm)),
  ...joiners(plan),
  ...bars(plan),
]
