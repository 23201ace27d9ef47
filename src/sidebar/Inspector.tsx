import { useMemo } from 'react'
import { usePlannerState } from '../store/react'
import { BayInspector } from './BayInspector'
import './inspector.css'
import { PartActions } from './PartActions'
import { PartInspector } from './PartInspector'

/** What is selected: one part whole, several with what can be done to all; with nothing selected, the bay itself. */
export function Inspector() {
  const [all, selection] = usePlannerState((state) => [state.evaluation.layout.parts, state.selection])
  const parts = useMemo(() => {
    const chosen = new Set(selection)
    return all.filter(({ id }) => chosen.has(id))
  }, [all, selection])
  const [first] = parts
  if (!first) return <BayInspector />
  if (parts.length === 1) return <PartInspector key={first.id} part={first} />
  return (
    <div className="inspector">
      <h2>{parts.length} parts</h2>
      <PartActions parts={parts} />
    </div>
  )
}
