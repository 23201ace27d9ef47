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

/** A drain's low end, and a main's pump end, may stop this far short of the pit's wall: the last fitting reaches over. */
const PIT_REACH_MM = 50

const joinOutlets = joiner('outlet-to-drain', 'trough-outlet', (built) => drains(built, 'drain'))
const joinDrains = joiner('drain-to-pit', 'drain-end', (built) => pits(built, null))
const joinZones = joiner('zone-to-main', 'zone-inlet', (built) => mains(built, 'main'))

/** Step 2: where mouths meet. Joins are made over roles and places, never over kinds of parts. */
export const join = (built: readonly Built[], settings: Settings): readonly Join[] => [
  ...joinOutlets(built, settings.outletReachMm),
  ...joinDrains(built, PIT_REACH_MM),
  ...joinZones(built, settings.mainReachMm),
]
