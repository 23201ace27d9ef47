import type { Evaluation } from '../../../evaluate/evaluation'
import type { PartId } from '../../../model/ids'

/** Pits of a bay, in the order of the plan. */
export const pitParts = ({ bay }: Evaluation): readonly PartId[] =>
  bay.built.filter(({ pit }) => pit !== undefined).map(({ part }) => part)

/** How bad a pit's state is; 0 for one that nothing is known of. */
const badness = ({ bay }: Evaluation, part: PartId): number => {
  const state = bay.returns.pits.get(part)?.state
  return state === undefined ? 0 : ['Holds', 'Thin', 'Spills'].indexOf(state)
}

/** The pit to show: a selected one, or that which a selected drain or row falls to, or the worst; the first of equals. */
export const shownPit = (evaluation: Evaluation, selection: readonly PartId[]): PartId | undefined => {
  const pits = pitParts(evaluation)
  const { pits: returns } = evaluation.bay.returns
  const takes = (pit: PartId, part: PartId): boolean => {
    const known = returns.get(pit)
    return pit === part || known?.drains.includes(part) === true || known?.rows.includes(part) === true
  }
  const chosen = selection.flatMap((part) => pits.find((pit) => takes(pit, part)) ?? [])
  return chosen[0] ?? pits.toSorted((a, b) => badness(evaluation, b) - badness(evaluation, a))[0]
}
