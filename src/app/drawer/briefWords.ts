import type { PartId } from '../../model/ids'
import type { FlowState, Water } from '../../model/water'
import { standWords } from '../../store/waterWords'
import type { Writer } from '../../units/writer'

/** Rows of a bay by their state, worst first; states that no row is in are left out. */
export const rowStates = ({ rows }: Water): readonly { readonly state: FlowState; readonly rows: number }[] =>
  (['Starved', 'Drifting', 'Even'] as const)
    .map((state) => ({ state, rows: [...rows.values()].filter((row) => row.state === state).length }))
    .filter((counted) => counted.rows > 0)

/** The bay's water in one line; undefined where nothing has towers. */
export const briefWords = (
  water: Water,
  fed: readonly PartId[],
  name: (part: PartId) => string,
  { flow, flowTotal }: Writer,
): string | undefined => {
  const { bay, totalLph, dry, fault } = water
  if (fed.length === 0) return undefined
  if (fault !== undefined) return fault
  if (!bay) return 'No tower has water yet'
  const { least, most } = bay
  const words = [
    flowTotal(totalLph),
    `towers ${flow(least.flowLph)} to ${flow(most.flowLph)}`,
    `least at ${name(least.part)}, ${standWords(least)}`,
    ...(dry.size > 0 ? [`${dry.size} ${dry.size === 1 ? 'row' : 'rows'} without water`] : []),
  ]
  return words.join(' · ')
}
