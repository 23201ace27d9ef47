import type { ZoneValves } from '../../model/feedFacts'
import type { PumpFacts } from '../../model/supplyFacts'
import type { CurvePoints, Mouths, Network, Pipes, Pumps, Valves } from '../../solvers/water/network'
import { lossAtOpening } from '../../solvers/water/valve'
import { toM3PerS } from '../../units/flow'
import { alteredPiece, type TubeMeans, tubeMeans } from './altered'
import { toM } from './metres'
import { type Plan, type PlacedPump, type PlacedRow, PUMP_VALVES } from './plan'
import { type RowPiece, SHORTEST_M } from './rowPiece'
import { AS_DRAWN, type WhatIf } from './whatIf'

const newPipes = (count: number): Pipes => ({
  from: new Int32Array(count),
  to: new Int32Array(count),
  lengthM: new Float64Array(count),
  boreM: new Float64Array(count),
  lossK: new Float64Array(count),
})

const newMouths = (count: number): Mouths => ({
  from: new Int32Array(count),
  lengthM: new Float64Array(count),
  boreM: new Float64Array(count),
  lossK: new Float64Array(count),
  levelM: new Float64Array(count),
})

const newValves = (count: number): Valves => ({
  from: new Int32Array(count),
  to: new Int32Array(count),
  boreM: new Float64Array(count),
  lossK: new Float64Array(count),
  isOpen: new Uint8Array(count).fill(1),
  isCheck: new Uint8Array(count),
})

const setLinks = (into: Pipes, { links }: Plan, isMainLossless: boolean): void => {
  links.forEach(({ from, to, lengthM, boreM, lossK }, i) => {
    into.from[i] = from
    into.to[i] = to
    into.boreM[i] = boreM
    into.lengthM[i] = isMainLossless ? SHORTEST_M : lengthM
    into.lossK[i] = isMainLossless ? 0 : lossK
  })
}

const setNodes = (into: Int32Array, local: Int32Array, at: number, firstNode: number): void => {
  for (let i = 0; i < local.length; i += 1) into[at + i] = (local[i] ?? 0) + firstNode
}

const setRow = (pipes: Pipes, mouths: Mouths, row: PlacedRow, piece: RowPiece, plan: Plan): void => {
  const firstNode = plan.levels + row.joint
  const pipe = plan.links.length + row.pipe
  setNodes(pipes.from, piece.pipes.from, pipe, firstNode)
  setNodes(pipes.to, piece.pipes.to, pipe, firstNode)
  pipes.lengthM.set(piece.pipes.lengthM, pipe)
  pipes.boreM.set(piece.pipes.boreM, pipe)
  pipes.lossK.set(piece.pipes.lossK, pipe)
  setNodes(mouths.from, piece.mouths.from, row.mouth, firstNode)
  mouths.lengthM.set(piece.mouths.lengthM, row.mouth)
  mouths.boreM.set(piece.mouths.boreM, row.mouth)
  mouths.lossK.set(piece.mouths.lossK, row.mouth)
  const { levelM } = piece.mouths
  for (let i = 0; i < levelM.length; i += 1) mouths.levelM[row.mouth + i] = (levelM[i] ?? 0) + row.datumM
}

interface ValveState {
  readonly boreM: number
  readonly lossK: number
  readonly isOpen: boolean
  readonly isCheck: boolean
}

const setValve = (into: Valves, i: number, from: number, to: number, state: ValveState): void => {
  into.from[i] = from
  into.to[i] = to
  into.boreM[i] = state.boreM
  into.lossK[i] = state.lossK
  into.isOpen[i] = state.isOpen ? 1 : 0
  into.isCheck[i] = state.isCheck ? 1 : 0
}

/** How far the trim valve stands open, from 0 to 1. */
const trimShare = ({ trimTurns, trimTurnsAll }: ZoneValves, turns = trimTurns): number =>
  trimTurnsAll > 0 ? Math.min(1, Math.max(0, turns / trimTurnsAll)) : 1

