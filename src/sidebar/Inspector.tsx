import { usePlannerState } from '../store/react'
import { BayInspector } from './BayInspector'
import './inspector.css'
import { PartActions } from './PartActions'
import { PartInspector } from './PartInspector'

/** What is selected: one part whole, several with what can be done to all; with nothing selected, the bay itself. */
export function Inspector() {
  const parts = usePlannerState(({ evaluation, selection }) =>
    evaluation.layout.parts.filter(({ id }) => selection.includes(id)),
  )
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
