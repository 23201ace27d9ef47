import type { PartId } from '../../model/ids'
import { velocityMS } from '../../solvers/water/friction'
import { cubicMetres } from '../../units/volume'
import { toM } from './metres'
import type { Plan, PlacedRow, WaterInputs } from './plan'
import { planOf } from './planOf'
import { type Solved, solvedBay } from './solved'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** A row as its pump stops and starts. */
export interface RowRefill {
  readonly part: PartId
  /** What runs out of its pipes and tubes, L. */
  readonly litres: number
  /** From the start of the pump until its first and its last tower drip, s. */
  readonly firstSeconds: number
  readonly lastSeconds: number
  readonly last: { readonly station: number; readonly line: number }
}

export interface Refill {
  /** By row; rows that get no water are not in it. In the order of the bay's parts. */
  readonly rows: ReadonlyMap<PartId, RowRefill>
  /** What comes home from rows, and from mains and the pipes that join them: 0 behind a check valve. L. */
  readonly rowsLitres: number
  readonly mainsLitres: number
  /** Until the last tower of the bay drips, s, and the row that it hangs in. */
  readonly seconds: number
  readonly lastRow: PartId | undefined
}

/** Volume of a length of a bore, m3. */
const volumeM3 = (lengthM: number, boreM: number): number => lengthM / velocityMS(1, boreM)

/** How much of a pipe between two heights lies above a level. */
const shareAbove = (aM: number, bM: number, levelM: number): number => {
  const [low, high] = [Math.min(aM, bM), Math.max(aM, bM)]
  if (low >= levelM) return 1
  return high <= levelM ? 0 : (high - levelM) / (high - low)
}

/** By pipe of the network: what runs out of it when the pump stops, m3. */
type Drained = Float64Array

/** Behind a check valve a row drains through its tubes, down to the lowest of them; without one it all runs back. */
const drainRow = (drained: Drained, row: PlacedRow, { plan, network }: Solved, holds: boolean): void => {
  const lowestM = row.datumM + Math.min(...row.piece.mouths.levelM)
  const heightM = row.feed.joints.map((at) => toM(row.sitePlace(at).z))
  row.feed.pipes.forEach(({ from, to }, i) => {
    const pipe = plan.links.length + row.pipe + i
    const share = holds ? shareAbove(heightM[from] ?? 0, heightM[to] ?? 0, lowestM) : 1
    drained[pipe] = share * volumeM3(network.pipes.lengthM[pipe] ?? 0, network.pipes.boreM[pipe] ?? 1)
  })
}

const drainedOf = (solved: Solved, rows: readonly PlacedRow[], holds: boolean): Drained => {
  const { plan, network } = solved
  const drained = new Float64Array(plan.pipes)
  if (!holds)
    plan.links.forEach((_, i) => {
      drained[i] = volumeM3(network.pipes.lengthM[i] ?? 0, network.pipes.boreM[i] ?? 1)
    })
  for (const row of rows) drainRow(drained, row, solved, holds)
  return drained
}

/** A way of the water from one node to the next, and how long it takes to fill, s. */
interface Way {
  readonly from: number
  readonly to: number
  readonly seconds: number
}

const NO_FLOW_M3S = 1e-12

const waysOf = ({ network: { pipes, valves }, solution }: Solved, drained: Drained): Way[] => {
  const ways: Way[] = []
  const add = (from: number, to: number, flow: number, m3: number) => {
    if (Math.abs(flow) <= NO_FLOW_M3S) return
    const seconds = m3 / Math.abs(flow)
    ways.push(flow > 0 ? { from, to, seconds } : { from: to, to: from, seconds })
  }
  solution.pipeM3S.forEach((flow, i) => add(pipes.from[i] ?? 0, pipes.to[i] ?? 0, flow, drained[i] ?? 0))
  solution.valveM3S.forEach((flow, i) => add(valves.from[i] ?? 0, valves.to[i] ?? 0, flow, 0))
  return ways
}