/** The valves of a zone as one: union and ball valve, and what the trim valve burns at so many turns. */
export const zoneValve = (row: PlacedRow, valves: ZoneValves, whatIf: WhatIf): ValveState => {
  const part = row.built.part
  const share = trimShare(valves, whatIf.trimTurns?.get(part))
  const isOpen = (whatIf.valves?.get(part) ?? valves.isOpen) && share > 0
  const lossK = isOpen ? valves.lossK + lossAtOpening(share) : 0
  const isLossless = whatIf.without?.has('header') ?? false
  return { boreM: toM(valves.boreMm), lossK: isLossless ? 0 : lossK, isOpen, isCheck: false }
}

const filterK = ({ isFilterDirty, filterCleanK, filterDirtyK }: PumpFacts, { filter }: WhatIf): number =>
  (filter === undefined ? isFilterDirty : filter === 'dirty') ? filterDirtyK : filterCleanK

const setPumpValves = (into: Valves, pump: PlacedPump, plan: Plan, whatIf: WhatIf): void => {
  const { facts, boreM, valve } = pump
  const behindPump = plan.levels + pump.joint
  const open = { boreM, isOpen: true, isCheck: false }
  const fittings = { ...open, lossK: facts.lossK, isCheck: facts.hasCheckValve }
  setValve(into, valve, behindPump, behindPump + 1, fittings)
  setValve(into, valve + 1, behindPump + 1, behindPump + 2, { ...open, lossK: filterK(facts, whatIf) })
  const { bypass } = facts
  const back = bypass
    ? { boreM: toM(bypass.boreMm), lossK: bypass.lossK, isOpen: true, isCheck: true }
    : { boreM, lossK: 1, isOpen: false, isCheck: true }
  setValve(into, valve + 2, behindPump + 1, pump.level, back)
}

const valvesOf = (plan: Plan, whatIf: WhatIf): Valves => {
  const valves = newValves(plan.valves)
  for (const pump of plan.pumps) setPumpValves(valves, pump, plan, whatIf)
  for (const row of plan.rows) {
    const own = row.feed.valves
    const firstNode = plan.levels + row.joint
    if (own && row.valve !== undefined)
      setValve(valves, row.valve, firstNode + own.from, firstNode + own.to, zoneValve(row, own, whatIf))
  }
  return valves
}

/** Like pumps side by side are one whose flows are so many times as large. */
const curveOf = ({ curve, pumps }: PumpFacts): CurvePoints => ({
  flowM3S: Float64Array.from(curve, ({ flowLph }) => pumps * toM3PerS(flowLph)),
  headM: Float64Array.from(curve, ({ headMm }) => toM(headMm)),
})

const pumpsOf = ({ pumps, levels }: Plan, { pumpSpeed = 1 }: WhatIf): Pumps => ({
  from: Int32Array.from(pumps, ({ level }) => level),
  to: Int32Array.from(pumps, ({ joint }) => levels + joint),
  curve: Int32Array.from(pumps, (_, i) => i),
  speed: new Float64Array(pumps.length).fill(pumpSpeed),
  curves: pumps.map(({ facts }) => curveOf(facts)),
})

const levelsOf = ({ levels, pumps, boxes }: Plan): Float64Array => {
  const heads = new Float64Array(levels)
  for (const { level, facts } of pumps) heads[level] = toM(facts.suctionMm)
  for (const { level, facts } of boxes) heads[level] = toM(facts.waterMm)
  return heads
}

/** The network of a bay as the solver takes it, as drawn or as a what-if has it. */
export const bayNetwork = (plan: Plan, whatIf: WhatIf = AS_DRAWN): Network => {
  const [pipes, mouths] = [newPipes(plan.pipes), newMouths(plan.mouths)]
  setLinks(pipes, plan, whatIf.without?.has('main') ?? false)
  let known: TubeMeans | undefined
  const means = () => (known ??= tubeMeans(plan.rows))
  for (const row of plan.rows) setRow(pipes, mouths, row, alteredPiece(row, whatIf, means), plan)
  return {
    levels: levelsOf(plan),
    joints: new Float64Array(plan.joints),
    pipes,
    valves: valvesOf(plan, whatIf),
    pumps: pumpsOf(plan, whatIf),
    mouths,
  }
}

/** The valve that a bypass runs through. */
export const bypassValve = ({ valve }: PlacedPump): number => valve + PUMP_VALVES - 1
