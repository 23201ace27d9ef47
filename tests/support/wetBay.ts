import type { Evaluation } from '../../src/evaluate/evaluation'
import { evaluate } from '../../src/evaluate/evaluate'
import type { PartId } from '../../src/model/ids'
import type { DryReason, FlowFigures, FlowState, RowWater, TowerAt, Water } from '../../src/model/water'
import { gph } from '../../src/units/flow'
import { bay } from './bay'

/** Water made by hand, for whoever reads it: nothing here is solved. */

const figuresOf = (towers: readonly TowerAt[]): FlowFigures => {
  const rising = towers.toSorted((a, b) => a.flowLph - b.flowLph)
  const [least, most] = [rising[0]!, rising.at(-1)!]
  const meanLph = towers.reduce((sum, { flowLph }) => sum + flowLph, 0) / towers.length
  return {
    towers: towers.length,
    meanLph,
    least,
    most,
    spread: (most.flowLph - least.flowLph) / most.flowLph,
    minOverMean: least.flowLph / meanLph,
    variation: 0.03,
    lowQuarter: 0.962,
    christiansen: 0.97,
    emission: 0.9,
    statistical: 0.97,
  }
}

/** Two rows of one rack and four lines, 32 towers each, a drain and a pit; no main. */
export const twoRows = (): Evaluation =>
  evaluate(bay('40 x 60 ft').row('A', [100, 100], { racks: 1 }).row('B', [220, 100], { racks: 1 }).layout())

/** The flow of a tower by station and line, gph. */
export type FlowAt = (station: number, line: number) => number

const rowWater = (
  { bay: { builtOf } }: Evaluation,
  part: PartId,
  state: FlowState,
  flow: FlowAt,
): RowWater => {
  const heads = builtOf.get(part)!.mouths.filter(({ role }) => role === 'tower-head')
  const towers = heads.map(({ at, station, line }) => ({
    part,
    station,
    line,
    at,
    flowLph: gph(flow(station, line)),
  }))
  return {
    part,
    zone: part,
    state,
    figures: figuresOf(towers),
    totalLph: towers.reduce((sum, { flowLph }) => sum + flowLph, 0),
    tubeLph: Float64Array.from(towers, ({ flowLph }) => flowLph),
    jointHeadMm: new Float64Array(200),
    pipeLph: new Float64Array(200),
    outletMm: 1700,
    entryHeadMm: 190.5,
    tubeReynolds: 1900,
    fastestMS: 0.6,
  }
}

export interface Wet {
  readonly part: PartId
  readonly state: FlowState
  readonly flow: FlowAt
}

/** The same bay with this water in these rows, and none in those for these reasons. */
export const withWater = (
  evaluation: Evaluation,
  wet: readonly Wet[],
  dry: Readonly<Record<PartId, DryReason>> = {},
  more: Partial<Water> = {},
): Evaluation => {
  const rows = new Map(wet.map(({ part, state, flow }) => [part, rowWater(evaluation, part, state, flow)]))
  const ends = [...rows.values()].flatMap(({ figures }) => [figures.least, figures.most])
  const water: Water = {
    rows,
    dry: new Map(Object.entries(dry)),
    mains: new Map(),
    pumps: new Map(),
    boxes: new Map(),
    zones: new Map(),
    bay: ends.length > 0 ? figuresOf(ends) : undefined,
    totalLph: 0,
    fault: undefined,
    sweeps: 1,
    ...more,
  }
  return { ...evaluation, bay: { ...evaluation.bay, water } }
}
