import type { Planner } from '../store/planner'
import type { Commands } from './commands'

/** A key of the whole page; keys of the floor plan live with the canvas. */
interface Shortcut {
  readonly keys: string
  readonly does: string
  readonly run: (planner: Planner, commands: Commands) => void
}

/** Control, or Command on a Mac. */
export const pageShortcuts: readonly Shortcut[] = [
  { keys: 'mod+z', does: 'Undo', run: (planner) => planner.undo() },
  { keys: 'mod+shift+z', does: 'Redo', run: (planner) => planner.redo() },
  { keys: 'mod+y', does: 'Redo', run: (planner) => planner.redo() },
  { keys: 'mod+s', does: 'Save as a file', run: (_, commands) => commands.save() },
  { keys: 'mod+o', does: 'Open a file', run: (_, commands) => void commands.openFile() },
]

const named = (event: KeyboardEvent): string =>
  [event.ctrlKey || event.metaKey ? 'mod' : '', event.shiftKey ? 'shift' : '', event.key.toLowerCase()]
    .filter(Boolean)
    .join('+')

const isTyping = ({ target }: KeyboardEvent): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName))

/** The shortcut that a key press asks for. While somebody types, undo belongs to the field that they type in. */
export const shortcutFor = (event: KeyboardEvent): Shortcut | undefined => {
  const keys = named(event)
  const shortcut = pageShortcuts.find((one) => one.keys === keys)
  return shortcut && isTyping(event) && /z|y/.test(event.key.toLowerCase()) ? undefined : shortcut
}
