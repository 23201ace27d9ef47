import { CLOSE_MM } from '../checks/found'
import { isInside, outlineDistance } from '../geometry/polygon'
import { nearestOn } from '../geometry/polyline'
import type { Place } from '../geometry/point'
import type { Settings } from '../layout/settings'
import type { Body, Built, Mouth, MouthRole, Tube } from '../model/built'
import type { PartId } from '../model/ids'
import type { Join } from '../model/levels'
import { rememberEach, rememberLast, steadyList } from '../model/remember'

/** Something that a mouth can be joined to: how far it is on the floor, and how far along. */
interface Receiver {
  readonly part: PartId
  readonly reach: (at: Place) => { readonly gapMm: number; readonly alongMm: number }
}

interface Receivers {
  readonly all: readonly Receiver[]
  readonly reachMm: number
}

const runReceiver = (part: PartId, tube: Tube): Receiver => ({
  part,
  reach: (at) => nearestOn(tube.path, at),
})

const pitReceiver = (body: Body): Receiver => ({
  part: body.part,
  reach: (at) => ({
    gapMm: isInside(body.outline, at) ? 0 : outlineDistance(body.outline, at).gapMm,
    alongMm: 0,
  }),
})

const joinMouth = (kind: Join['kind'], from: PartId, mouth: Mouth, { all, reachMm }: Receivers): Join => {
  let to: PartId | undefined
  let gapMm = Infinity
  let alongMm = 0
  for (const receiver of all) {
    // A drain's end lies on its own pipe, and is joined to it by nobody.
    if (receiver.part === from) continue
    const near = receiver.reach(mouth.at)
    if (near.gapMm < gapMm) {
      gapMm = near.gapMm
      to = receiver.part
      alongMm = near.alongMm
    }
  }
  const isReached = gapMm <= reachMm + CLOSE_MM
  return { kind, from, to: isReached ? to : undefined, at: mouth.at, alongMm, gapMm, line: mouth.line }
}

/** Joins every mouth of a role, part by part, to the nearest of some receivers; each part is remembered. */
const joiner = (kind: Join['kind'], role: MouthRole, receiversOf: (built: Built) => readonly Receiver[]) => {
  const steady = steadyList<Built>()
  const gather = rememberLast((givers: readonly Built[], reachMm: number): Receivers => ({
    all: givers.flatMap(receiversOf),
    reachMm,
  }))
  const joinsOf = rememberEach<Built, Receivers, readonly Join[]>((built, receivers) =>
    built.mouths
      .filter((mouth) => mouth.role === role)
      .map((mouth) => joinMouth(kind, built.part, mouth, receivers)),
  )
  return (built: readonly Built[], reachMm: number): readonly Join[] => {
    const receivers = gather(steady(built.filter((b) => receiversOf(b).length > 0)), reachMm)
    return built.flatMap((b) => joinsOf(b, receivers))
  }
}

const runsOf = (role: Tube['role']) =>
  rememberEach<Built, Tube['role'], readonly Receiver[]>((built) =>
    built.tubes.filter((tube) => tube.role === role).map((tube) => runReceiver(built.part, tube)),
  )

const drains = runsOf('drain')
const mains = runsOf('main')
const pits = rememberEach<Built, null, readonly Receiver[]>((built) =>
  built.bodies.filter((body) => body.role === 'pit').map(pitReceiver),
)

/** A drain's low end may stop this far short of a pit's wall or of another drain: the last fitting reaches over. */
const DRAIN_END_REACH_MM = 50

const joinOutlets = joiner('outlet-to-drain', 'trough-outlet', (built) => drains(built, 'drain'))
const joinPits = joiner('drain-to-pit', 'drain-end', (built) => pits(built, null))
const joinBranches = joiner('drain-to-drain', 'drain-end', (built) => drains(built, 'drain'))
const joinZones = joiner('zone-to-main', 'zone-inlet', (built) => mains(built, 'main'))

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
const joinDrainEnds = (built: readonly Built[]): readonly Join[] => {
  const toPits = joinPits(built, DRAIN_END_REACH_MM)
  const branches = joinBranches(built, DRAIN_END_REACH_MM).filter((_, end) => toPits[end]?.to === undefined)
  const nextOf = new Map(branches.flatMap(({ from, to }) => (to === undefined ? [] : [[from, to] as const])))
  const branchOf = new Map(branches.map((branch) => [branch.from, branch]))
  return toPits.map((toPit) => {
    const branch = branchOf.get(toPit.from)
    return branch?.to === undefined || isRound(branch.from, nextOf) ? toPit : branch
  })
}

/** Step 2: where mouths meet. Joins are made over roles and places, never over kinds of parts. */
export const join = (built: readonly Built[], settings: Settings): readonly Join[] => [
  ...joinOutlets(built, settings.outletReachMm),
  ...joinDrainEnds(built),
  ...joinZones(built, settings.mainReachMm),
]
