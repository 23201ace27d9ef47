import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'

/** What part of the floor is on screen. Floor y grows north, screen y grows down. */
export interface View {
  /** Floor place at the canvas's top left corner, mm. */
  readonly x: number
  readonly y: number
  readonly pxPerMm: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

/** From a whole farm on a phone to a screw on a large screen. */
const LEAST_PX_PER_MM = 0.004
const MOST_PX_PER_MM = 4

/** Kept free round a bay that is fitted to the screen, px: rulers, scale bar, and doors that swing out. */
const FREE_PX = { left: 64, right: 28, top: 44, bottom: 72 }

/** However small the screen is, this much of it is left for the bay, px. */
const LEAST_ROOM_PX = 40

const within = (pxPerMm: number): number => Math.min(MOST_PX_PER_MM, Math.max(LEAST_PX_PER_MM, pxPerMm))

export const toScreen = (view: View, p: Point): Point => ({
  x: (p.x - view.x) * view.pxPerMm,
  y: (view.y - p.y) * view.pxPerMm,
})

export const toFloor = (view: View, p: Point): Point => ({
  x: view.x + p.x / view.pxPerMm,
  y: view.y - p.y / view.pxPerMm,
})

/** Moves the floor with the pointer, by px. */
export const panned = (view: View, dxPx: number, dyPx: number): View => ({
  ...view,
  x: view.x - dxPx / view.pxPerMm,
  y: view.y + dyPx / view.pxPerMm,
})

/** Zooms by a factor; the floor under the screen point stays under it. */
export const zoomedAt = (view: View, at: Point, factor: number): View => {
  const floor = toFloor(view, at)
  const pxPerMm = within(view.pxPerMm * factor)
  return { x: floor.x - at.x / pxPerMm, y: floor.y + at.y / pxPerMm, pxPerMm }
}

/** The view that shows a box of floor as large as the screen allows, in the middle of what is kept for it. */
export const fitted = (box: Box, { width, height }: Size): View => {
  const across = Math.max(LEAST_ROOM_PX, width - FREE_PX.left - FREE_PX.right)
  const down = Math.max(LEAST_ROOM_PX, height - FREE_PX.top - FREE_PX.bottom)
  const pxPerMm = within(Math.min(across / (box.x1 - box.x0), down / (box.y1 - box.y0)))
  return {
    x: (box.x0 + box.x1) / 2 - (FREE_PX.left + across / 2) / pxPerMm,
    y: (box.y0 + box.y1) / 2 + (FREE_PX.top + down / 2) / pxPerMm,
    pxPerMm,
  }
}

/** The view moved so that a place is in its middle, near enough to see detail. */
export const centredOn = (view: View, at: Point, size: Size, leastPxPerMm: number): View => {
  const pxPerMm = Math.max(view.pxPerMm, leastPxPerMm)
  return { x: at.x - size.width / 2 / pxPerMm, y: at.y + size.height / 2 / pxPerMm, pxPerMm }
}
