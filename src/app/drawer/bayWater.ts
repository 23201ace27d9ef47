import type { Evaluation } from '../../evaluate/evaluation'
import type { PartId } from '../../model/ids'
import type { FlowState, MainWater, RowWater, Water } from '../../model/water'

/** How bad each state is, worst last. */
const flowStates: readonly FlowState[] = ['Even', 'Drifting', 'Starved']

/** 0 is good, 1 is to be looked at, 2 must be mended. */
export const flowRank = (state: FlowState): number => flowStates.indexOf(state)

/** Everything in the bay that has towers to be fed. */
export const fedParts = ({ bay }: Evaluation): readonly PartId[] =>
  bay.built.filter(({ feed }) => feed !== undefined).map(({ part }) => part)

/** Whether `a` is worse than `b`: by its state, then by how far its towers lie apart. */
const isWorse = (a: RowWater, b: RowWater): boolean => {
  const ranks = flowRank(a.state) - flowRank(b.state)
  return ranks === 0 ? a.figures.spread > b.figures.spread : ranks > 0
}

/** The row that is fed worst, undefined where none is fed. */
export const worstRow = ({ rows }: Water): PartId | undefined =>
  [...rows.values()].reduce<RowWater | undefined>(
    (worst, row) => (worst === undefined || isWorse(row, worst) ? row : worst),
    undefined,
  )?.part

/** The row that a view of one row shows: the first selected one, else the one it showed while something is dragged, else the worst. */
export const shownRow = (
  fed: readonly PartId[],
  selection: readonly PartId[],
  held: PartId | undefined,
  worst: PartId | undefined,
): PartId | undefined => {
  const isFed = (id: PartId | undefined): id is PartId => id !== undefined && fed.includes(id)
  return [selection.find(isFed), held, worst, fed[0]].find(isFed)
}

/** The highest of the mean tube ends of the rows, mm from the benchmark's zero: what heads along a main are read over. */
export const highestEndsMm = ({ rows }: Water): number | undefined =>
  [...rows.values()].reduce<number | undefined>(
    (highest, { outletMm }) => (highest === undefined ? outletMm : Math.max(highest, outletMm)),
    undefined,
  )

const greatestFlow = ({ legs }: MainWater): number =>
  legs.reduce((most, { flowLph }) => Math.max(most, Math.abs(flowLph)), 0)

/** The main that a view of one main shows: the first selected one, else the one that carries most. */
export const shownMain = ({ mains }: Water, selection: readonly PartId[]): MainWater | undefined => {
  const selected = selection.flatMap((id) => mains.get(id) ?? [])
  return selected[0] ?? [...mains.values()].toSorted((a, b) => greatestFlow(b) - greatestFlow(a))[0]
}

/** The pit whose pump is shown: a selected one, else one that the main meets, else the first. */
export const shownPump = (
  { pumps }: Water,
  selection: readonly PartId[],
  main: MainWater | undefined,
): PartId | undefined => {
  const met = main?.points.flatMap(({ meets }) => meets ?? []) ?? []
  return [...selection, ...met, ...pumps.keys()].find((id) => pumps.has(id))
}
