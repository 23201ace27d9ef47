import type { PartId } from '../../model/ids'
import type { DryReason, FlowFigures, RowWater, Water, ZoneWater } from '../../model/water'
import { figuresOf, isClearlyLess } from './figures'
import type { Plan, PlacedRow, WaterInputs } from './plan'
import { planOf } from './planOf'
import { isReached, readRow, readZone } from './readRows'
import { readBox, readMain, readPump } from './readSupply'
import { type Solved, solvedBay } from './solved'
import { AS_DRAWN, type WhatIf } from './whatIf'

const byPart = <T extends { readonly part: PartId }>(items: readonly T[]): ReadonlyMap<PartId, T> =>
  new Map(items.map((item) => [item.part, item]))

const NO_WATER: Omit<Water, 'dry' | 'fault'> = {
  rows: new Map(),
  mains: new Map(),
  pumps: new Map(),
  boxes: new Map(),
  zones: new Map(),
  bay: undefined,
  totalLph: 0,
  sweeps: 0,
}

/** All towers of the bay that water comes to, together. */
const bayFigures = (rows: readonly RowWater[], tubeScatter: number): FlowFigures | undefined => {
  const [first] = rows
  if (!first) return undefined
  const flows = new Float64Array(rows.reduce((sum, { tubeLph }) => sum + tubeLph.length, 0))
  let at = 0
  let [least, most] = [first.figures.least, first.figures.most]
  for (const { tubeLph, figures } of rows) {
    flows.set(tubeLph, at)
    at += tubeLph.length
    if (isClearlyLess(figures.least.flowLph, least.flowLph)) least = figures.least
    if (isClearlyLess(most.flowLph, figures.most.flowLph)) most = figures.most
  }
  return figuresOf(flows, least, most, tubeScatter)
}

const zonesOf = (solved: Solved): ReadonlyMap<PartId, ZoneWater> => {
  const rowsOf = new Map<PartId, PlacedRow[]>()
  for (const row of solved.plan.rows) {
    const known = rowsOf.get(row.zone)
    if (known) known.push(row)
    else rowsOf.set(row.zone, [row])
  }
  const heads = solved.plan.rows.filter(({ built, zone }) => built.part === zone)
  return byPart(heads.map((row) => readZone(solved, row, rowsOf.get(row.zone) ?? [])))
}

const dryOf = ({ dry }: Plan, shut: readonly PlacedRow[]): ReadonlyMap<PartId, DryReason> =>
  shut.length === 0 ? dry : new Map([...dry, ...shut.map(({ built }) => [built.part, 'shut'] as const)])

const readWater = (solved: Solved): Water => {
  const { plan, solution } = solved
  const rows = plan.rows.flatMap((row, i) => (isReached(solved, row) ? [readRow(solved, row, i)] : []))
  return {
    rows: byPart(rows),
    dry: dryOf(
      plan,
      plan.rows.filter((row) => !isReached(solved, row)),
    ),
    mains: byPart(plan.mains.map((main) => readMain(solved, main))),
    pumps: byPart(plan.pumps.map((pump, i) => readPump(solved, pump, i))),
    boxes: byPart(plan.boxes.map((box) => readBox(solved, box))),
    zones: zonesOf(solved),
    bay: bayFigures(rows, plan.settings.tubeScatter),
    totalLph: rows.reduce((sum, { totalLph }) => sum + totalLph, 0),
    fault: undefined,
    sweeps: solution.sweeps,
  }
}

/** The water of a planned bay. */
export const waterOfPlan = (plan: Plan, whatIf: WhatIf = AS_DRAWN): Water => {
  if (plan.levels === 0) return { ...NO_WATER, dry: plan.dry, fault: undefined }
  const solved = solvedBay(plan, whatIf)
  return 'sentence' in solved ? { ...NO_WATER, dry: plan.dry, fault: solved.sentence } : readWater(solved)
}

/**
 * The solved water of a bay, as drawn or as a what-if has it: `waterOf(evaluation.bay, { waterC: 12 })`. Flows in litres an
 * hour, heads in mm. Total: a bay that can't be solved has the solver's sentence in `fault`, and nothing else.
 */
export const waterOf = (inputs: WaterInputs, whatIf: WhatIf = AS_DRAWN): Water =>
  waterOfPlan(planOf(inputs), whatIf)
