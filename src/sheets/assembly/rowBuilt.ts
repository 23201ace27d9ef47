import type { Built, Stick } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { RackFacts } from '../../model/rackFacts'
import { rememberEach } from '../../model/remember'
import { rowAxes, type RowAxes } from '../rowAxes'
import {
  type Assembled,
  belongsTo,
  countFixings,
  type CountedFixings,
  type Member,
  memberOf,
} from './members'

/** One rack of a row, with all that is put up with it; u of its members is from its own high line. */
export interface RackBuilt extends Assembled {
  readonly part: PartId
  /** From 1 at the start of the row, as on every other paper. */
  readonly number: number
  readonly facts: RackFacts
  readonly rackMm: number
  readonly isHighEnd: boolean
  readonly isLowEnd: boolean
  /** Runners of the base that pass it, in its own axes. */
  readonly runners: readonly Member[]
  /** Bearers that lie in it, in its own axes. */
  readonly bearers: readonly Member[]
  /** Half sizes of what each riser stands on, mm; none where it stands on the floor. */
  readonly plate: { readonly alongMm: number; readonly acrossMm: number } | undefined
  /** Towers that hang in it. */
  readonly towers: number
}

/** What lies along a row under its racks: runners, splice plates, bearers; u from the row's high end. Of short runners nothing. */
export interface BaseBuilt extends Assembled {
  readonly part: PartId
  readonly facts: RackFacts
}

export interface RowBuilt {
  /** From the high end down. */
  readonly racks: readonly RackBuilt[]
  readonly base: BaseBuilt
}

/**
 * Which rack, from 0 at the high end, a member is put up with. A sleeve or a dowel goes in with the rack below it, at whose
 * high line it lies; all else with the rack that it is built for.
 */
const rackOf = ({ mark, rack }: Stick, { isFromStart, racks }: RowAxes): number => {
  const fromHigh = isFromStart ? rack : racks - 1 - rack
  return mark === 'SV' || mark === 'DW' ? fromHigh + 1 : fromHigh
}

const towersARack = ({ mouths }: Built, { stations, racks }: RackFacts): readonly number[] => {
  const towers = Array<number>(racks).fill(0)
  const aRack = stations / racks
  for (const { role, station } of mouths) {
    const rack = Math.floor((station - 1) / aRack)
    if (role === 'tower-head') towers[rack] = (towers[rack] ?? 0) + 1
  }
  return towers
}

const movedUp = ({ stick, from, to }: Member, byU: number): Member => ({
  stick,
  from: { ...from, u: from.u - byU },
  to: { ...to, u: to.u - byU },
})

/** What of a base lies between two rack lines, if only in part. */
const within = (base: readonly Member[], mark: string, fromU: number, toU: number): readonly Member[] =>
  base
    .filter(({ stick, from, to }) => stick.mark === mark && from.u < toU && to.u >= fromU)
    .map((member) => movedUp(member, fromU))

const plateOf = ({ supports, fittings }: Built, { along }: RowAxes): RackBuilt['plate'] => {
  const foot = supports.find(({ rests }) => rests === 'floor')
  if (!foot || !fittings.some(({ item }) => item === 'foot-plate')) return undefined
  const isAlongX = Math.abs(along.x) > Math.abs(along.y)
  const [alongMm, acrossMm] = isAlongX ? [foot.halfXMm, foot.halfYMm] : [foot.halfYMm, foot.halfXMm]
  return { alongMm, acrossMm }
}

/** Members and fixings of a row, each where it belongs. */
const sorted = (built: Built, axes: RowAxes) => {
  const racks = Array.from({ length: axes.racks }, () => ({
    members: [] as Member[],
    fixings: new Map() as CountedFixings,
  }))
  const base = { members: [] as Member[], fixings: new Map() as CountedFixings }
  // Without runners there is no base: the house carries each rack's bearers with its rails.
  const ownerOf = (stick: Stick) => {
    const owner = belongsTo(stick, axes)
    return owner === 'base' && built.rack?.carriedBy === 'house' ? 'rack' : owner
  }
  const placeFor = (stick: Stick) => {
    const owner = ownerOf(stick)
    return owner === 'rack' ? racks[rackOf(stick, axes)] : owner === 'base' ? base : undefined
  }
  for (const stick of built.sticks) {
    const fromU = ownerOf(stick) === 'rack' ? rackOf(stick, axes) * axes.rackMm : 0
    placeFor(stick)?.members.push(memberOf(stick, axes, fromU))
  }
  countFixings(built, (stick) => placeFor(stick)?.fixings)
  return { racks, base }
}

/** Straps are drawn so far over the bars that they carry, mm of the rack. */
export const STRAP_OVER_MM = 60

/** Where a rack that the house carries hangs in its straps, mm from its high line: over its bearers; none of one that stands. */
export const strapsU = ({ facts, members }: RackBuilt): readonly number[] =>
  facts.carriedBy === 'house'
    ? members
        .filter(({ stick }) => stick.mark === 'GB')
        .map(({ from }) => from.u)
        .toSorted((a, b) => a - b)
    : []

/** Whether the next rack brings the risers at its low line. */
export const sharesNext = ({ isLowEnd, facts: { joint, carriedBy } }: RackBuilt): boolean =>
  !isLowEnd && joint !== 'J2' && carriedBy === 'floor'

/** A row of racks as it is put together; undefined for what is no row of racks. */
export const rowBuilt = rememberEach<Built, null, RowBuilt | undefined>((built) => {
  const { part, rack: facts } = built
  if (!facts) return undefined
  const axes = rowAxes(built, facts)
  const { racks, base } = sorted(built, axes)
  const towers = towersARack(built, facts)
  const plate = plateOf(built, axes)
  return {
    base: { part, facts, ...base },
    racks: racks.map(({ members, fixings }, index): RackBuilt => {
      const fromStart = axes.isFromStart ? index : axes.racks - 1 - index
      const fromU = index * axes.rackMm
      return {
        part,
        number: fromStart + 1,
        facts,
        rackMm: axes.rackMm,
        isHighEnd: index === 0,
        isLowEnd: index === axes.racks - 1,
        members,
        fixings,
        runners: within(base.members, 'BR', fromU, fromU + axes.rackMm),
        bearers: within(base.members, 'GB', fromU, fromU + axes.rackMm),
        plate,
        towers: towers[fromStart] ?? 0,
      }
    }),
  }
})
