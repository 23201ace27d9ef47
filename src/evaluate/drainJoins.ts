import { isInside, outlineDistance } from '../geometry/polygon'
import { nearestOn } from '../geometry/polyline'
import type { Body, Built, MouthRole, Tube } from '../model/built'
import type { PartId } from '../model/ids'
import type { Join } from '../model/levels'
import { rememberEach } from '../model/remember'
import { joiner, joinNearest, mouthsOf, type Receiver } from './joiner'

const drainReceiver = (part: PartId, { path }: Tube): Receiver => ({
  part,
  reach: (at) => nearestOn(path, at),
})

const pitReceiver = ({ part, outline }: Body): Receiver => ({
  part,
  reach: (at) => ({
    gapMm: isInside(outline, at) ? 0 : outlineDistance(outline, at).gapMm,
    alongMm: 0,
  }),
})

const drains = rememberEach<Built, null, readonly Receiver[]>((built) =>
  built.tubes.filter(({ role }) => role === 'drain').map((tube) => drainReceiver(built.part, tube)),
)
const pits = rememberEach<Built, null, readonly Receiver[]>((built) =>
  built.bodies.filter((body) => body.role === 'pit').map(pitReceiver),
)

/** Joins every mouth of a role to the nearest of some receivers. */
const mouthJoiner = (
  kind: Join['kind'],
  role: MouthRole,
  receiversOf: (built: Built) => readonly Receiver[],
) =>
  joiner(receiversOf, (built, receivers) =>
    mouthsOf(built, role).map((mouth) => joinNearest(kind, built.part, mouth, receivers)),
  )

/** A drain's low end may stop this far short of a pit's wall or of another drain: the last fitting reaches over. */
const DRAIN_END_REACH_MM = 50

const joinPits = mouthJoiner('drain-to-pit', 'drain-end', (built) => pits(built, null))
const joinBranches = mouthJoiner('drain-to-drain', 'drain-end', (built) => drains(built, null))

/** Every trough outlet to the nearest drain within a reach, mm. */
export const joinOutlets = mouthJoiner('outlet-to-drain', 'trough-outlet', (built) => drains(built, null))

/** Whether water that leaves a drain comes round to it again. */
const isRound = (drain: PartId, nextOf: ReadonlyMap<PartId, PartId>): boolean => {
  const passed = new Set<PartId>()
  let next = nextOf.get(drain)
  while (next !== undefined && next !== drain && !passed.has(next)) {
    passed.add(next)
    next = nextOf.get(next)
  }
  return next === drain
}

/**
 * Each drain's low end comes to a pit, or else to another drain, unless the two only lead to each other. Where it comes to
 * neither, the join tells of the nearest pit.
 */
export const joinDrainEnds = (built: readonly Built[]): readonly Join[] => {
  const toPits = joinPits(built, DRAIN_END_REACH_MM)
  const branches = joinBranches(built, DRAIN_END_REACH_MM).filter((_, end) => toPits[end]?.to === undefined)
  const nextOf = new Map(branches.flatMap(({ from, to }) => (to === undefined ? [] : [[from, to] as const])))
  const branchOf = new Map(branches.map((branch) => [branch.from, branch]))
  return toPits.map((toPit) => {
    const branch = branchOf.get(toPit.from)
    return branch?.to === undefined || isRound(branch.from, nextOf) ? toPit : branch
  })
}
