import type { Point } from '../geometry/point'
import { textWidth } from '../drawing/lettering'
import type { CanvasLike } from '../drawing/paint'
import type { Theme } from '../drawing/theme'
import type { StateWord } from '../model/finding'
import { drawState, stateColour } from './stateInk'

/** Words on a slip of paper over the plan, px of canvas. */
export interface Label {
  /** Where the middle of the slip would stand best. */
  readonly at: Point
  readonly words: string
  /** Its shape stands before the words. */
  readonly state?: StateWord
  /** Or a full triangle does. */
  readonly triangle?: 'up' | 'down'
  /** Lies where it wishes, on names too: a line of what follows the pointer. */
  readonly isFirm?: true
}

/** What a slip covers, px. */
export interface Slip {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

const LETTER_PX = 13
const PAD_PX = 5
const SHAPE_PX = 14
const SLIP_PX = 20
const BETWEEN_PX = 2

const shapePx = ({ state, triangle }: Label): number => (state || triangle ? SHAPE_PX : 0)

const widthOf = (label: Label): number => textWidth(label.words, LETTER_PX) + 2 * PAD_PX + shapePx(label)

/** Keeps a slip wholly inside of the room. */
const kept = (middle: number, size: number, low: number, high: number): number =>
  Math.min(Math.max(middle, low + size / 2), Math.max(low + size / 2, high - size / 2))

const slipAt = (label: Label, room: Slip, downPx: number): Slip => {
  const width = widthOf(label)
  const x = kept(label.at.x, width, room.x0, room.x1)
  // Kept in the room before it steps: else all steps of a label from beyond the edge would end on the same place.
  const wish = kept(label.at.y, SLIP_PX, room.y0, room.y1)
  const y = kept(wish + downPx, SLIP_PX, room.y0, room.y1)
  return { x0: x - width / 2, x1: x + width / 2, y0: y - SLIP_PX / 2, y1: y + SLIP_PX / 2 }
}

const meets = (a: Slip, b: Slip): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1

/** Steps up and down to try, nearest first. */
const TRIES = [0, -1, 1, -2, 2, -3, 3, -4, 4, -5, 5].map((step) => step * (SLIP_PX + BETWEEN_PX))

/**
 * Where each label goes so that none covers another; the first ones have their wish. Words of the plan, `names`, are
 * left free where there is room beside them, and `over`, what lies over the paper, before those.
 */
export const layLabels = (
  labels: readonly Label[],
  room: Slip,
  names: readonly Slip[] = [],
  over: readonly Slip[] = [],
): readonly Slip[] => {
  const laid: Slip[] = []
  const isFree = (slip: Slip) => ![...over, ...laid].some((other) => meets(slip, other))
  for (const label of labels) {
    const tries = TRIES.map((downPx) => slipAt(label, room, downPx))
    const free = tries.filter(isFree)
    const best = label.isFirm ? free[0] : free.find((slip) => !names.some((name) => meets(slip, name)))
    laid.push(best ?? free[0] ?? slipAt(label, room, 0))
  }
  return laid
}

/** The switch of the water and the north arrow, from the upper right of the paper; as large as by touch, px. */
const CORNER_PX = { wide: 290, high: 52 }

export const cornerOf = ({ x1, y0 }: Slip): Slip => ({
  x0: x1 - CORNER_PX.wide,
  x1,
  y0,
  y1: y0 + CORNER_PX.high,
})

const drawTriangle = (ctx: CanvasLike, x: number, y: number, way: 'up' | 'down', theme: Theme): void => {
  const tip = way === 'down' ? 5 : -5
  ctx.beginPath()
  ctx.moveTo(x - 5, y - tip * 0.8)
  ctx.lineTo(x + 5, y - tip * 0.8)
  ctx.lineTo(x, y + tip)
  ctx.closePath()
  ctx.fillStyle = theme.ink
  ctx.fill()
}

const drawSlip = (ctx: CanvasLike, label: Label, slip: Slip, theme: Theme): void => {
  const { words, state, triangle } = label
  const middle = (slip.y0 + slip.y1) / 2
  ctx.setLineDash([])
  ctx.beginPath()
  ctx.rect(slip.x0, slip.y0, slip.x1 - slip.x0, slip.y1 - slip.y0)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  ctx.lineWidth = 1
  ctx.strokeStyle = state ? stateColour(state, theme) : theme.pens.hidden.colour
  ctx.stroke()
  if (state) drawState(ctx, state, slip.x0 + PAD_PX + 4, middle, 4, theme)
  if (triangle) drawTriangle(ctx, slip.x0 + PAD_PX + 5, middle, triangle, theme)
  ctx.font = `500 ${LETTER_PX}px ${theme.font}`
  ctx.textAlign = 'start'
  ctx.textBaseline = 'middle'
  ctx.fillStyle = theme.ink
  ctx.fillText(words, slip.x0 + PAD_PX + shapePx(label), middle + 1)
}

export const drawLabels = (
  ctx: CanvasLike,
  labels: readonly Label[],
  theme: Theme,
  room: Slip,
  names: readonly Slip[],
): void => {
  layLabels(labels, room, names, [cornerOf(room)]).forEach((slip, index) => {
    const label = labels[index]
    if (label) drawSlip(ctx, label, slip, theme)
  })
}
