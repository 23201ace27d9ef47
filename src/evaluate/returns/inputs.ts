import type { PartId } from '../../model/ids'
import type { Join } from '../../model/levels'
import type { ReturnInputs } from '../4-returns'
import { lineFlows } from './flows'

/** Water that comes into a drain, so far from its high end, mm. */
export interface Inflow {
  readonly alongMm: number
  readonly lph: number
}

/** What comes into each drain, in no order; a drain that nothing comes into is not in it. */
export type Inflows = ReadonlyMap<PartId, readonly Inflow[]>

const listIn = <T>(lists: Map<PartId, T[]>, key: PartId, item: T): void => {
  const known = lists.get(key)
  if (known) known.push(item)
  else lists.set(key, [item])
}

/** From the troughs: each outlet brings its line's flow. */
const fromOutlets = ({ joins, builtOf, water, settings }: ReturnInputs): Map<PartId, Inflow[]> => {
  const inflows = new Map<PartId, Inflow[]>()
  for (const { kind, from, to, line, alongMm } of joins) {
    const row = kind === 'outlet-to-drain' ? builtOf.get(from) : undefined
    if (!row || to === undefined) continue
    listIn(inflows, to, { alongMm, lph: lineFlows(row, water, settings).lines[line - 1] ?? 0 })
  }
  return inflows
}

const branchesOf = (joins: readonly Join[]): ReadonlyMap<PartId, readonly Join[]> => {
  const branches = new Map<PartId, Join[]>()
  for (const join of joins)
    if (join.kind === 'drain-to-drain' && join.to !== undefined) listIn(branches, join.to, join)
  return branches
}

/**
 * The water that comes into each drain, from outlets and from the lines that end on it, leaves first. Lines that only lead
 * to each other are let go of where they come round.
 */
export const inflowsOf = (inputs: ReturnInputs): Inflows => {
  const inflows = fromOutlets(inputs)
  const branches = branchesOf(inputs.joins)
  const totals = new Map<PartId, number>()
  const totalOf = (drain: PartId): number => {
    const known = totals.get(drain)
    if (known !== undefined) return known
    // Water that has come round to where it began meets this, and brings nothing.
    totals.set(drain, 0)
    for (const { from, alongMm } of branches.get(drain) ?? [])
      listIn(inflows, drain, { alongMm, lph: totalOf(from) })
    const total = (inflows.get(drain) ?? []).reduce((sum, { lph }) => sum + lph, 0)
    totals.set(drain, total)
    return total
  }
  for (const drain of inputs.levels.drains.keys()) totalOf(drain)
  return inflows
}
