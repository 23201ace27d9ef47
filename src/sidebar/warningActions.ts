import type { Words } from '../checks/context'
import { mendWords } from '../checks/words'
import { applyMend } from '../layout/mend'
import type { Finding, Mend } from '../model/finding'
import type { Planner } from '../store/planner'
import { centredOn } from '../store/view'

/** Near enough to see one aisle across the screen: about 25 ft on 800 px. */
const JUMP_PX_PER_MM = 0.1

/** Selects what a finding is about and brings its place to the middle of the floor plan. */
export const jumpTo = ({ store, select, set }: Planner, { key, parts, at }: Finding): void => {
  const { view, size } = store.getState()
  select(parts)
  set({ finding: key, view: centredOn(view, at, size, JUMP_PX_PER_MM) })
}

/** Makes a finding's mend; says so where it can't be made, such as for a part that is locked in place. */
export const mendNow = (planner: Planner, finding: Finding, mend: Mend, words: Words): void => {
  const label = mendWords(mend, finding, words)
  const before = planner.store.getState().layout
  planner.commit(label, (layout) => applyMend(layout, mend))
  if (planner.store.getState().layout === before)
    planner.set({
      notice: {
        tone: 'trouble',
        text: `${label}: this changed nothing. A part that is locked in place stays where it is; unlock it first.`,
      },
    })
}
