import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'

/** Whose bag a piece of pipe or a fitting goes in: that of a zone, or of what all zones share. */
export interface Bag {
  /** The row with the valves; undefined for mains, pumps, and all that belongs to no zone. */
  readonly zone: PartId | undefined
  /** Rows and mains whose things it holds, in the order of the bay's parts. */
  readonly parts: readonly PartId[]
}

/** The rows that take their water behind another row's valve, by that join. */
const giversOf = ({ joins }: Bay): ReadonlyMap<PartId, PartId> =>
  new Map(
    joins.flatMap(({ kind, from, to }) =>
      kind === 'zone-to-zone' && to !== undefined ? [[from, to] as const] : [],
    ),
  )

/** The row with the valves that a row is behind; itself where it has its own, or where nothing gives it water. */
const valveRowOf = (row: PartId, givers: ReadonlyMap<PartId, PartId>): PartId => {
  const seen = new Set<PartId>()
  let at = row
  for (let giver = givers.get(at); giver !== undefined && !seen.has(at); giver = givers.get(at)) {
    seen.add(at)
    at = giver
  }
  return at
}

/** Each zone's bag in the order of the bay's parts, and last the one of what they share. */
export const bagsOf = (bay: Bay): readonly Bag[] => {
  const givers = giversOf(bay)
  const zones = new Map<PartId, PartId[]>()
  const shared: PartId[] = []
  for (const { part, feed } of bay.built) {
    if (feed === undefined) shared.push(part)
    else {
      const zone = valveRowOf(part, givers)
      zones.set(zone, [...(zones.get(zone) ?? []), part])
    }
  }
  return [...[...zones].map(([zone, parts]) => ({ zone, parts })), { zone: undefined, parts: shared }]
}
