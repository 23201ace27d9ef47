import type { FlowFigures, RowWater, ZoneWater } from '../../model/water'
import { reynoldsNumber, velocityMS } from '../../solvers/water/friction'
import { waterAt } from '../../solvers/water/properties'
import { figuresOf, flowStateOf, indexOfLeast, indexOfMost, towerAt } from './figures'
import { LPH_PER_M3S, toMm } from './metres'
import type { PlacedRow } from './plan'
import type { Solved } from './solved'

const scaled = (values: Float64Array, from: number, count: number, factor: number): Float64Array => {
  const out = new Float64Array(count)
  for (let i = 0; i < count; i += 1) out[i] = (values[from + i] ?? 0) * factor
  return out
}

const sumOf = (values: Float64Array): number => {
  let sum = 0
  for (const value of values) sum += value
  return sum
}

/** Greatest velocity in a row's pipes, m/s. */
const fastest = ({ network, plan, solution }: Solved, row: PlacedRow): number => {
  const first = plan.links.length + row.pipe
  let most = 0
  for (let pipe = first; pipe < first + row.piece.pipes.from.length; pipe += 1)
    most = Math.max(most, velocityMS(Math.abs(solution.pipeM3S[pipe] ?? 0), network.pipes.boreM[pipe] ?? 1))
  return most
}

const greatestReynolds = ({ network, solution, waterC }: Solved, row: PlacedRow): number => {
  const { kinematicM2S } = waterAt(waterC)
  let most = 0
  for (let mouth = row.mouth; mouth < row.mouth + row.piece.mouths.from.length; mouth += 1) {
    const boreM = network.mouths.boreM[mouth] ?? 1
    most = Math.max(most, reynoldsNumber(solution.mouthM3S[mouth] ?? 0, boreM, kinematicM2S))
  }
  return most
}

/** Mean head where water enters the row's laterals, m. */
const entryHeadM = ({ plan, solution }: Solved, { feed, joint }: PlacedRow): number => {
  let [sum, count] = [0, 0]
  for (const { fedAt } of feed.laterals)
    for (const index of fedAt) {
      sum += solution.headM[plan.levels + joint + index] ?? 0
      count += 1
    }
  return count > 0 ? sum / count : (solution.headM[plan.levels + joint] ?? 0)
}

/** Mean site level of the open ends of the rows that are asked for, m; 0 of none. */
export const meanOutletM = ({ plan, outletM }: Solved, isAsked: (row: PlacedRow) => boolean): number => {
  let [sum, count] = [0, 0]
  plan.rows.forEach((row, i) => {
    if (!isAsked(row)) return
    const tubes = row.feed.tubes.length
    sum += tubes * (outletM[i] ?? 0)
    count += tubes
  })
  return count > 0 ? sum / count : 0
}

const rowFigures = (row: PlacedRow, tubeLph: Float64Array, tubeScatter: number): FlowFigures => {
  const [least, most] = [indexOfLeast(tubeLph), indexOfMost(tubeLph)]
  return figuresOf(
    tubeLph,
    towerAt(row, least, tubeLph[least] ?? 0),
    towerAt(row, most, tubeLph[most] ?? 0),
    tubeScatter,
  )
}

/** What a row's towers and pipes do; `index` is its place among the plan's rows. */
export const readRow = (solved: Solved, row: PlacedRow, index: number): RowWater => {
  const { plan, solution } = solved
  const { piece, feed } = row
  const { targetLph, tubeScatter } = plan.settings
  const tubeLph = scaled(solution.mouthM3S, row.mouth, feed.tubes.length, LPH_PER_M3S)
  const figures = rowFigures(row, tubeLph, tubeScatter)
  const outletM = solved.outletM[index] ?? 0
  const pipe = plan.links.length + row.pipe
  return {
    part: row.built.part,
    zone: row.zone,
    state: flowStateOf(figures, targetLph),
    figures,
    totalLph: sumOf(tubeLph),
    tubeLph,
    jointHeadMm: scaled(solution.headM, plan.levels + row.joint, piece.joints, toMm(1)),
    pipeLph: scaled(solution.pipeM3S, pipe, piece.pipes.from.length, LPH_PER_M3S),
    outletMm: toMm(outletM),
    entryHeadMm: toMm(entryHeadM(solved, row) - outletM),
    tubeReynolds: greatestReynolds(solved, row),
    fastestMS: fastest(solved, row),
  }
}

/** Whether water can come to a row: the valve that it is behind stands open. */
export const isReached = ({ network }: Solved, { zoneValve }: PlacedRow): boolean =>
  zoneValve === undefined || network.valves.isOpen[zoneValve] === 1

/** The heads before and behind a zone's valves, m. */
const zoneHeads = ({ plan, solution }: Solved, { feed, joint }: PlacedRow): readonly [number, number] => {
  const head = (index: number) => solution.headM[plan.levels + joint + index] ?? 0
  return [head(feed.valves?.from ?? 0), head(feed.valves?.to ?? 0)]
}

/** A zone: the row with the valves, and all rows behind them. */
export const readZone = (solved: Solved, row: PlacedRow, rows: readonly PlacedRow[]): ZoneWater => {
  const isOpen = isReached(solved, row)
  const [before, behind] = zoneHeads(solved, row)
  const flowM3S = rows.reduce((sum, each) => sum + rowM3S(solved, each), 0)
  return {
    part: row.built.part,
    rows: rows.map(({ built }) => built.part),
    flowLph: flowM3S * LPH_PER_M3S,
    isOpen,
    valveLossMm: isOpen ? toMm(before - behind) : 0,
    inletHeadMm: toMm(before),
    sightMm: isOpen ? toMm(behind - meanOutletM(solved, ({ zone }) => zone === row.built.part)) : 0,
  }
}

const rowM3S = ({ solution }: Solved, { mouth, piece }: PlacedRow): number =>
  sumOf(solution.mouthM3S.subarray(mouth, mouth + piece.mouths.from.length))
