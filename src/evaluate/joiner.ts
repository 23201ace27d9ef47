import { CLOSE_MM } from '../checks/found'
import type { Place } from '../geometry/point'
import type { Built, Mouth, MouthRole } from '../model/built'
import type { PartId } from '../model/ids'
import type { Join } from '../model/levels'
import { rememberEach, rememberLast, steadyList } from '../model/remember'

/** Something that a mouth can be joined to: how far it is on the floor, and how far along. */
export interface Receiver {
  readonly part: PartId
  readonly reach: (at: Place) => { readonly gapMm: number; readonly alongMm: number }
}

export interface Receivers<R extends Receiver = Receiver> {
  readonly all: readonly R[]
  readonly reachMm: number
}

/** A mouth to the nearest of some receivers; where none is in reach, the join tells how far off the nearest is. */
export const joinNearest = (
  kind: Join['kind'],
  from: PartId,
  mouth: Mouth,
  { all, reachMm }: Receivers,
): Join => {
  let to: PartId | undefined
  let gapMm = Infinity
  let alongMm = 0
  for (const receiver of all) {
    // What ends on its own pipe is joined to it by nobody.
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

/** Of the same part's: where it is from and its line are in `at`, which the part's own mouth holds. */
const isSameJoin = (a: Join, b: Join | undefined): boolean =>
  b !== undefined &&
  a.kind === b.kind &&
  a.to === b.to &&
  a.at === b.at &&
  a.alongMm === b.alongMm &&
  a.gapMm === b.gapMm

/** Keeps a part's joins, object for object, while another part's change leaves them as they were. */
const steadyJoins = () => {
  const kept = new WeakMap<Built, readonly Join[]>()
  return (built: Built, joins: readonly Join[]): readonly Join[] => {
    const before = kept.get(built)
    const isSame =
      before?.length === joins.length && before.every((join, index) => isSameJoin(join, joins[index]))
    if (before && isSame) return before
    kept.set(built, joins)
    return joins
  }
}

/** Joins a bay's parts, each remembered for as long as it and what it can be joined to are the same. */
export const joiner = <R extends Receiver>(
  receiversOf: (built: Built) => readonly R[],
  joinsOf: (built: Built, receivers: Receivers<R>) => readonly Join[],
) => {
  const steady = steadyList<Built>()
  const keep = steadyJoins()
  const gather = rememberLast((givers: readonly Built[], reachMm: number): Receivers<R> => ({
    all: givers.flatMap(receiversOf),
    reachMm,
  }))
  const remembered = rememberEach<Built, Receivers<R>, readonly Join[]>((built, receivers) =>
    keep(built, joinsOf(built, receivers)),
  )
  return (built: readonly Built[], reachMm: number): readonly Join[] => {
    const receivers = gather(steady(built.filter((b) => receiversOf(b).length > 0)), reachMm)
    return built.flatMap((b) => remembered(b, receivers))
  }
}

/** The mouths of a part in a role. */
export const mouthsOf = ({ mouths }: Built, role: MouthRole): readonly Mouth[] =>
  mouths.filter((mouth) => mouth.role === role)
