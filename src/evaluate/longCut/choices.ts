import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'

/** What can be cut along: every drain, the longest way home not first but in the bay's own order, then every row with gutters. */
export const cutChoices = ({ built, levels }: Bay): readonly PartId[] => [
  ...built.filter(({ part }) => levels.drains.has(part)).map(({ part }) => part),
  ...built.filter(({ trough }) => trough !== undefined).map(({ part }) => part),
]

/** The longest drain that comes into a pit. */
const longestInto = ({ joins, levels }: Bay, pit: PartId): PartId | undefined =>
  joins
    .flatMap(({ kind, from, to }) => {
      const run = kind === 'drain-to-pit' && to === pit ? levels.drains.get(from) : undefined
      return run ? [run] : []
    })
    .toSorted((a, b) => b.lengthMm - a.lengthMm)[0]?.part

/** What is cut: a drain or a row that is selected, the longest drain of a selected pit, else what was, else the first drain. */
export const chosenCut = (
  bay: Bay,
  selection: readonly PartId[],
  held: PartId | undefined,
): PartId | undefined => {
  const choices = cutChoices(bay)
  const ofPart = (part: PartId) => (choices.includes(part) ? part : longestInto(bay, part))
  const selected = selection.map(ofPart).find((part) => part !== undefined)
  return selected ?? (held !== undefined && choices.includes(held) ? held : choices[0])
}
