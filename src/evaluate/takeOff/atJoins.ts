import { sizeOf } from '../../catalogue/fittings'
import { dropHole } from '../../catalogue/dropHole'
import { drainPipeOf } from '../../catalogue/pipe'
import type { Built, Fitting, Tube } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { Join } from '../../model/levels'

/** Parts by their ids, each as it was derived. */
export type BuiltOf = ReadonlyMap<PartId, Built>

const drainOf = (builtOf: BuiltOf, part: PartId): Tube | undefined =>
  builtOf.get(part)?.tubes.find(({ role }) => role === 'drain')

/** A drop tube, and the hole that it hangs in; a line too thin for the hole has a tee there. */
const outletItems = (builtOf: BuiltOf, from: PartId, drain: Tube): readonly string[] => {
  const boreMm = builtOf.get(from)?.trough?.outletBoreMm ?? 0
  const holeMm = dropHole(boreMm, drainPipeOf(drain.stock).odMm)
  return ['drop', holeMm > 0 ? 'drain-hole' : `drain-tee-${sizeOf(drain.stock)}`]
}

/** A wye in the line that takes the water, and a reducer for another size. */
const branchItems = (branch: Tube | undefined, drain: Tube): readonly string[] => {
  const wye = `drain-wye-${sizeOf(drain.stock)}`
  if (!branch || branch.stock === drain.stock) return [wye]
  const [small, big] = [branch, drain]
    .map(({ stock }) => drainPipeOf(stock))
    .toSorted((a, b) => a.odMm - b.odMm)
  return [wye, `drain-reducer-${sizeOf(big?.key ?? '')}-to-${sizeOf(small?.key ?? '')}`]
}

const itemsAt = ({ kind, from, to }: Join, builtOf: BuiltOf): readonly string[] => {
  if (to === undefined) return []
  const drain = drainOf(builtOf, to)
  if (kind === 'outlet-to-drain' && drain) return outletItems(builtOf, from, drain)
  if (kind === 'drain-to-drain' && drain) return branchItems(drainOf(builtOf, from), drain)
  return kind === 'drain-to-pit' ? ['pit-boot'] : []
}

/**
 * What is bought or drilled where water passes from a part into a drain or a pit; it belongs to the part that the water
 * comes from. What joins pipes under pressure stands with the pipes between parts.
 */
export const atJoin = (join: Join, builtOf: BuiltOf): readonly Fitting[] =>
  itemsAt(join, builtOf).map((item) => ({ item, at: join.at }))
