import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import type { ReturnInputs } from '../4-returns'
import { type Met, type Reach, reachOf } from '../water/reach'
import { tubeOverL, tubesL } from './pipes'
import type { RowTransit } from './transit'

/** What runs back to a pit through its pump when it stops, L. */
export interface BackThrough {
  readonly mainsL: number
  /** Of the riser pipes, what lies under the tube ends. */
  readonly risersL: number
}

export const NOTHING_BACK: BackThrough = { mainsL: 0, risersL: 0 }

const mainL = rememberEach<Built, null, number>(({ tubes }) =>
  tubesL(tubes.filter(({ role }) => role === 'main')),
)

const joinedL = rememberEach<Built, null, number>(({ tubes }) => tubesL(tubes))

/** A pit's own pipes from its pumps up, as far as they stand over its water. */
const pumpPipesL = rememberEach<Built, null, number>(({ tubes, pit }) =>
  pit ? tubes.reduce((sum, tube) => sum + tubeOverL(tube, pit.runningMm), 0) : 0,
)

/** Pits whose pump lets water back, by the waters that it stands in. */
const openPits = (
  { supplies, groupOf }: Reach,
  { builtOf }: ReturnInputs,
): ReadonlyMap<PartId, ReadonlySet<PartId>> => {
  const open = new Map<PartId, Set<PartId>>()
  const isOpen = ({ from }: Met): boolean => builtOf.get(from)?.pump?.hasCheckValve === false
  for (const { from } of supplies.filter(isOpen)) {
    const group = groupOf.get(from)
    if (group !== undefined) open.set(group, (open.get(group) ?? new Set()).add(from))
  }
  return open
}

/** What stands in mains and pipes between parts, and in riser pipes under the tubes, by the waters that it is of. */
const storesOf = (
  { mains, rows, supplies, groupOf }: Reach,
  { joinedPipes }: ReturnInputs,
  transits: ReadonlyMap<PartId, RowTransit>,
): ReadonlyMap<PartId, BackThrough> => {
  const stores = new Map<PartId, BackThrough>()
  const add = (group: PartId | undefined, mainsL: number, risersL: number) => {
    if (group === undefined) return
    const known = stores.get(group) ?? NOTHING_BACK
    stores.set(group, { mainsL: known.mainsL + mainsL, risersL: known.risersL + risersL })
  }
  const groupOfPart = new Map(supplies.map(({ from }) => [from, groupOf.get(from)]))
  for (const main of mains) add(groupOf.get(main.part), mainL(main, null), 0)
  for (const { built, group } of rows) {
    groupOfPart.set(built.part, group)
    add(group, 0, transits.get(built.part)?.underTubesL ?? 0)
  }
  for (const joined of joinedPipes) add(groupOfPart.get(joined.part), joinedL(joined, null), 0)
  return stores
}

/**
 * What runs back through each pump that no check valve holds: the water of its mains and of the pipes to pumps and rows,
 * and of riser pipes under their tubes. Several such pumps on the same mains share it. Pits that nothing runs back to are
 * not in it.
 */
export const backThroughPumps = (
  inputs: ReturnInputs,
  transits: ReadonlyMap<PartId, RowTransit>,
): ReadonlyMap<PartId, BackThrough> => {
  if (!inputs.built.some(({ pump }) => pump?.hasCheckValve === false)) return new Map()
  const reach = reachOf(inputs)
  const stores = storesOf(reach, inputs, transits)
  const back = new Map<PartId, BackThrough>()
  for (const [group, pits] of openPits(reach, inputs))
    for (const pit of pits) {
      const built = inputs.builtOf.get(pit)
      const { mainsL, risersL } = stores.get(group) ?? NOTHING_BACK
      const ownL = built ? pumpPipesL(built, null) : 0
      back.set(pit, { mainsL: mainsL / pits.size + ownL, risersL: risersL / pits.size })
    }
  return back
}
