import type { Words } from '../checks/context'
import { mendWords } from '../checks/words'
import { applyMend } from '../layout/mend'
import type { Layout } from '../layout/schema'
import type { Finding, Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Planner } from '../store/planner'
import { centredOn, toScreen } from '../store/view'
import { placeOfPart } from './placeWords'

/** Near enough to see one aisle across the screen: about 25 ft on 800 px. */
const JUMP_PX_PER_MM = 0.1

/** Selects what a finding is about and brings its place to the middle of the floor plan. */
export const jumpTo = ({ store, select, set }: Planner, { key, parts, at }: Finding): void => {
  const { view, size } = store.getState()
  select(parts)
  set({ finding: key, view: centredOn(view, at, size, JUMP_PX_PER_MM) })
}

/** Opens the drawer at what would mend the row that a finding is about. */
export const showMends = ({ select, set }: Planner, { parts }: Finding): void => {
  select(parts)
  set({ drawer: 'mends' })
}

/** Moves the floor under the screen where a part's place is out of sight; the zoom stays. */
export const bringInSight = ({ store, set }: Planner, id: PartId): void => {
  const { view, size, layout } = store.getState()
  const part = layout.parts.find((p) => p.id === id)
  if (!part) return
  const place = placeOfPart(part)
  const { x, y } = toScreen(view, place)
  const isSeen = x >= 0 && x <= size.width && y >= 0 && y <= size.height
  if (!isSeen) set({ view: centredOn(view, place, size, view.pxPerMm) })
}

/** Parts that a mend would move and that are locked in place. To move the rest of a block without them would tear it apart. */
const lockedIn = (mend: Mend, { parts }: Layout): readonly PartId[] =>
  mend.kind === 'move'
    ? parts.filter(({ id, locked }) => locked && mend.parts.includes(id)).map(({ id }) => id)
    : []

/** Makes a finding's mend; says so where a part that is locked in place stands in its way. */
export const mendNow = (planner: Planner, finding: Finding, mend: Mend, words: Words): void => {
  const label = mendWords(mend, finding, words)
  const locked = lockedIn(mend, planner.store.getState().layout).map(words.name)
  if (locked.length === 0) return planner.commit(label, (layout) => applyMend(layout, mend))
  const text = `Locked in place: ${locked.join(', ')}. Nothing was moved; unlock first, then mend.`
  planner.set({ notice: { tone: 'trouble', text } })
}
