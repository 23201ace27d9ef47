import { panned } from '../../store/view'
import type { Gesture, Pointer, Tool } from './tool'

const holding = (last: Pointer): Gesture => ({
  move: (pointer, { view }) => ({
    gesture: holding(pointer),
    view: panned(view, pointer.px.x - last.px.x, pointer.px.y - last.px.y),
    cursor: 'grabbing',
  }),
  end: () => ({}),
})

export const hand: Tool = {
  id: 'hand',
  title: 'Move the paper',
  hint: 'Drag to move the plan under the screen',
  cursor: 'grab',
  hover: () => ({ cursor: 'grab' }),
  begin: (pointer) => ({ gesture: holding(pointer), cursor: 'grabbing' }),
}
