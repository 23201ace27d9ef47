import type { Stick } from '../../model/built'
import { feet } from '../../units/length'
import { boardPiece } from './board'
import { sharesPairs } from './joints'
import { isBracedPair, SIDES, type Pair } from './pairs'
import type { RackPlan } from './plan'
import { layMiddle, type RowPlace } from './stick'

/**
 * Braces lap square-cut, so one is longer than its nodes are apart by a board's width. The nodes are as far apart
 * as the rails: then braces, cross-pieces and ties are cut at one stop.
 */
const nodesMm = ({ part }: RackPlan): number => part.railSpacingMm

/** Shares of the node distance that make 49-1/2 and 41 degrees. Common practice, no source. */
const SIDE_ALONG = 0.65
const CROSS_ACROSS = 0.75

/** One more braced bay a side for each further such length. Common practice, no source. */
const BRACED_EVERY_MM = feet(40)

/** A node where a brace is fixed, and the way it leans from there; all in the row's own axes, mm. */
interface Lean {
  readonly foot: RowPlace
  readonly alongMm: number
  readonly acrossMm: number
}

const brace = (plan: RackPlan, mark: string, { foot, alongMm, acrossMm }: Lean, rack: number): Stick => {
  const d = nodesMm(plan)
  const upMm = Math.sqrt(Math.max(0, d * d - alongMm * alongMm - acrossMm * acrossMm))
  const middle = { u: foot.u + alongMm / 2, v: foot.v + acrossMm / 2, z: foot.z + upMm / 2 }
  const direction = { u: alongMm / d, v: acrossMm / d, z: upMm / d }
  return layMiddle(
    plan.frame,
    boardPiece(plan, mark, plan.lengths.crossMm, 'on-edge'),
    middle,
    direction,
    rack,
  )
}

/** A riser pair with the way to its neighbour in the braced bay, mm along u. */
interface Bay {
  readonly pair: Pair
  readonly toNextMm: number
}

/** Pairs of each run that stands by itself: the row, or a rack of J2. */
const apart = ({ part }: RackPlan, pairs: readonly Pair[]): (readonly Pair[])[] =>
  sharesPairs(part)
    ? [pairs]
    : Array.from({ length: part.racks }, (_, rack) => pairs.filter((pair) => pair.rack === rack))

/** Both end bays of what stands by itself, and more between them where it is long. */
const bracedBays = (plan: RackPlan, pairs: readonly Pair[]): Bay[] => {
  const last = pairs.length - 1
  const runMm = sharesPairs(plan.part) ? plan.positions.lengthMm : plan.part.rackLengthMm
  const more = Math.max(0, Math.floor(runMm / BRACED_EVERY_MM) - 1)
  const between = Array.from({ length: more }, (_, index) => Math.round(((index + 1) * last) / (more + 1)))
  return [0, ...between, last].flatMap((index) => {
    const pair = pairs[index]
    const next = pairs[index === last ? index - 1 : index + 1]
    return pair && next ? [{ pair, toNextMm: next.u - pair.u }] : []
  })
}

/** From the runner up to a riser, in the plane of the runners. */
const sideBraces = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => {
  const { thickMm, wideMm } = plan.materials.lumber
  const besideMm = (plan.lengths.crossMm + thickMm) / 2
  const z = plan.levels.runnerTopMm + wideMm / 2
  const bays = apart(plan, pairs).flatMap((run) => bracedBays(plan, run))
  return bays.flatMap(({ pair, toNextMm }) => {
    const inMm = Math.sign(toNextMm) * Math.min(SIDE_ALONG * nodesMm(plan), Math.abs(toNextMm))
    return SIDES.map((side) =>
      brace(
        plan,
        'SB',
        { foot: { u: pair.u + inMm, v: side * besideMm, z }, alongMm: -inMm, acrossMm: 0 },
        pair.rack,
      ),
    )
  })
}

/** From the base up to the riser on the right, behind the pair's ties. */
const crossBraces = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => {
  const { thickMm, wideMm } = plan.materials.lumber
  const behindMm = plan.part.base === 'short-runners' ? 2 * thickMm : thickMm
  const acrossMm = CROSS_ACROSS * nodesMm(plan)
  const v = plan.part.railSpacingMm / 2 - acrossMm
  const z = plan.levels.runnerTopMm - wideMm / 2
  return pairs
    .filter(isBracedPair)
    .map(({ u, rack, face }) =>
      brace(plan, 'XB', { foot: { u: u - face * behindMm, v, z }, alongMm: 0, acrossMm }, rack),
    )
}

export const braceSticks = (plan: RackPlan, pairs: readonly Pair[]): Stick[] => {
  const { bracing } = plan.part
  return [
    ...(bracing === 'both' || bracing === 'along' ? sideBraces(plan, pairs) : []),
    ...(bracing === 'both' || bracing === 'across' ? crossBraces(plan, pairs) : []),
  ]
}
