import { strengthOf } from '../../../evaluate/5-loads'
import type { PartId } from '../../../model/ids'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { PartChoice } from '../PartChoice'
import { rackRows, strengthRank } from './shownRack'

/** Chooses a row of racks by how it is loaded, which selects it on the plan too. */
export function RackChoice({ shown }: { readonly shown: PartId }) {
  const { bay, layout } = usePlannerState((state) => state.evaluation)
  const { name } = useWords(layout.parts)
  const strength = strengthOf(bay)
  const state = strength.get(shown)?.state
  const words = (row: PartId) => [name(row), strength.get(row)?.state].filter(Boolean).join(': ')
  return (
    <div className="water-row-choice">
      <PartChoice label="Row" shown={shown} parts={rackRows(bay)} words={words} />
      {state && <StateMark word={state} rank={strengthRank(state)} />}
    </div>
  )
}

/** What a view of one row of racks says where there is none. */
export function NoRack() {
  return (
    <p className="water-none">
      No row of racks stands in this bay yet. Drag a rack row from the shelf to the floor.
    </p>
  )
}
