import type { PartId } from '../../model/ids'
import type { FlowState, Water } from '../../model/water'
import { standWords } from '../../store/waterWords'
import type { Writer } from '../../units/writer'

const counted = (rows: number): string => `${rows} ${rows === 1 ? 'row' : 'rows'}`

const inState = ({ rows }: Water, state: FlowState): number =>
  [...rows.values()].filter((row) => row.state === state).length

const troubleWords = (water: Water): readonly string[] =>
  (['Starved', 'Drifting'] as const)
    .map((state) => ({ state, rows: inState(water, state) }))
    .filter(({ rows }) => rows > 0)
    .map(({ state, rows }) => `${counted(rows)} ${state}`)

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
    ...troubleWords(water),
    ...(dry.size > 0 ? [`${counted(dry.size)} without water`] : []),
  ]
  return words.join(' · ')
}
