import type { Frame, FrameStick } from '../../../../evaluate/loads/frame'
import type { RowSpot } from '../../../../model/strength'
import type { Member } from '../../../../sheets/assembly/members'

/** A stretch of a row that is drawn, mm along it from its start. */
export interface Stretch {
  readonly fromU: number
  readonly toU: number
  /** Of one rack, from 1 at the start; undefined for the whole row. */
  readonly rack: number | undefined
}

/** What stands so near outside a rack belongs to it too: the risers that it shares with its neighbours. */
const SHARED_MM = 75
/** What runs on past a rack is broken off so far beyond it. */
const PAST_MM = 90

const allOf = ({ sticks }: Frame): readonly FrameStick[] => [...sticks.values()].flat()

/** Risers of every kind, plain, for a sleeve or for two rails. */
export const isRiser = ({ stick }: Member): boolean => stick.mark.startsWith('RS')

export const risersOf = (frame: Frame): readonly FrameStick[] => allOf(frame).filter(isRiser)

const lowU = ({ from, to }: Member): number => Math.min(from.u, to.u)
const highU = ({ from, to }: Member): number => Math.max(from.u, to.u)

const reachOf = (members: readonly Member[]): { fromU: number; toU: number } => ({
  fromU: Math.min(...members.map(lowU)),
  toU: Math.max(...members.map(highU)),
})

export const wholeRow = (frame: Frame): Stretch => {
  const all = allOf(frame)
  return all.length === 0
    ? { fromU: 0, toU: frame.lengthMm, rack: undefined }
    : { ...reachOf(all), rack: undefined }
}

/** Each rack of a row, as far as its own rails reach, from the start. */
export const racksOf = (frame: Frame): readonly Stretch[] => {
  const rails = [...(frame.sticks.get('RL') ?? []), ...(frame.sticks.get('RL-b') ?? [])]
  return Array.from({ length: frame.rack.racks }, (_, index) => {
    const own = rails.filter(({ stick }) => stick.rack === index)
    const eachMm = frame.lengthMm / frame.rack.racks
    const reach = own.length > 0 ? reachOf(own) : { fromU: index * eachMm, toU: (index + 1) * eachMm }
    return { ...reach, rack: index + 1 }
  })
}

/** The rack that a place along the row is in, or the nearest one. */
export const rackAt = (racks: readonly Stretch[], u: number): Stretch | undefined => {
  const away = ({ fromU, toU }: Stretch) => Math.max(fromU - u, u - toU, 0)
  return racks.reduce<Stretch | undefined>(
    (nearest, rack) => (nearest === undefined || away(rack) < away(nearest) ? rack : nearest),
    undefined,
  )
}

/** Whether a member runs along the row, level or as gutters fall. */
export const runsAlong = ({ from, to }: Member): boolean => {
  const along = Math.abs(to.u - from.u)
  return along > 4 * Math.abs(to.z - from.z) && along > 4 * Math.abs(to.v - from.v)
}

/** Whether it runs across the row, level or leaning. */
export const runsAcross = ({ from, to }: Member): boolean => Math.abs(to.v - from.v) > Math.abs(to.u - from.u)

const at = (a: RowSpot, b: RowSpot, share: number): RowSpot => ({
  u: a.u + (b.u - a.u) * share,
  v: a.v + (b.v - a.v) * share,
  z: a.z + (b.z - a.z) * share,
})

/** As much of a member that runs along the row as lies between two places. */
const brokenOff = (member: Member, fromU: number, toU: number): Member => {
  const { from, to } = member
  const shareAt = (u: number) => Math.min(1, Math.max(0, (u - from.u) / (to.u - from.u)))
  const [first, last] = from.u < to.u ? [fromU, toU] : [toU, fromU]
  return { ...member, from: at(from, to, shareAt(first)), to: at(from, to, shareAt(last)) }
}

/** The sticks of a row that are drawn with a stretch of it; what runs on past it is broken off. */
export const drawnIn = (frame: Frame, { fromU, toU, rack }: Stretch): readonly Member[] => {
  const all = allOf(frame)
  if (rack === undefined) return all
  return all.flatMap((member) => {
    if (runsAlong(member)) {
      const reaches = lowU(member) < toU + SHARED_MM && highU(member) > fromU - SHARED_MM
      return reaches ? [brokenOff(member, fromU - PAST_MM, toU + PAST_MM)] : []
    }
    const middle = (member.from.u + member.to.u) / 2
    return middle > fromU - SHARED_MM && middle < toU + SHARED_MM ? [member] : []
  })
}

/** Where the row runs on past what is drawn, mm along it. */
export const breaksOf = (frame: Frame, { fromU, toU, rack }: Stretch): readonly number[] => {
  if (rack === undefined) return []
  return [...(rack > 1 ? [fromU - PAST_MM] : []), ...(rack < frame.rack.racks ? [toU + PAST_MM] : [])]
}

/** Sticks of a rack and of nothing beside it, for counting: a shared riser goes with the rack that brings it. */
export const countedIn = (frame: Frame, { rack }: Stretch): readonly Member[] =>
  rack === undefined ? allOf(frame) : allOf(frame).filter(({ stick }) => stick.rack === rack - 1)
