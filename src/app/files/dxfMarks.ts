import {
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  type CommonEntityOptions,
  type DxfBlock,
  type DxfWriter,
} from '@tarikjabiri/dxf'
import { ARROW_MM, arrowHeads } from '../../drawing/arrow'
import { dimensionLength, type Lettering } from '../../drawing/dimension'
import { dimensionIn, HALF_CAPITAL, heightLettering, textLettering } from '../../drawing/lettered'
import { itemView, type Page, type PageItem } from '../../drawing/page'
import { markReach } from '../../drawing/markReach'
import { paperTheme } from '../../drawing/theme'
import { isNear, onFloor, type View } from '../../drawing/view'
import type { Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { BoxesMark, DimensionMark, DiscsMark, Mark, PathMark } from '../../model/drawing'
import { layerOf, SHEET_LAYER } from './dxfLayers'
import { type DxfSpace, isTrueIn, settled } from './dxfSpace'

export const DIMENSION_STYLE = 'PLAN'

/** One item on its way into a drawing. */
interface Plate {
  readonly dxf: DxfWriter
  /** Where its marks go: the drawing, or the block that shows a dimension. */
  readonly into: DxfBlock
  readonly view: View
  /** From the item's own mm to units of the drawing. */
  readonly at: (x: number, y: number) => Point
  readonly perMm: number
  readonly clip: Box | undefined
  /** Closed shapes that are drawn: one that is filled and outlined apart on paper is one shape in CAD. */
  readonly drawn: Set<string>
  /** True where the item has its true size, so that what is measured in it is so. */
  readonly isTrue: boolean
}

const plateOf = (dxf: DxfWriter, item: PageItem, page: Page, space: DxfSpace): Plate => {
  const { scale, xMm, yMm } = item.placement
  return {
    dxf,
    into: dxf.modelSpace,
    view: itemView(item, page, paperTheme, 1),
    at: (x, y) => space.at({ x: xMm + x * scale, y: yMm + y * scale }),
    perMm: space.perPaperMm * scale,
    clip: item.clip && {
      x0: (item.clip.x0 - xMm) / scale,
      y0: (item.clip.y0 - yMm) / scale,
      x1: (item.clip.x1 - xMm) / scale,
      y1: (item.clip.y1 - yMm) / scale,
    },
    drawn: new Set(),
    isTrue: isTrueIn(item, space),
  }
}

/** What of an item no paper shows, since it lies beyond the item's window. */
const isCut = ({ clip }: Plate, x0: number, y0: number, x1: number, y1: number): boolean =>
  clip !== undefined && (x1 < clip.x0 || x0 > clip.x1 || y1 < clip.y0 || y0 > clip.y1)

const optionsOf = (plate: Plate, layer: string): CommonEntityOptions => ({
  layerName: plate.isTrue ? layer : SHEET_LAYER,
})

const addRun = (plate: Plate, points: Float64Array, closed: boolean, layer: string): void => {
  const corners: Point[] = []
  for (let i = 0; i + 1 < points.length; i += 2) corners.push(plate.at(points[i] ?? 0, points[i + 1] ?? 0))
  const [from, to, more] = corners
  if (from === undefined || to === undefined) return
  const name = closed ? `${layer} ${corners.map(({ x, y }) => `${x},${y}`).join(' ')}` : ''
  if (plate.drawn.has(name)) return
  if (closed) plate.drawn.add(name)
  if (more === undefined)
    plate.into.addLine(point3d(from.x, from.y), point3d(to.x, to.y), optionsOf(plate, layer))
  else
    plate.into.addLWPolyline(
      corners.map(({ x, y }) => ({ point: point2d(x, y) })),
      {
        ...optionsOf(plate, layer),
        // Dashes run on round the corners.
        flags: LWPolylineFlags.Plinegen | (closed ? LWPolylineFlags.Closed : LWPolylineFlags.None),
      },
    )
}

const addBoxes = ({ boxes, pen, wash }: BoxesMark, plate: Plate): void => {
  const layer = layerOf(pen, wash)
  if (layer === undefined) return
  for (let i = 0; i + 3 < boxes.length; i += 4) {
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = boxes.subarray(i, i + 4)
    if (!isCut(plate, x0, y0, x1, y1))
      addRun(plate, Float64Array.of(x0, y0, x1, y0, x1, y1, x0, y1), true, layer)
  }
}

const addDiscs = ({ discs, pen, wash }: DiscsMark, plate: Plate): void => {
  const layer = layerOf(pen, wash)
  if (layer === undefined) return
  for (let i = 0; i + 2 < discs.length; i += 3) {
    const [x = 0, y = 0, radius = 0] = discs.subarray(i, i + 3)
    if (radius <= 0 || isCut(plate, x - radius, y - radius, x + radius, y + radius)) continue
    const centre = plate.at(x, y)
    plate.into.addCircle(point3d(centre.x, centre.y), settled(radius * plate.perMm), optionsOf(plate, layer))
  }
}

const isPathCut = (mark: PathMark, plate: Plate): boolean => {
  const { x0, y0, x1, y1 } = markReach(mark)
  return isCut(plate, x0, y0, x1, y1)
}

const addPath = (mark: PathMark, plate: Plate): void => {
  const { points, closed, pen, wash, arrows } = mark
  const layer = layerOf(pen, wash)
  if (layer === undefined || isPathCut(mark, plate)) return
  addRun(plate, points, closed, layer)
  if (arrows === undefined || pen === 'none') return
  const heads = arrowHeads(points, arrows, onFloor(ARROW_MM, plate.view))
  for (let i = 0; i + 5 < heads.length; i += 6) addRun(plate, heads.subarray(i, i + 6), true, layer)
}

const alignments = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const

/** Words that a line of the file can hold, with the signs that CAD would obey made plain. */
const dxfWords = (text: string): string =>
  text
    .replace(/[\p{Cc}\u2028\u2029]/gu, ' ')
    .replace(/\^/g, '^ ')
    .replace(/%%/g, '% %')
    .replace(/\\(?=[UM]\+)/g, '/')

const addWords = (words: Lettering, layer: string, plate: Plate): void => {
  const place = plate.at(words.at.x, words.at.y)
  const at = point3d(place.x, place.y)
  if (words.text === '' || isCut(plate, words.at.x, words.at.y, words.at.x, words.at.y)) return
  // Height of text in CAD is that of its capitals.
  plate.into.addText(at, settled(words.heightMm * 2 * HALF_CAPITAL * plate.perMm), dxfWords(words.text), {
    ...optionsOf(plate, layer),
    rotation: (words.turn * 180) / Math.PI,
    horizontalAlignment: alignments[words.anchor],
    verticalAlignment: TextVerticalAlignment.Middle,
    secondAlignmentPoint: at,
  })
}

/** Lines and words of a dimension as the paper has them. */
const addPicture = (mark: DimensionMark, layer: string, plate: Plate): void => {
  const strokes = dimensionIn(mark, plate.view)
  if (strokes === undefined) return
  for (let i = 0; i + 3 < strokes.lines.length; i += 4)
    addRun(plate, strokes.lines.subarray(i, i + 4), false, layer)
  for (const line of strokes.words) addWords(line, layer, plate)
}

const isDimensionCut = ({ from, to }: DimensionMark, plate: Plate): boolean =>
  isCut(plate, Math.min(from.x, to.x), Math.min(from.y, to.y), Math.max(from.x, to.x), Math.max(from.y, to.y))

/**
 * A dimension that CAD knows for one: aligned, with its measured value, its words as the paper has them, and an anonymous block that
 * shows it in programs that draw no dimension of their own. What is not at its true size would measure wrong: there it is lines.
 */
const addDimension = (mark: DimensionMark, plate: Plate): void => {
  const layer = layerOf(mark.pen, 'none')
  const lengthMm = dimensionLength(mark)
  if (layer === undefined || lengthMm === 0 || isDimensionCut(mark, plate)) return
  if (!plate.isTrue) return addPicture(mark, layer, plate)
  const { blocks, document, modelSpace } = plate.dxf
  const block = blocks.addBlock(`*D${blocks.blocks.length - 1}`, document.objects, false)
  // The sign of a block that has no name of its own.
  block.flags = 1
  addPicture(mark, layer, { ...plate, into: block })
  const left = { x: -(mark.to.y - mark.from.y) / lengthMm, y: (mark.to.x - mark.from.x) / lengthMm }
  const shifted = (p: Point) => plate.at(p.x + left.x * mark.offsetMm, p.y + left.y * mark.offsetMm)
  const [from, to, start, end] = [
    plate.at(mark.from.x, mark.from.y),
    plate.at(mark.to.x, mark.to.y),
    shifted(mark.from),
    shifted(mark.to),
  ]
  modelSpace.addAlignedDim(point3d(from.x, from.y), point3d(to.x, to.y), {
    ...optionsOf(plate, layer),
    blockName: block.name,
    definitionPoint: point3d(end.x, end.y),
    middlePoint: point3d((start.x + end.x) / 2, (start.y + end.y) / 2),
    ActualMeasurement: settled(lengthMm * plate.perMm),
    text: dxfWords(`${plate.view.writer.length(lengthMm)} ${mark.note.trim()}`.trim()),
    styleName: DIMENSION_STYLE,
  })
}

const addMark = (mark: Mark, plate: Plate): void => {
  switch (mark.as) {
    case 'boxes':
      return addBoxes(mark, plate)
    case 'discs':
      return addDiscs(mark, plate)
    case 'path':
      return addPath(mark, plate)
    case 'text':
      return mark.pen === 'none'
        ? undefined
        : addWords(textLettering(mark, plate.view), layerOf(mark.pen, 'none') ?? SHEET_LAYER, plate)
    case 'height':
      return mark.pen === 'none'
        ? undefined
        : addWords(heightLettering(mark, plate.view), layerOf(mark.pen, 'none') ?? SHEET_LAYER, plate)
    case 'dimension':
      return addDimension(mark, plate)
  }
}

/** All marks of one item of a page that the paper shows too. */
export const addItem = (dxf: DxfWriter, item: PageItem, page: Page, space: DxfSpace): void => {
  const plate = plateOf(dxf, item, page, space)
  for (const mark of item.marks)
    if (mark.as === 'dimension' || isNear(mark.nearMm, plate.view)) addMark(mark, plate)
}
