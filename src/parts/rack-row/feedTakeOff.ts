import type { Place } from '../../geometry/point'
import type { Fitting } from '../../model/built'
import type { FeedEnd } from '../../model/feedFacts'
import { onPipe, reducerOn, times } from '../onPipe'
import { isForked, valveLevel, type HeaderShape } from './feedHeader'
import { hasEndFittings, stationsAlong } from './feedLaterals'
import { jointAt } from './feedPipes'
import { feedPlace, lateralLevel, type FeedPlan } from './feedPlan'
import { isFedInMiddle } from './feedSizes'
import type { WaterLaid } from './feedWater'
import { lateralsFacts } from './lateralFacts'
import { couplingsAlong } from './lateralCuts'
import type { RackPlan } from './plan'

/** Each pipe fitting is tied down on both sides. Common practice, no source. */
const TIES_A_FITTING = 2

/** A fitting for pipe of a stock, with the clamps on its barbs and the ties that hold it. */
const joined = (noun: string, stock: string, at: Place): Fitting[] => [
  ...onPipe(noun, stock, at),
  ...times(TIES_A_FITTING, 'zip-tie', at),
]

/** What joins two stocks, with clamps of each; nothing where they are one. */
const reducing = (a: string, b: string, at: Place): Fitting[] => {
  const reducer = reducerOn(a, b, at)
  return reducer.length > 0 ? [...reducer, ...times(TIES_A_FITTING, 'zip-tie', at)] : []
}

/**
 * Foot elbow, and union and valves between two adapters: union and valves have threads inside alone, so that a nipple joins
 * each to the next. The saddle on the main comes with the pipe from there.
 */
const riserFittings = (plan: RackPlan, feed: FeedPlan, { laid, header }: WaterLaid): Fitting[] => {
  if (!header.valves) return []
  const pipe = feed.header
  const foot = jointAt(laid, 0)
  const valve = feedPlace(plan, feed.riserAlongMm, feed.riserRightMm, valveLevel(plan))
  return [
    ...joined('elbow', pipe, foot),
    ...['adapter', 'union', 'ball-valve', 'trim-valve', 'adapter'].flatMap((noun) =>
      joined(noun, pipe, valve),
    ),
    ...times(2, `nipple-${pipe}`, valve),
  ]
}

/** Elbow or tee at the head of the riser pipe, and where the header turns from along the row to across it. */
const headFittings = (plan: RackPlan, feed: FeedPlan, { laid, header }: WaterLaid): Fitting[] => {
  const { shape, head, valves } = header
  const turn = feedPlace(plan, feed.fedAlongMm, feed.riserRightMm, plan.levels.lateralMm)
  const turnsAtHead = valves !== undefined && (shape.hasCorner || !isForked(shape))
  return [
    ...(turnsAtHead ? joined('elbow', feed.header, jointAt(laid, head)) : []),
    ...(shape.hasCorner && !isForked(shape) ? joined('elbow', feed.header, turn) : []),
    ...(isForked(shape) ? joined('tee', feed.header, turn) : []),
    ...shape.here.flatMap(() => joined('tee', feed.header, turn)),
  ]
}

/** Along each side of the header a tee for each lateral but the last, which takes an elbow, or a centre tee of its own. */
const headerFittings = (
  plan: RackPlan,
  feed: FeedPlan,
  { laid, header }: WaterLaid,
  { sides }: HeaderShape,
): Fitting[] => {
  const placeOf = (lateral: number) => jointAt(laid, header.entries[lateral]?.joint ?? 0)
  return sides.flatMap((side) => [
    ...side.slice(0, -1).flatMap((lateral) => joined('tee', feed.header, placeOf(lateral))),
    ...(isFedInMiddle(plan.part)
      ? []
      : side.slice(-1).flatMap((lateral) => joined('elbow', feed.header, placeOf(lateral)))),
  ])
}

