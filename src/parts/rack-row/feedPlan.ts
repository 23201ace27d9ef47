import { polyOf } from '../../catalogue/pipe'
import type { Place } from '../../geometry/point'
import type { FeedKind } from '../../model/feedFacts'
import { inches } from '../../units/length'
import { feedKindOf, headerStock, isFedInMiddle, lateralCount } from './feedSizes'
import { placeAt } from './frame'
import type { RackPlan } from './plan'

/**
 * Where a row's pipes lie, before the first is laid. The feed is reckoned along the row from its start and to the right
 * looking to its end, mm, so that it does not care which way the gutters fall.
 */
export interface FeedPlan {
  readonly kind: FeedKind
  readonly header: string
  /** Where the riser pipe stands. */
  readonly riserAlongMm: number
  readonly riserRightMm: number
  /** Where the header lies across the row. */
  readonly fedAlongMm: number
  /** Each lateral, from the riser pipe's side of the row to the other. */
  readonly lateralRightMm: readonly number[]
  /** Where the header meets what it feeds, lateral by lateral. */
  readonly entryRightMm: readonly number[]
  /** Which lateral feeds each line, lines in order of their numbers. */
  readonly lateralOfLine: readonly number[]
  /** How much higher the laterals lie at the row's end than at its start, mm. */
  readonly riseMm: number
}

/** Two places nearer than this are one: the file can tell them no further apart. */
export const NEAR_MM = 0.01

/** A sub-header lies so far beside its lateral, on the riser pipe's side, tied to the bars with it. Common practice, no source. */
const SUB_HEADER_ASIDE_MM = inches(2)

/** Along the row from its start for a place in the row's own axes, or the other way round. */
export const alongOf = ({ frame, positions }: RackPlan, u: number): number =>
  frame.isFromStart ? u : positions.lengthMm - u

export const feedPlace = (plan: RackPlan, alongMm: number, rightMm: number, z: number): Place =>
  placeAt(plan.frame, alongOf(plan, alongMm), plan.frame.isFromStart ? rightMm : -rightMm, z)

const sideSign = ({ part }: RackPlan): 1 | -1 => (part.riserSide === 'left' ? -1 : 1)

/** Lines are shared out from the riser pipe's side; where they do not go evenly, the lateral next to it feeds the more. */
const laterals = ({ part }: RackPlan): number[] => {
  const count = lateralCount(part)
  return Array.from({ length: part.lines }, (_, line) => {
    const fromRiser = part.riserSide === 'left' ? line : part.lines - 1 - line
    return Math.floor((fromRiser * count) / part.lines)
  })
}

/** A lateral above the bars runs midway between the lines that it feeds. */
const betweenLines = ({ part, positions }: RackPlan, lateralOfLine: readonly number[]): number[] =>
  Array.from({ length: lateralCount(part) }, (_, lateral) => {
    const fed = positions.lineV.filter((_right, line) => lateralOfLine[line] === lateral)
    return fed.reduce((sum, right) => sum + right, 0) / fed.length
  })

/**
 * Under the rails a lateral goes to the nearer one, on the inner faces of its risers; the outermost lies against them and
 * the next beside it.
 */
const besideRails = (plan: RackPlan, wantedMm: readonly number[]): number[] => {
  const { part, materials } = plan
  const { odMm } = polyOf(part.lateral)
  const againstMm = (part.railSpacingMm - materials.lumber.wideMm - odMm) / 2
  const sideOf = (rightMm: number) => (Math.abs(rightMm) < NEAR_MM ? sideSign(plan) : Math.sign(rightMm))
  return wantedMm.map((rightMm) => {
    const side = sideOf(rightMm)
    const outside = wantedMm.filter((other) => sideOf(other) === side && Math.abs(other) > Math.abs(rightMm))
    return side * (againstMm - outside.length * odMm)
  })
}

/** The riser pair nearest to a place along the row; of two the one nearer to the start. */
const nearestPair = (plan: RackPlan, alongMm: number): number =>
  plan.positions.pairU
    .map((u) => alongOf(plan, u))
    .toSorted((a, b) => a - b)
    .reduce((best, pair) => (Math.abs(pair - alongMm) < Math.abs(best - alongMm) - NEAR_MM ? pair : best))

const riseOf = (plan: RackPlan): number => {
  const { lateralRiseMm, inlet } = plan.part
  return inlet === 'end' && !isFedInMiddle(plan.part) ? -lateralRiseMm : lateralRiseMm
}

/** The riser pipe is strapped to a riser at an end of the row, or to the one nearest to the middle. */
export const feedPlanOf = (plan: RackPlan): FeedPlan => {
  const { part, positions } = plan
  const kind = feedKindOf(part)
  const isMiddle = isFedInMiddle(part)
  const endMm = part.inlet === 'start' ? 0 : positions.lengthMm
  const fedAlongMm = isMiddle ? positions.lengthMm / 2 : endMm
  const lateralOfLine = laterals(plan)
  const wantedMm = betweenLines(plan, lateralOfLine)
  const lateralRightMm = part.lateralAt === 'above-bars' ? wantedMm : besideRails(plan, wantedMm)
  const asideMm = kind === 'double-split' ? sideSign(plan) * SUB_HEADER_ASIDE_MM : 0
  return {
    kind,
    header: headerStock(part),
    riserAlongMm: isMiddle && part.riserAt === 'middle' ? nearestPair(plan, fedAlongMm) : endMm,
    riserRightMm: (sideSign(plan) * part.railSpacingMm) / 2,
    fedAlongMm,
    lateralRightMm,
    entryRightMm: lateralRightMm.map((rightMm) => rightMm + asideMm),
    lateralOfLine,
    riseMm: riseOf(plan),
  }
}

/** Level of a lateral's centre along the row: as planned where water enters, and rising evenly from end to end. */
export const lateralLevel = (plan: RackPlan, feed: FeedPlan, alongMm: number): number =>
  plan.levels.lateralMm + (feed.riseMm * (alongMm - feed.fedAlongMm)) / plan.positions.lengthMm
