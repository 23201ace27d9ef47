import type { Point } from '../geometry/point'
import { textWidth } from '../drawing/lettering'
import type { CanvasLike } from '../drawing/paint'
import type { Theme } from '../drawing/theme'
import type { StateWord } from '../model/finding'
import { drawState, stateColour } from './stateInk'

/** Words on a slip of paper over the plan, px of canvas. */
export interface Label {
  /** Middle of the slip. */
  readonly at: Point
  readonly words: string
  /** Its shape stands before the words. */
  readonly state?: StateWord
}

export const LETTER_PX = 13
const PAD_PX = 5
const SHAPE_PX = 14
const SLIP_PX = 20

export const labelWidth = ({ words, state }: Pick<Label, 'words' | 'state'>): number =>
  textWidth(words, LETTER_PX) + 2 * PAD_PX + (state ? SHAPE_PX : 0)

export const fontOf = ({ font }: Theme, weight = 500): string => `${weight} ${LETTER_PX}px ${font}`

/** Keeps a slip wholly on the canvas. */
const kept = (middle: number, size: number, low: number, high: number): number =>
  Math.min(Math.max(middle, low + size / 2), Math.max(low + size / 2, high - size / 2))

export interface Room {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export const drawLabel = (ctx: CanvasLike, label: Label, theme: Theme, room: Room): void => {
  const width = labelWidth(label)
  const x = kept(label.at.x, width, room.left, room.right) - width / 2
  const y = kept(label.at.y, SLIP_PX, room.top, room.bottom)
  const { state } = label
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.rect(x, y - SLIP_PX / 2, width, SLIP_PX)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  ctx.lineWidth = 1
  ctx.strokeStyle = state ? stateColour(state, theme) : theme.pens.hidden.colour
  ctx.stroke()
  if (state) drawState(ctx, state, x + PAD_PX + 4, y, 4, theme)
  ctx.font = fontOf(theme)
  ctx.textAlign = 'start'
  ctx.textBaseline = 'middle'
  ctx.fillStyle = theme.ink
  ctx.fillText(label.words, x + PAD_PX + (state ? SHAPE_PX : 0), y + 1)
}
