import { thermalOf, type ThermalRow } from '../catalogue/thermal'
import type { Built } from '../model/built'
import type { FeedFacts } from '../model/feedFacts'
import type { PartId } from '../model/ids'
import { rememberEach } from '../model/remember'
import { growthMm } from '../solvers/gravity/growth'
import type { Bay } from './context'

/** What runs so long that it moves. */
type RunWhat = 'gutter' | 'lateral' | 'rail' | 'main' | 'drain'

/** How far a run moves from the coldest to the hottest of the air, unrestrained and held at one point; mm. */
export interface RunTravel {
  readonly part: PartId
  readonly what: RunWhat
  readonly of: ThermalRow
  readonly lengthMm: number
  /** At the end that is furthest from where it is held. */
  readonly travelMm: number
  /** Of it, how much comes to one joint or to one tube, and what there is room for; undefined where nothing is in its way. */
  readonly at: { readonly travelMm: number; readonly roomMm: number } | undefined
}

type Travelled = Pick<Bay, 'built' | 'returns' | 'settings'>

const gutterTravel = ({ part, trough }: Built, { returns }: Travelled): RunTravel[] => {
  const known = returns.troughs.get(part)
  if (!trough || !known) return []
  const { growthMm: travelMm, joinerGrowthMm, joinerRoomMm } = known
  return [
    {
      part,
      what: 'gutter',
      of: thermalOf('pvc'),
      lengthMm: trough.runMm,
      travelMm,
      at: trough.joiners > 0 ? { travelMm: joinerGrowthMm, roomMm: joinerRoomMm } : undefined,
    },
  ]
}

/** Longest way along a lateral from where water comes in, and so where it is held, to an end; mm. */
const furthestAlong = ({ laterals }: FeedFacts): number =>
  Math.max(
    0,
    ...laterals.map(({ joints, alongMm, fedAt }) => {
      const held = joints.flatMap((joint, index) => (fedAt.includes(joint) ? [alongMm[index] ?? 0] : []))
      return Math.max(0, ...alongMm.map((mm) => Math.min(...held.map((at) => Math.abs(at - mm)))))
    }),
  )

/** What a microtube is longer than the straight way from its barb to its end, where that is least; Infinity without one. */
const leastSlack = rememberEach<FeedFacts, null, number>(({ joints, tubes }) =>
  tubes.reduce((least, { joint, outlet, lengthMm }) => {
    const barb = joints[joint]
    const straightMm = barb ? Math.hypot(outlet.x - barb.x, outlet.y - barb.y, outlet.z - barb.z) : 0
    return Math.min(least, lengthMm - straightMm)
  }, Infinity),
)

const lateralTravel = ({ part, feed }: Built, { settings }: Travelled): RunTravel[] => {
  if (!feed || feed.laterals.length === 0) return []
  const of = thermalOf('pe')
  const lengthMm = furthestAlong(feed)
  const travelMm = growthMm(lengthMm, of.growthPerC, settings.swingC)
  const roomMm = leastSlack(feed, null)
  return [
    {
      part,
      what: 'lateral',
      of,
      lengthMm,
      travelMm,
      at: roomMm < Infinity ? { travelMm, roomMm } : undefined,
    },
  ]
}

const freeTravel = (
  part: PartId,
  what: RunWhat,
  material: ThermalRow['key'],
  lengthMm: number,
  swingC: number,
): RunTravel => {
  const of = thermalOf(material)
  return { part, what, of, lengthMm, travelMm: growthMm(lengthMm, of.growthPerC, swingC), at: undefined }
}

const railTravel = ({ part, rack }: Built, { settings }: Travelled): RunTravel[] =>
  rack ? [freeTravel(part, 'rail', 'steel', rack.runMm, settings.swingC)] : []

const pipeTravel = ({ part, tubes }: Built, { settings }: Travelled): RunTravel[] =>
  tubes.flatMap(({ role, lengthMm }) => {
    if (role === 'main') return [freeTravel(part, 'main', 'pe', lengthMm, settings.swingC)]
    return role === 'drain' ? [freeTravel(part, 'drain', 'pvc', lengthMm, settings.swingC)] : []
  })

/** Every run of the bay that moves: of each row its gutters, laterals and rails, then mains and drains in the order of the plan. */
export const travelsOf = (bay: Travelled): readonly RunTravel[] =>
  bay.built.flatMap((built) => [
    ...gutterTravel(built, bay),
    ...lateralTravel(built, bay),
    ...railTravel(built, bay),
    ...pipeTravel(built, bay),
  ])
