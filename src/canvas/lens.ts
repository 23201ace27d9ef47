import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Theme } from '../drawing/theme'
import type { View as PaintView } from '../drawing/view'
import { toFloor, toScreen, type Size, type View } from '../store/view'
import { inches, type Units } from '../units/length'
import { writerFor, type Writer } from '../units/writer'

/** What the floor is looked at through: place and zoom, the paper's colours, the reader's units. */
export interface Lens {
  readonly view: View
  readonly size: Size
  readonly theme: Theme
  readonly units: Units
  readonly writer: Writer
  /** For the painter of marks, with what can be seen. */
  readonly paint: PaintView & { readonly within: Box }
}

/** A CSS pixel is 1/96 in. Source: CSS Values and Units, "absolute lengths". */
const PX_PER_PAPER_MM = 96 / inches(1)

const withinOf = (view: View, { width, height }: Size): Box => {
  const { x: x0, y: y1 } = toFloor(view, { x: 0, y: 0 })
  const { x: x1, y: y0 } = toFloor(view, { x: width, y: height })
  return { x0, y0, x1, y1 }
}

export const lensOf = (view: View, size: Size, theme: Theme, units: Units): Lens => {
  const writer = writerFor(units)
  return {
    view,
    size,
    theme,
    units,
    writer,
    paint: {
      pxPerMm: view.pxPerMm,
      pxPerPaperMm: PX_PER_PAPER_MM,
      on: 'screen',
      theme,
      writer,
      within: withinOf(view, size),
    },
  }
}

/** Where a place on the floor is on the canvas, px. */
export const pxOf = ({ view }: Lens, p: Point): Point => toScreen(view, p)

/** Konva's transform from mm of floor, y up, to px of canvas, y down. */
export const floorTransform = ({ x, y, pxPerMm }: View) => ({
  x: -x * pxPerMm,
  y: y * pxPerMm,
  scaleX: pxPerMm,
  scaleY: -pxPerMm,
})
