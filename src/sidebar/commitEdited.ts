import type { Edited } from '../layout/edited'
import type { Layout } from '../layout/schema'
import type { Planner } from '../store/planner'

/** Commits an edit that may be refused; a refusal comes back as its sentence and changes nothing. */
export const commitEdited = (
  planner: Planner,
  label: string,
  edit: (layout: Layout) => Edited,
): string | undefined => {
  const edited = edit(planner.store.getState().layout)
  if (!edited.ok) return edited.sentence
  planner.commit(label, () => edited.layout)
  return undefined
}
