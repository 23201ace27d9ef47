import { TriangleAlert } from 'lucide-react'
import type { CutOfStock } from '../../../evaluate/sawn/whatsCut'
import { Said } from '../../../sidebar/Said'
import { usePlanner, usePlannerState } from '../../../store/react'
import { misfitWords, movedHoles } from '../../../sheets/sawnWords'

/** More sentences than these say less, not more. */
const MOST_SAID = 3

const movedWords = (count: number): string =>
  `${count} cut ${count === 1 ? 'piece is' : 'pieces are'} as long as they should be, but the holes belong elsewhere now: check those that are drilled.`

/** Says that cut pieces no longer fit the bay, and leads to what can be done with them. */
export function MisfitBanner({ cut }: { readonly cut: readonly CutOfStock[] }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const moved = cut.reduce((sum, each) => sum + movedHoles(each), 0)
  const said = [...cut.flatMap((each) => misfitWords(each, units)), ...(moved > 0 ? [movedWords(moved)] : [])]
  if (said.length === 0) return null
  return (
    <div className="saw-misfit" role="status">
      <TriangleAlert size={18} aria-hidden="true" />
      <ul>
        {said.slice(0, MOST_SAID).map((words) => (
          <li key={words}>
            <Said words={words} />
          </li>
        ))}
        {said.length > MOST_SAID && <li>{said.length - MOST_SAID} more of the kind.</li>}
      </ul>
      <button onClick={() => planner.set({ drawer: 'sawn' })}>See what’s cut</button>
    </div>
  )
}
