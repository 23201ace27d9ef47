import { fittings } from '../../catalogue/fittings'
import { stocks } from '../../catalogue/stock'
import type { CanvasLike } from '../../drawing/paint'
import type { Evaluation } from '../../evaluate/evaluation'
import { type Places, placesOf } from '../../evaluate/places'
import { stockAndMark } from '../../evaluate/takeOff/pieces'
import { rememberLast } from '../../model/remember'
import { memberTitle } from '../../model/memberNames'
import { thousands } from '../../units/thousands'
import { pxOf, type Lens } from '../lens'
import type { Label } from '../label'

/** What points out on the plan where the pieces of a counted thing are. Asked for when the first line is shown. */

const placesIn = rememberLast(placesOf)

/** Pieces nearer to each other on the screen than this share a ring, px. */
const CELL_PX = 36
const RING_PX = 8
const COUNT_PX = 12
/** Of the disc that holds a number of one digit, two and so on, and of five and more. */
const DISC_PX = [8, 9, 11, 13, 16, 20] as const

/** Pieces that stand close together on the screen. */
interface Crowd {
  x: number
  y: number
  count: number
}

const isSeen = (x: number, y: number, { size }: Lens): boolean =>
  x >= -RING_PX && y >= -RING_PX && x <= size.width + RING_PX && y <= size.height + RING_PX

/** Those of one part that can be seen, gathered by the squares of a grid over the screen; x and y are the middle of each crowd, px. */
const crowdsOf = ({ points, owners }: Places, lens: Lens): readonly Crowd[] => {
  const crowds = new Map<string, Crowd>()
  for (let i = 0; i + 1 < points.length; i += 2) {
    const { x, y } = pxOf(lens, { x: points[i] ?? 0, y: points[i + 1] ?? 0 })
    if (!isSeen(x, y, lens)) continue
    const cell = `${owners[i / 2] ?? ''} ${Math.floor(x / CELL_PX)} ${Math.floor(y / CELL_PX)}`
    const crowd = crowds.get(cell)
    if (crowd) {
      crowd.x += (x - crowd.x) / (crowd.count + 1)
      crowd.y += (y - crowd.y) / (crowd.count + 1)
      crowd.count += 1
    } else crowds.set(cell, { x, y, count: 1 })
  }
  return [...crowds.values()]
}

const radiusOf = ({ count }: Crowd): number =>
  count === 1 ? RING_PX : (DISC_PX[Math.min(String(count).length, DISC_PX.length - 1)] ?? RING_PX)

/** A number that another ring lies on can't be read; two single rings may well cross. */
const isOver = (a: Crowd, b: Crowd): boolean => {
  const reach = a.count === 1 && b.count === 1 ? RING_PX : radiusOf(a) + radiusOf(b)
  return Math.hypot(a.x - b.x, a.y - b.y) < reach
}

const together = (a: Crowd, b: Crowd): Crowd => {
  const count = a.count + b.count
  return { x: a.x + ((b.x - a.x) * b.count) / count, y: a.y + ((b.y - a.y) * b.count) / count, count }
}

/** Rings that lie on each other become one, in the middle of all their pieces. */
const apart = (crowds: readonly Crowd[]): readonly Crowd[] => {
  const kept: Crowd[] = []
  for (const each of crowds) {
    let crowd = each
    for (let at = kept.findIndex((other) => isOver(other, crowd)); at >= 0;) {
      const [other] = kept.splice(at, 1)
      if (other) crowd = together(other, crowd)
      at = kept.findIndex((next) => isOver(next, crowd))
    }
    kept.push(crowd)
  }
  return kept
}

/** What is ringed on the screen: no number lies on another. */
export const crowdsIn = rememberLast((places: Places, lens: Lens) => apart(crowdsOf(places, lens)))

const strokeTwice = (ctx: CanvasLike, { theme }: Lens, inkPx: number): void => {
  ctx.setLineDash([])
  for (const [colour, widthPx] of [
    [theme.sheet, inkPx + 3],
    [theme.ink, inkPx],
  ] as const) {
    ctx.strokeStyle = colour
    ctx.lineWidth = widthPx
    ctx.stroke()
  }
}

const strokeLines = (ctx: CanvasLike, { lines }: Places, lens: Lens): void => {
  ctx.beginPath()
  for (let i = 0; i + 3 < lines.length; i += 4) {
    const from = pxOf(lens, { x: lines[i] ?? 0, y: lines[i + 1] ?? 0 })
    const to = pxOf(lens, { x: lines[i + 2] ?? 0, y: lines[i + 3] ?? 0 })
    ctx.moveTo(from.x, from.y)
    ctx.lineTo(to.x, to.y)
  }
  ctx.lineCap = 'butt'
  strokeTwice(ctx, lens, 2.5)
}

const traceRings = (ctx: CanvasLike, crowds: readonly Crowd[]): void => {
  ctx.beginPath()
  for (const crowd of crowds) {
    const radius = radiusOf(crowd)
    ctx.moveTo(crowd.x + radius, crowd.y)
    ctx.arc(crowd.x, crowd.y, radius, 0, 2 * Math.PI)
  }
}

/** A single piece is seen through its ring; a crowd stands as a number on paper. */
const drawRings = (ctx: CanvasLike, crowds: readonly Crowd[], lens: Lens): void => {
  const many = crowds.filter(({ count }) => count > 1)
  traceRings(ctx, many)
  ctx.fillStyle = lens.theme.sheet
  ctx.fill()
  traceRings(ctx, crowds)
  strokeTwice(ctx, lens, 2)
  ctx.font = `650 ${COUNT_PX}px ${lens.theme.font}`
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  ctx.fillStyle = lens.theme.ink
  for (const { x, y, count } of many) ctx.fillText(String(count), x, y + 1)
}

/** A ring about every piece, or about as many as stand together with their number; a line along what is long. */
export const drawPlaces = (ctx: CanvasLike, evaluation: Evaluation, item: string, lens: Lens): void => {
  const places = placesIn(evaluation, item)
  const crowds = crowdsIn(places, lens)
  if (places.lines.length > 0) strokeLines(ctx, places, lens)
  if (crowds.length > 0) drawRings(ctx, crowds, lens)
}

/** What an item is called: the thing's title, or the member that is cut and its stock. */
const itemWords = (item: string): string => {
  const counted = fittings.find(({ key }) => key === item)
  if (counted) return counted.title
  const [key, mark] = stockAndMark(item)
  const title = stocks.find((stock) => stock.key === key)?.title ?? key
  return mark === undefined ? title : `${memberTitle(mark)}, ${title}`
}

/** What is pointed out and how to be rid of it, at the head of the plan. */
export const placesLabel = (evaluation: Evaluation, item: string): Label => {
  const { count } = placesIn(evaluation, item)
  const words = `${itemWords(item)}: ${count === 0 ? 'none in this bay' : `${thousands(count)} pointed out`}. Esc clears.`
  return { at: { x: 0, y: 0 }, words, isFirm: true }
}
