import type { Point } from '../geometry/point'
import type { BoxesMark, DimensionMark, DiscsMark, Mark, PathMark, Pen, Wash } from '../model/drawing'
import { ARROW_MM, arrowHeads } from './arrow'
import type { Lettering } from './dimension'
import { dimensionIn, HALF_CAPITAL, HALO, heightLettering, textLettering } from './lettered'
import { hatchWithin, ringsOf } from './hatchWithin'
import type { ShapeMark } from './markReach'
import { itemView, type Page, type PageItem } from './page'
import type { Theme } from './theme'
import { isNear, onFloor, type View } from './view'

/** What the writer of one item needs: SVG x and y in mm of paper, y down. */
interface Plate {
  readonly view: View
  readonly x: (floorMm: number) => number
  readonly y: (floorMm: number) => number
  readonly isPlain: boolean
}

/** To a thousandth of a mm, so that two writings of one page are the same text. */
const mm = (value: number): string => String(Math.round(value * 1000) / 1000 + 0)

const safe = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')

const penAttributes = (pen: Pen, { theme }: View): string => {
  if (pen === 'none') return 'stroke="none"'
  const { colour, widthMm, dashMm } = theme.pens[pen]
  const dash = dashMm.length > 0 ? ` stroke-dasharray="${dashMm.map(mm).join(' ')}"` : ''
  return `stroke="${colour}" stroke-width="${mm(widthMm)}"${dash}`
}

const fillOf = (wash: Wash, { theme }: View): string =>
  wash === 'none' ? 'none' : (theme.washes[wash].colour ?? 'none')

/** Lines cut off at the shape, as one path: a pattern would be printed as dots. */
const hatchOver = (mark: ShapeMark, plate: Plate): string => {
  const { theme } = plate.view
  const hatch = mark.wash === 'none' ? undefined : theme.washes[mark.wash].hatch
  if (hatch === undefined) return ''
  const spacing = onFloor(hatch.spacingMm, plate.view)
  let d = ''
  for (const ring of ringsOf(mark)) {
    const lines = hatchWithin(ring, hatch.lean, spacing)
    for (let i = 0; i + 3 < lines.length; i += 4) d += runPath(lines.subarray(i, i + 4), false, plate)
  }
  return d === ''
    ? ''
    : `<path d="${d}" fill="none" stroke="${hatch.colour}" stroke-width="${mm(hatch.widthMm)}"/>`
}

const shape = (d: string, mark: ShapeMark, plate: Plate): string =>
  `<path d="${d}" fill="${fillOf(mark.wash, plate.view)}" ${penAttributes(mark.pen, plate.view)}/>${hatchOver(mark, plate)}`

const boxesPath = (boxes: Float64Array, { x, y }: Plate): string => {
  let d = ''
  for (let i = 0; i + 3 < boxes.length; i += 4) {
    const left = mm(x(boxes[i] ?? 0))
    const right = mm(x(boxes[i + 2] ?? 0))
    d += `M${left} ${mm(y(boxes[i + 1] ?? 0))}H${right}V${mm(y(boxes[i + 3] ?? 0))}H${left}Z`
  }
  return d
}

const discsPath = (discs: Float64Array, { x, y, view }: Plate): string => {
  let d = ''
  for (let i = 0; i + 2 < discs.length; i += 3) {
    const radius = mm((discs[i + 2] ?? 0) * view.pxPerMm)
    const across = mm(2 * (discs[i + 2] ?? 0) * view.pxPerMm)
    const left = mm(x((discs[i] ?? 0) - (discs[i + 2] ?? 0)))
    d += `M${left} ${mm(y(discs[i + 1] ?? 0))}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 -${across} 0`
  }
  return d
}

const runPath = (points: Float64Array, closed: boolean, { x, y }: Plate): string => {
  let d = ''
  for (let i = 0; i + 1 < points.length; i += 2)
    d += `${i === 0 ? 'M' : 'L'}${mm(x(points[i] ?? 0))} ${mm(y(points[i + 1] ?? 0))}`
  return closed ? `${d}Z` : d
}

const writeMany = (mark: BoxesMark | DiscsMark, plate: Plate): string =>
  shape(mark.as === 'boxes' ? boxesPath(mark.boxes, plate) : discsPath(mark.discs, plate), mark, plate)

const writeArrows = (mark: PathMark, plate: Plate): string => {
  if (mark.arrows === undefined || mark.pen === 'none') return ''
  const heads = arrowHeads(mark.points, mark.arrows, onFloor(ARROW_MM, plate.view))
  let d = ''
  for (let i = 0; i + 5 < heads.length; i += 6) d += runPath(heads.subarray(i, i + 6), true, plate)
  return `<path d="${d}" fill="${plate.view.theme.pens[mark.pen].colour}"/>`
}

