import type { CanvasLike } from '../drawing/paint'
import type { Theme } from '../drawing/theme'
import { stateWords, type StateWord } from '../model/finding'

/** 0 is good, 1 is to be looked at, 2 must be mended. */
export const stateRank = (state: StateWord): number =>
  Object.values(stateWords).reduce<number>(
    (rank, words) => Math.max(rank, (words as readonly StateWord[]).indexOf(state)), // widened to look up any word
    0,
  )

export const stateColour = (state: StateWord, { pens }: Theme): string =>
  [pens.crop.colour, pens.timber.colour, pens['must-fix'].colour][stateRank(state)] ?? pens.note.colour

const ring = (ctx: CanvasLike, x: number, y: number, r: number) => {
  ctx.moveTo(x + r, y)
  ctx.arc(x, y, r, 0, 2 * Math.PI)
}

const triangle = (ctx: CanvasLike, x: number, y: number, r: number) => {
  ctx.moveTo(x, y - r)
  ctx.lineTo(x + r, y + r * 0.8)
  ctx.lineTo(x - r, y + r * 0.8)
  ctx.closePath()
}

const square = (ctx: CanvasLike, x: number, y: number, r: number) => ctx.rect(x - r, y - r, 2 * r, 2 * r)

const shapes = [ring, triangle, square]

/** The shape that goes with a state's word: a ring for good, a triangle to look at, a full square to mend. */
export const drawState = (
  ctx: CanvasLike,
  state: StateWord,
  x: number,
  y: number,
  radius: number,
  theme: Theme,
) => {
  ctx.setLineDash([])
  ctx.lineWidth = 2
  ctx.strokeStyle = ctx.fillStyle = stateColour(state, theme)
  ctx.beginPath()
  shapes[stateRank(state)]?.(ctx, x, y, radius)
  ctx.stroke()
  if (stateRank(state) === 2) ctx.fill()
}
