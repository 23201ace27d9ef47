import type { PartId } from '../../model/ids'
import { StateMark } from '../../sidebar/StateMark'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { fedParts, flowRank } from './bayWater'
import { PartChoice } from './PartChoice'

/** Chooses a row, which selects it on the plan too. */
export function RowChoice({ shown }: { readonly shown: PartId }) {
  const evaluation = usePlannerState((state) => state.evaluation)
  const { name } = useWords(evaluation.layout.parts)
  const { rows } = evaluation.bay.water
  const state = rows.get(shown)?.state
  const words = (row: PartId) => `${name(row)}: ${rows.get(row)?.state ?? 'no water'}`
  return (
    <div className="water-row-choice">
      <PartChoice label="Row" shown={shown} parts={fedParts(evaluation)} words={words} />
      {state && <StateMark word={state} rank={flowRank(state)} />}
    </div>
  )
}

/** What a view of one row says where there is none. */
export function NoRow() {
  return (
    <p className="water-none">
      No row stands in this bay yet, so there is nothing to feed. Drag a rack row from the shelf to the floor.
    </p>
  )
}
