import type { PartId } from '../../model/ids'
import { wayHome } from '../../model/wayHome'
import type { ReturnInputs } from '../4-returns'
import { lineTowers } from './flows'

/** Where the water of rows and drains ends. */
export interface Homeward {
  /** The drains of each pit. */
  readonly drains: ReadonlyMap<PartId, readonly PartId[]>
  /** Of each pit, the rows and lone troughs whose water comes to it, with the share of a row's lines that do, 0..1. */
  readonly rows: ReadonlyMap<PartId, ReadonlyMap<PartId, number>>
}

/** The pit that each drain leads to; a drain that leads to none is not in it. */
const pitsOfDrains = ({ joins, levels }: ReturnInputs): ReadonlyMap<PartId, PartId> => {
  const ends = joins.filter(({ kind }) => kind === 'drain-to-pit' || kind === 'drain-to-drain')
  const pits = new Map<PartId, PartId>()
  for (const drain of levels.drains.keys()) {
    const { pit } = wayHome(ends, drain, 0)
    if (pit !== undefined) pits.set(drain, pit)
  }
  return pits
}

/** Share of a row's water that one of its lines, 1-based, has: by its towers, or evenly where it has none. */
const shareOfLine = (row: PartId, line: number, { builtOf }: ReturnInputs): number => {
  const built = builtOf.get(row)
  if (!built) return 0
  const towers = lineTowers(built, null)
  const all = towers.reduce((sum, count) => sum + count, 0)
  return all > 0 ? (towers[line - 1] ?? 0) / all : 1 / Math.max(towers.length, 1)
}

const drainsOfPits = (pits: ReadonlyMap<PartId, PartId>): ReadonlyMap<PartId, readonly PartId[]> => {
  const drains = new Map<PartId, PartId[]>()
  for (const [drain, pit] of pits) drains.set(pit, [...(drains.get(pit) ?? []), drain])
  return drains
}

/** Which drains and rows each pit takes. The lines of one row may end in several. */
export const homeward = (inputs: ReturnInputs): Homeward => {
  const pits = pitsOfDrains(inputs)
  const rows = new Map<PartId, Map<PartId, number>>()
  for (const { kind, from, to, line } of inputs.joins) {
    const pit = kind === 'outlet-to-drain' && to !== undefined ? pits.get(to) : undefined
    if (pit === undefined) continue
    const shares = rows.get(pit) ?? new Map<PartId, number>()
    shares.set(from, (shares.get(from) ?? 0) + shareOfLine(from, line, inputs))
    rows.set(pit, shares)
  }
  return { drains: drainsOfPits(pits), rows }
}