/** Turned about the middle of its capitals, then down by half of them to the baseline. */
const turned = (at: Point, turn: number, { x, y }: Plate): string => {
  const place = `translate(${mm(x(at.x))} ${mm(y(at.y))})`
  return turn === 0 ? place : `${place} rotate(${mm((-turn * 180) / Math.PI)})`
}

const writeWords = (words: Lettering, pen: Pen, plate: Plate): string => {
  if (pen === 'none') return ''
  const { isPlain, view } = plate
  const { theme, pxPerMm } = view
  const height = words.heightMm * pxPerMm
  return (
    `<text transform="${turned(words.at, words.turn, plate)}" y="${mm(height * HALF_CAPITAL)}"` +
    ` font-size="${mm(height)}" text-anchor="${words.anchor}" fill="${theme.pens[pen].colour}"` +
    `${isPlain ? '' : ` stroke-width="${mm(height * HALO)}"`}>${safe(words.text)}</text>`
  )
}

const writeDimension = (mark: DimensionMark, plate: Plate): string => {
  const strokes = dimensionIn(mark, plate.view)
  if (strokes === undefined) return ''
  let d = ''
  for (let i = 0; i + 3 < strokes.lines.length; i += 4)
    d += runPath(strokes.lines.subarray(i, i + 4), false, plate)
  const words = strokes.words.map((line) => writeWords(line, mark.pen, plate))
  return `<path d="${d}" fill="none" ${penAttributes(mark.pen, plate.view)}/>${words.join('')}`
}

const writeMark = (mark: Mark, plate: Plate): string => {
  switch (mark.as) {
    case 'boxes':
    case 'discs':
      return writeMany(mark, plate)
    case 'path': {
      const run = shape(runPath(mark.points, mark.closed, plate), mark, plate)
      return `${run}${writeArrows(mark, plate)}`
    }
    case 'text':
      return writeWords(textLettering(mark, plate.view), mark.pen, plate)
    case 'height':
      return writeWords(heightLettering(mark, plate.view), mark.pen, plate)
    case 'dimension':
      return writeDimension(mark, plate)
  }
}

const plateOf = (item: PageItem, page: Page, theme: Theme): Plate => {
  const { scale, xMm, yMm } = item.placement
  return {
    view: itemView(item, page, theme, 1),
    x: (floorMm) => xMm + floorMm * scale,
    y: (floorMm) => page.paper.heightMm - (yMm + floorMm * scale),
    isPlain: item.isPlain === true,
  }
}

/**
 * Marks in mm of paper as the inside of an SVG whose user unit is a mm and which is `heightMm` high: for drawings of the page that are as
 * large as their room.
 */
export const marksSvg = (marks: readonly Mark[], theme: Theme, heightMm: number): string => {
  const plate: Plate = {
    view: { pxPerMm: 1, pxPerPaperMm: 1, on: 'paper', theme, writer: { length: String } },
    x: (atMm) => atMm,
    y: (atMm) => heightMm - atMm,
    isPlain: false,
  }
  return marks.map((mark) => writeMark(mark, plate)).join('')
}

const writeItem = (item: PageItem, index: number, page: Page, theme: Theme, prefix: string): string => {
  const plate = plateOf(item, page, theme)
  const marks = item.marks.filter((mark) => mark.as === 'dimension' || isNear(mark.nearMm, plate.view))
  const body = marks.map((mark) => writeMark(mark, plate)).join('\n')
  const rim = plate.isPlain ? '' : ' class="rimmed"'
  if (item.clip === undefined) return `<g${rim}>\n${body}\n</g>`
  const { x0, y0, x1, y1 } = item.clip
  const size = `x="${mm(x0)}" y="${mm(page.paper.heightMm - y1)}" width="${mm(x1 - x0)}" height="${mm(y1 - y0)}"`
  return `<clipPath id="${prefix}clip-${index}"><rect ${size}/></clipPath>\n<g${rim} clip-path="url(#${prefix}clip-${index})">\n${body}\n</g>`
}

/**
 * A page as an SVG file of its true size. The same page and theme give the same text, letter for letter. `prefix` keeps the ids of
 * pages that stand in one document apart.
 */
export const pageSvg = (page: Page, theme: Theme, prefix = ''): string => {
  const { widthMm, heightMm } = page.paper
  const size = `width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="0 0 ${mm(widthMm)} ${mm(heightMm)}"`
  const letters = `text{font-family:${theme.font.replace(/"/g, "'")}}.rimmed text{paint-order:stroke;stroke:${theme.sheet};stroke-linejoin:round}`
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size}>`,
    `<title>${safe(page.title)}</title>`,
    `<defs><style>${letters}</style></defs>`,
    `<rect width="100%" height="100%" fill="${theme.sheet}"/>`,
    ...page.items.map((item, index) => writeItem(item, index, page, theme, prefix)),
    '</svg>\n',
  ].join('\n')
}
