import type { ToolId } from '../store/planner'
import { inches, type Units } from '../units/length'

/** A key as pressed, with what is held beside it. `ctrl` is Ctrl or Meta. */
export interface KeyPress {
  readonly key: string
  readonly shift: boolean
  readonly ctrl: boolean
  readonly alt: boolean
}

/** What a key does on the floor plan; undo, files and the like are keys of the whole page. */
export type KeyDeed =
  | { readonly does: 'nudge'; readonly dxMm: number; readonly dyMm: number }
  | { readonly does: 'pan'; readonly dxPx: number; readonly dyPx: number }
  | { readonly does: 'zoom'; readonly factor: number }
  | { readonly does: 'tool'; readonly tool: ToolId }
  | { readonly does: 'mirror'; readonly axis: 'x' | 'y' }
  | {
      readonly does:
        'fit' | 'turn' | 'copy' | 'remove' | 'lock' | 'drop' | 'cancel' | 'all' | 'next' | 'previous'
    }

interface Step {
  readonly x: number
  readonly y: number
}

/** East and north are positive. */
const arrows: Readonly<Record<string, Step>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
}

/** How far an arrow key moves things: 1 in, or 1/16 in with Shift; 10 mm and 1 mm of the metric tape. */
export const nudgeMm = (units: Units, isFine: boolean): number => {
  if (units === 'metric') return isFine ? 1 : 10
  return inches(isFine ? 1 / 16 : 1)
}

const PAN_PX = 80
/** One step of the keys and of the buttons. */
export const ZOOM = 1.25

const arrowDeed = ({ x, y }: Step, { shift, ctrl }: KeyPress, units: Units): KeyDeed => {
  // The screen looks the way the arrow points, so the paper goes the other way.
  if (ctrl) return { does: 'pan', dxPx: 0 - x * PAN_PX, dyPx: y * PAN_PX }
  const byMm = nudgeMm(units, shift)
  return { does: 'nudge', dxMm: x * byMm, dyMm: y * byMm }
}

const plain: Readonly<Record<string, KeyDeed>> = {
  Delete: { does: 'remove' },
  Backspace: { does: 'remove' },
  Enter: { does: 'drop' },
  '+': { does: 'zoom', factor: ZOOM },
  '=': { does: 'zoom', factor: ZOOM },
  '-': { does: 'zoom', factor: 1 / ZOOM },
  '0': { does: 'fit' },
  r: { does: 'turn' },
  d: { does: 'copy' },
  l: { does: 'lock' },
  m: { does: 'mirror', axis: 'x' },
  s: { does: 'tool', tool: 'select' },
  h: { does: 'tool', tool: 'hand' },
  t: { does: 'tool', tool: 'tape' },
  '.': { does: 'next' },
  ',': { does: 'previous' },
}

/** What a key does, undefined where it is the page's own. */
export const deedOf = (press: KeyPress, units: Units): KeyDeed | undefined => {
  // Ctrl and Alt may be held for the drag that Escape gives up.
  if (press.key === 'Escape') return { does: 'cancel' }
  const arrow = arrows[press.key]
  if (arrow) return press.alt ? undefined : arrowDeed(arrow, press, units)
  const key = press.key.length === 1 ? press.key.toLowerCase() : press.key
  if (press.ctrl) return key === 'a' ? { does: 'all' } : undefined
  if (press.alt) return undefined
  return key === 'm' && press.shift ? { does: 'mirror', axis: 'y' } : plain[key]
}

/** The keys in words, for the help beside the plan and for screen readers. */
export const keyHelp: readonly { readonly keys: string; readonly does: string }[] = [
  {
    keys: 'Arrow keys',
    does: 'move what is selected or in hand 1 in (10 mm); with Shift 1/16 in (1 mm); with Ctrl the paper',
  },
  { keys: '. and ,', does: 'select the next or the previous part' },
  { keys: 'Enter', does: 'drop the part in hand, with Shift to keep another; hook the tape, and let it go' },
  { keys: 'Escape', does: 'stop what is under way, then let go of what is selected' },
  { keys: 'Delete', does: 'delete what is selected' },
  { keys: 'R', does: 'turn a quarter' },
  { keys: 'M', does: 'mirror east-west; with Shift north-south' },
  { keys: 'D', does: 'copy' },
  { keys: 'L', does: 'lock in place, or unlock' },
  { keys: 'S, H, T', does: 'select, move the paper, measuring tape' },
  { keys: '+, - and 0', does: 'zoom in, zoom out, show the whole house' },
  { keys: 'Ctrl A', does: 'select all' },
]
