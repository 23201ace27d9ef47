import { Check, CircleDashed } from 'lucide-react'
import type { CutList } from '../model/cutList'
import type { Proving } from '../store/proving'
import { lookOn, stopLooking } from '../store/proving'
import { usePlanner, usePlannerState } from '../store/react'
import { standingWords } from '../sheets/cutWords'

interface SearchProps {
  readonly list: CutList
  readonly proving: Proving
}

/** A search that goes on, or that was stopped, with the way to the other. */
function Search({ list: { key, title }, proving }: SearchProps) {
  const planner = usePlanner()
  const isLooking = proving === 'looking'
  const turn = isLooking ? 'Stop looking' : 'Look on'
  return (
    <span className="cuts-search">
      {isLooking ? 'Looking for a cheaper plan …' : 'The search was stopped.'}
      <button
        aria-label={`${turn}: ${title}`}
        onClick={() => (isLooking ? stopLooking : lookOn)(planner, key)}
      >
        {turn}
      </button>
    </span>
  )
}

/** How good the plan of a material is known to be, and the search for a better one. */
export function CutStanding({ list }: { readonly list: CutList }) {
  const proving = usePlannerState((state) => state.proving.get(list.key))
  const isProven = list.standing.kind === 'proven'
  const Shape = isProven ? Check : CircleDashed
  return (
    <p className="cuts-standing">
      <Shape size={14} aria-hidden="true" /> {standingWords(list)}
      {!isProven && proving && <Search list={list} proving={proving} />}
    </p>
  )
}
