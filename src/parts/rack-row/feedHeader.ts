import { barbedLossK } from '../../catalogue/insertLosses'
import { lossKOf } from '../../catalogue/losses'
import { polyOf } from '../../catalogue/pipe'
import type { ZoneValves } from '../../model/feedFacts'
import { inches } from '../../units/length'
import { addJoint, addPipe, type PipesLaid } from './feedPipes'
import { feedPlace, NEAR_MM, type FeedPlan } from './feedPlan'
import { isFedInMiddle } from './feedSizes'
import type { RackPlan } from './plan'

/** Where the main passes, and where a hand finds the valve; above the rack datum. Common practice, no source. */
const INLET_MM = inches(4)
const VALVE_MM = inches(36)

/** The way of the header from the head of the riser pipe. */
export interface HeaderShape {
  /** It runs along the row first, since no riser stands in the very middle. */
  readonly hasCorner: boolean
  /** A lateral right above the riser pipe, or none. The only lateral of a row is never there: it runs amid the lines. */
  readonly here: readonly number[]
  /** Laterals past it on its own side of the row, and those on the other, nearest first; a side without any is not in the list. */
  readonly sides: readonly (readonly number[])[]
}

export const headerShape = (feed: FeedPlan): HeaderShape => {
  const apart = feed.entryRightMm.map((rightMm, lateral) => ({
    lateral,
    apartMm: rightMm - feed.riserRightMm,
  }))
  const outward = Math.sign(feed.riserRightMm)
  const towards = (sign: number) =>
    apart
      .filter(({ apartMm }) => apartMm * sign > NEAR_MM)
      .toSorted((a, b) => Math.abs(a.apartMm) - Math.abs(b.apartMm))
      .map(({ lateral }) => lateral)
  return {
    hasCorner: Math.abs(feed.riserAlongMm - feed.fedAlongMm) > NEAR_MM,
    here: apart.filter(({ apartMm }) => Math.abs(apartMm) <= NEAR_MM).map(({ lateral }) => lateral),
    sides: [towards(outward), towards(-outward)].filter((side) => side.length > 0),
  }
}

/** Water goes both ways where the header begins, through a tee instead of an elbow. */
export const isForked = ({ sides }: HeaderShape): boolean => sides.length > 1

/** Where the header hands water to a lateral: the joint, and the loss on the header's velocity head for all that turns in. */
export interface Entry {
  readonly joint: number
  readonly lossK: number
}

export interface HeaderLaid {
  readonly shape: HeaderShape
  readonly valves: ZoneValves | undefined
  /** Joints of the riser pipe from foot to head; none behind another row's valve. */
  readonly riserRun: readonly number[]
  readonly head: number
  /** Joints of each piece of header, from the head on. */
  readonly headerRuns: readonly (readonly number[])[]
  readonly entries: readonly Entry[]
}

const valvesOf = ({ part }: RackPlan, { header }: FeedPlan, from: number, to: number): ZoneValves => ({
  from,
  to,
  boreMm: polyOf(header).idMm,
  lossK: lossKOf('union') + lossKOf('ball-valve'),
  isOpen: part.valve === 'open',
  trimTurns: Math.min(part.trimTurns ?? part.trimTurnsAll, part.trimTurnsAll),
  trimTurnsAll: part.trimTurnsAll,
})

/** The valve stands in a hand's reach, and at half height on a rack so low that this would be over its laterals. */
export const valveLevel = ({ levels }: RackPlan): number =>
  Math.min(VALVE_MM, (INLET_MM + levels.lateralMm) / 2)

/** From the foot up to the head: elbow at the foot, valves, elbow at the head unless the water forks there. */
const layRiser = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  turnsAtHead: boolean,
): Pick<HeaderLaid, 'valves' | 'riserRun' | 'head'> => {
  const at = (z: number) => addJoint(laid, feedPlace(plan, feed.riserAlongMm, feed.riserRightMm, z))
  if (plan.part.valveSet === 'shared')
    return { valves: undefined, riserRun: [], head: at(plan.levels.lateralMm) }
  const foot = at(INLET_MM)
  const below = at(valveLevel(plan))
  const above = at(valveLevel(plan))
  const head = at(plan.levels.lateralMm)
  addPipe(laid, 'riser-pipe', feed.header, [foot, below], barbedLossK('elbow'))
  addPipe(laid, 'riser-pipe', feed.header, [above, head], turnsAtHead ? barbedLossK('elbow') : 0)
  return { valves: valvesOf(plan, feed, below, above), riserRun: [foot, below, above, head], head }
}

/** Loss of what the header has at a lateral, for the water that turns into it; a centre tee's own is the laterals'. */
const entryLoss = ({ part }: RackPlan, isLast: boolean): number => {
  if (!isLast) return barbedLossK('tee-branch')
  return isFedInMiddle(part) ? 0 : barbedLossK('elbow')
}

/** One side of the header, from where it begins to its last lateral. */
const laySide = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  from: number,
  side: readonly number[],
  firstK: number,
): { readonly run: number[]; readonly entries: (readonly [number, Entry])[] } => {
  const run: number[] = []
  let before = from
  const entries = side.map((lateral, index): readonly [number, Entry] => {
    const rightMm = feed.entryRightMm[lateral] ?? 0
    const joint = addJoint(laid, feedPlace(plan, feed.fedAlongMm, rightMm, plan.levels.lateralMm))
    const lossK = index === 0 ? firstK : barbedLossK('tee-run')
    addPipe(laid, 'header', feed.header, [before, joint], lossK)
    run.push(joint)
    before = joint
    return [lateral, { joint, lossK: entryLoss(plan, index === side.length - 1) }]
  })
  return { run, entries }
}

/** What the water passes before the first piece of header that lies across: a fork, a tee for a lateral, a corner. */
const firstLoss = (shape: HeaderShape): number => {
  if (isForked(shape)) return barbedLossK('tee-branch')
  if (shape.here.length > 0) return barbedLossK('tee-run')
  return shape.hasCorner ? barbedLossK('elbow') : 0
}

/** Riser pipe and header, to where each lateral takes its water. */
export const layHeader = (plan: RackPlan, feed: FeedPlan, laid: PipesLaid): HeaderLaid => {
  const shape = headerShape(feed)
  const riser = layRiser(plan, feed, laid, shape.hasCorner || !isForked(shape))
  const z = plan.levels.lateralMm
  const corner = shape.hasCorner
    ? [addJoint(laid, feedPlace(plan, feed.fedAlongMm, feed.riserRightMm, z))]
    : []
  for (const joint of corner) addPipe(laid, 'header', feed.header, [riser.head, joint], 0)
  const from = corner[0] ?? riser.head
  const sides = shape.sides.map((side) => laySide(plan, feed, laid, from, side, firstLoss(shape)))
  const entryOf = new Map<number, Entry>(sides.flatMap(({ entries }) => entries))
  const above: Entry = { joint: from, lossK: barbedLossK('tee-branch') }
  const [first, second] = sides.map(({ run }) => run)
  const headerRuns = [
    [riser.head, ...corner, ...(first ?? [])],
    ...(second ? [[from, ...second]] : []),
  ].filter((run) => run.length > 1)
  return {
    ...riser,
    shape,
    headerRuns,
    entries: feed.entryRightMm.map((_, lateral) => entryOf.get(lateral) ?? above),
  }
}