/** Where water comes into the laterals: reducing couplings, centre tees, quarter tees. */
const entryFittings = (plan: RackPlan, feed: FeedPlan, { laid, header, laterals }: WaterLaid): Fitting[] => {
  const { lateral } = plan.part
  return header.entries.flatMap(({ joint }, index) => {
    const at = jointAt(laid, joint)
    if (feed.kind !== 'double-split')
      return [
        ...reducing(feed.header, lateral, at),
        ...(feed.kind === 'centre-split' ? joined('tee', lateral, at) : []),
      ]
    const quarters = laterals[index]?.subHeaderRuns.map(([, quarter]) => jointAt(laid, quarter)) ?? []
    return [
      ...joined('tee', feed.header, at),
      ...quarters.flatMap((q) => [...reducing(feed.header, lateral, q), ...joined('tee', lateral, q)]),
    ]
  })
}

const couplings = (plan: RackPlan, feed: FeedPlan): Fitting[] =>
  couplingsAlong(plan, feed).flatMap((alongMm) =>
    feed.lateralRightMm.flatMap((rightMm) =>
      joined(
        'coupling',
        plan.part.lateral,
        feedPlace(plan, alongMm, rightMm, lateralLevel(plan, feed, alongMm)),
      ),
    ),
  )

/** How an end of a lateral is closed. */
const CLOSED_BY = { cap: 'lateral-flush-cap', valve: 'lateral-flush-valve', none: 'lateral-plug' } as const

const endFittings = (plan: RackPlan, feed: FeedPlan, { laid }: WaterLaid, end: FeedEnd): Fitting[] => {
  const { lateral } = plan.part
  const at = jointAt(laid, end.joint)
  // A ring goes on where its ends are: no plug closes it, and what stands there stands on the tee at the corner.
  const isClosed = feed.kind !== 'ring' || hasEndFittings(plan.part)
  return [
    ...(end.hasSightTube ? [{ item: 'sight-tube', at }, ...joined('sight-tube-tee', lateral, at)] : []),
    ...(isClosed ? joined(CLOSED_BY[end.flush], lateral, at) : []),
  ]
}

/** Ring: at the far end an elbow or a tee in each corner, and a tee for each lateral between them. */
const crossFittings = (plan: RackPlan, { laid, crossRun }: WaterLaid): Fitting[] =>
  crossRun.flatMap((joint, index) => {
    const isCorner = index === 0 || index === crossRun.length - 1
    const noun = isCorner && !hasEndFittings(plan.part) ? 'elbow' : 'tee'
    return joined(noun, plan.part.lateral, jointAt(laid, joint))
  })

/** A lateral is tied to every bar that it crosses. */
const barTies = (plan: RackPlan, feed: FeedPlan): Fitting[] => {
  const along = stationsAlong(plan)
  return feed.lateralRightMm.flatMap((rightMm) =>
    along.map((alongMm) => ({
      item: 'zip-tie',
      at: feedPlace(plan, alongMm, rightMm, lateralLevel(plan, feed, alongMm)),
    })),
  )
}

/** Goof plugs for holes that went wrong: 2 in 100. A tower that is taken out of the plan leaves none, since nobody punches for it. */
const WRONG_HOLES = 0.02

/** Barb and tube of each tower: the tube is tied to the tower's top. */
const tubeFittings = (plan: RackPlan, { laid, tubes }: WaterLaid): Fitting[] => {
  const barb = plan.part.microtube.replace('tube', 'barb')
  const inlet = jointAt(laid, 0)
  return [
    ...tubes.map(({ joint }) => ({ item: barb, at: jointAt(laid, joint) })),
    ...tubes.map(({ outlet }) => ({ item: 'zip-tie', at: outlet })),
    ...times(Math.ceil(tubes.length * WRONG_HOLES), 'goof-plug', inlet),
  ]
}

/** All that is bought for a row's water and not cut. What goes missing or breaks is for whoever buys. */
export const feedFittings = (plan: RackPlan, feed: FeedPlan, water: WaterLaid): Fitting[] => [
  ...riserFittings(plan, feed, water),
  ...headFittings(plan, feed, water),
  ...headerFittings(plan, feed, water, water.header.shape),
  ...entryFittings(plan, feed, water),
  ...couplings(plan, feed),
  ...lateralsFacts(plan, feed, water.laterals)
    .flatMap(({ ends }) => ends)
    .flatMap((end) => endFittings(plan, feed, water, end)),
  ...crossFittings(plan, water),
  ...barTies(plan, feed),
  ...tubeFittings(plan, water),
]