/** When the water first comes to each node, s; Infinity where it never does. Water runs from the higher head to the lower. */
const arrivals = (solved: Solved, drained: Drained): Float64Array => {
  const { network, solution } = solved
  const { headM } = solution
  const at = new Float64Array(headM.length).fill(Infinity)
  at.fill(0, 0, network.levels.length)
  network.pumps.to.forEach((node) => (at[node] = 0))
  const head = (node: number) => headM[node] ?? -Infinity
  const ways = waysOf(solved, drained).toSorted((a, b) => head(b.from) - head(a.from))
  // Where nothing is lost, as in a filter that is not there, both ends have one head and may stand in either order.
  for (let isSooner = true; isSooner;) {
    isSooner = false
    for (const { from, to, seconds } of ways) {
      const then = (at[from] ?? Infinity) + seconds
      if (then >= (at[to] ?? Infinity)) continue
      at[to] = then
      isSooner = true
    }
  }
  return at
}

const rowLitres = (
  { plan, network }: Solved,
  { pipe, mouth, piece }: PlacedRow,
  drained: Drained,
): number => {
  let m3 = 0
  const first = plan.links.length + pipe
  for (let i = first; i < first + piece.pipes.from.length; i += 1) m3 += drained[i] ?? 0
  for (let i = mouth; i < mouth + piece.mouths.from.length; i += 1)
    m3 += volumeM3(network.mouths.lengthM[i] ?? 0, network.mouths.boreM[i] ?? 1)
  return cubicMetres(m3)
}

const rowRefill = (
  solved: Solved,
  row: PlacedRow,
  drained: Drained,
  at: Float64Array,
): readonly RowRefill[] => {
  const { mouths } = solved.network
  let [first, last, lastTube] = [Infinity, -Infinity, -1]
  row.feed.tubes.forEach((_, i) => {
    const mouth = row.mouth + i
    const flow = solved.solution.mouthM3S[mouth] ?? 0
    if (flow <= NO_FLOW_M3S) return
    const fill = volumeM3(mouths.lengthM[mouth] ?? 0, mouths.boreM[mouth] ?? 1) / flow
    const seconds = (at[mouths.from[mouth] ?? 0] ?? Infinity) + fill
    first = Math.min(first, seconds)
    if (seconds > last) [last, lastTube] = [seconds, i]
  })
  const tower = row.feed.tubes[lastTube]
  if (!tower) return []
  const { station, line } = tower
  return [
    {
      part: row.built.part,
      litres: rowLitres(solved, row, drained),
      firstSeconds: first,
      lastSeconds: last,
      last: { station, line },
    },
  ]
}

const linksLitres = ({ links }: Plan, drained: Drained): number =>
  cubicMetres(drained.subarray(0, links.length).reduce((sum, m3) => sum + m3, 0))

/**
 * What comes home from the pipes when the pumps stop, and how long it takes until the last tower drips again. An
 * approximation: the water comes on as a front, at the flows that the bay has once it runs; microtubes are full or empty,
 * and pipes drain down to the lowest open end of their row. Where every pump has a check valve mains stay full; without
 * one all pipes run empty. Undefined for a bay without water.
 */
export const refill = (inputs: WaterInputs, whatIf: WhatIf = AS_DRAWN): Refill | undefined => {
  const plan = planOf(inputs)
  const solved = plan.levels > 0 ? solvedBay(plan, whatIf) : undefined
  if (!solved || 'sentence' in solved) return undefined
  const holds = plan.pumps.every(({ facts }) => facts.hasCheckValve)
  const drained = drainedOf(solved, plan.rows, holds)
  const at = arrivals(solved, drained)
  const rows = plan.rows.flatMap((row) => rowRefill(solved, row, drained, at))
  const last = rows.reduce<RowRefill | undefined>(
    (late, row) => (late && late.lastSeconds >= row.lastSeconds ? late : row),
    undefined,
  )
  return {
    rows: new Map(rows.map((row) => [row.part, row])),
    rowsLitres: rows.reduce((sum, { litres }) => sum + litres, 0),
    mainsLitres: linksLitres(plan, drained),
    seconds: last?.lastSeconds ?? 0,
    lastRow: last?.part,
  }
}
