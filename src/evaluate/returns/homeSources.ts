import type { PartId } from '../../model/ids'
import { type HomeKind, homeKinds, type HomeSource } from '../../model/stopRun'
import type { Standing } from './standings'
import { type Placed, TOWER_LEFT } from './stopCascade'
import { passedAt } from './stopTimes'

/** What stood where in the course of a stop, at each of its times, s. */
export interface Course {
  readonly times: readonly number[]
  readonly seen: readonly Standing[]
}

/** All but a twentieth: what is called home. */
const MOST = 1 - TOWER_LEFT

/** Stores by the kind of place that their water stands in. */
const storesOf = (placed: Placed): Readonly<Record<HomeKind, ReadonlyMap<PartId, number>>> => ({
  drains: placed.drains,
  troughs: placed.troughs,
  laterals: placed.pipes,
  towers: placed.towers,
  mains: placed.mains,
})

/** What has left all places of some kinds since the stop, L, at each time. */
type Gone = (kinds: readonly HomeKind[]) => readonly number[]

const goneFrom = (placed: Placed, seen: readonly Standing[]): Gone => {
  const stores = storesOf(placed)
  return (kinds) => {
    const places = kinds.flatMap((kind) => [...stores[kind].values()])
    const standing = seen.map((litres) => places.reduce((sum, place) => sum + (litres[place] ?? 0), 0))
    return standing.map((litres) => (standing[0] ?? 0) - litres)
  }
}

/** Kinds whose water goes one way and keeps its order there, first come first; those of one step come together. */
const inOrder = (holds: boolean): readonly (readonly HomeKind[])[] => [
  ['drains'],
  ['troughs'],
  holds ? ['laterals', 'towers'] : ['towers'],
]

/**
 * When each kind's own water comes home. What goes one way keeps its order, as in a pipe: first what stood in the drains,
 * then what stood in the troughs, then towers and, behind a check valve, the laterals that drain through them. What runs
 * back through the pumps has its own way. With it, when all but a twentieth of everything is home, s.
 */
export const homeSources = (
  placed: Placed,
  { times, seen }: Course,
  holds: boolean,
): { readonly sources: readonly HomeSource[]; readonly mostHomeS: number } => {
  const gone = goneFrom(placed, seen)
  const stores = storesOf(placed)
  const start = (kinds: readonly HomeKind[]): number =>
    kinds
      .flatMap((kind) => [...stores[kind].values()])
      .reduce((sum, place) => sum + (seen[0]?.[place] ?? 0), 0)
  const order = inOrder(holds)
  const goneByDrain = gone(order.flat())
  const source = (kind: HomeKind): HomeSource[] => {
    const litres = start([kind])
    if (litres <= 0) return []
    const step = order.findIndex((kinds) => kinds.includes(kind))
    const series = step < 0 ? gone([kind]) : goneByDrain
    const ahead = step < 0 ? 0 : start(order.slice(0, step).flat())
    const together = start(order[step] ?? [kind])
    return [
      {
        kind,
        litres,
        beginsS: ahead === 0 ? 0 : passedAt(times, series, ahead),
        mostHomeS: passedAt(times, series, ahead + MOST * together),
      },
    ]
  }
  return {
    sources: homeKinds.flatMap(source),
    mostHomeS: passedAt(times, gone(homeKinds), MOST * start(homeKinds)),
  }
}
