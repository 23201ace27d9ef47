import type { FeedFacts, FeedLateral } from '../../model/feedFacts'
import type { RowWater } from '../../model/water'

/** What one tower takes, and where its tube leaves the lateral. */
export interface TowerFlow {
  readonly station: number
  readonly line: number
  /** From the row's start along the lateral, mm. */
  readonly alongMm: number
  readonly flowLph: number
  /** Where it lies in nine builds of ten. */
  readonly lowLph: number
  readonly highLph: number
}

/** Water at one joint of a lateral. */
export interface LateralHead {
  readonly alongMm: number
  /** Over the mean of the row's tube ends, mm. */
  readonly headMm: number
}

/** One lateral with its water, in order along it. */
export interface LateralFlows {
  /** 1-based. */
  readonly lateral: number
  /** It ends where it began. */
  readonly isRing: boolean
  /** Lines of towers that hang on it, ascending. */
  readonly lines: readonly number[]
  readonly towers: readonly TowerFlow[]
  readonly heads: readonly LateralHead[]
  /** Where water comes into it, mm from the row's start. */
  readonly fedAtMm: readonly number[]
}

/** Where the flow of each tower may lie, in the order of the feed's tubes. */
export interface TowerBands {
  readonly lowLph: Float64Array
  readonly highLph: Float64Array
}

/** Tubes by the joint that they leave from, as indexes into the feed's tubes. */
const tubesByJoint = ({ tubes }: FeedFacts): ReadonlyMap<number, readonly number[]> => {
  const byJoint = new Map<number, number[]>()
  tubes.forEach(({ joint }, index) => {
    const there = byJoint.get(joint)
    if (there) there.push(index)
    else byJoint.set(joint, [index])
  })
  return byJoint
}

/** The joints of a lateral, each once: a ring comes back to its first. */
const joinedOnce = ({
  joints,
  alongMm,
}: FeedLateral): readonly (readonly [joint: number, alongMm: number])[] => {
  const along = new Map<number, number>()
  joints.forEach((joint, i) => along.has(joint) || along.set(joint, alongMm[i] ?? 0))
  return [...along]
}

const ascending = (numbers: Iterable<number>): readonly number[] =>
  [...new Set(numbers)].sort((a, b) => a - b)

const towerOf = (
  { tubes }: FeedFacts,
  { tubeLph }: RowWater,
  bands: TowerBands | undefined,
  tube: number,
  alongMm: number,
): TowerFlow => {
  const { station, line } = tubes[tube] ?? { station: 0, line: 0 }
  const flowLph = tubeLph[tube] ?? 0
  return {
    station,
    line,
    alongMm,
    flowLph,
    lowLph: bands?.lowLph[tube] ?? flowLph,
    highLph: bands?.highLph[tube] ?? flowLph,
  }
}

const headsOf = (lateral: FeedLateral, { jointHeadMm, outletMm }: RowWater): readonly LateralHead[] =>
  lateral.joints.map((joint, i) => ({
    alongMm: lateral.alongMm[i] ?? 0,
    headMm: (jointHeadMm[joint] ?? NaN) - outletMm,
  }))

/** Each lateral of a row with the flow of every tower on it and the head along it. */
export const lateralFlows = (
  feed: FeedFacts,
  water: RowWater,
  bands?: TowerBands,
): readonly LateralFlows[] => {
  const byJoint = tubesByJoint(feed)
  return feed.laterals.map((lateral, index) => {
    const joints = joinedOnce(lateral)
    const towers = joints.flatMap(([joint, alongMm]) =>
      (byJoint.get(joint) ?? []).map((tube) => towerOf(feed, water, bands, tube, alongMm)),
    )
    return {
      lateral: index + 1,
      isRing: lateral.joints.length > 1 && lateral.joints[0] === lateral.joints.at(-1),
      lines: ascending(towers.map(({ line }) => line)),
      towers,
      heads: headsOf(lateral, water),
      fedAtMm: joints.filter(([joint]) => lateral.fedAt.includes(joint)).map(([, alongMm]) => alongMm),
    }
  })
}
