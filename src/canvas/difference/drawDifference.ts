import type { CanvasLike } from '../../drawing/paint'
import type { PlaceChange } from '../../evaluate/compare/placeChanges'
import { boxOf, middle } from '../../geometry/box'
import { between, distance, type Point } from '../../geometry/point'
import type { Label } from '../label'
import { pxOf, type Lens } from '../lens'
import { strokeLine, strokeOutline, type Ink } from '../strokes'

/** What differs from another plan, over the floor: old places dashed, new ones whole, an arrow from one to the other. Asked for when it is switched on. */

const OLD_DASH_PX = [7, 5]
const HEAD_PX = 10
/** A move that is shorter on the screen has no room for an arrow, px. */
const LEAST_ARROW_PX = 14

const inkOf = ({ theme }: Lens, isOld: boolean): Ink =>
  isOld ? { colour: theme.ink, widthPx: 1.75, dashPx: OLD_DASH_PX } : { colour: theme.ink, widthPx: 2.5 }

const strokeAll = (
  ctx: CanvasLike,
  lens: Lens,
  outlines: readonly (readonly Point[])[],
  isOld: boolean,
): void => {
  for (const outline of outlines)
    strokeOutline(
      ctx,
      outline.map((p) => pxOf(lens, p)),
      inkOf(lens, isOld),
    )
}

const drawArrow = (ctx: CanvasLike, lens: Lens, [from, to]: readonly [Point, Point]): void => {
  const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
  const run = distance(a, b)
  if (run < LEAST_ARROW_PX) return
  const way = { x: (b.x - a.x) / run, y: (b.y - a.y) / run }
  strokeLine(ctx, a, b, inkOf(lens, false))
  ctx.beginPath()
  ctx.moveTo(b.x, b.y)
  ctx.lineTo(b.x - HEAD_PX * way.x + (HEAD_PX / 2) * way.y, b.y - HEAD_PX * way.y - (HEAD_PX / 2) * way.x)
  ctx.lineTo(b.x - HEAD_PX * way.x - (HEAD_PX / 2) * way.y, b.y - HEAD_PX * way.y + (HEAD_PX / 2) * way.x)
  ctx.closePath()
  ctx.fillStyle = lens.theme.ink
  ctx.fill()
}

export const drawDifference = (ctx: CanvasLike, changes: readonly PlaceChange[], lens: Lens): void => {
  for (const { from, to, arrow } of changes) {
    strokeAll(ctx, lens, from, true)
    strokeAll(ctx, lens, to, false)
    if (arrow) drawArrow(ctx, lens, arrow)
  }
}

const moveWords = ({ x, y }: Point, { writer }: Lens): string =>
  [
    ...(Math.abs(x) >= 1 ? [`${writer.onTape(Math.abs(x))} ${x > 0 ? 'east' : 'west'}`] : []),
    ...(Math.abs(y) >= 1 ? [`${writer.onTape(Math.abs(y))} ${y > 0 ? 'north' : 'south'}`] : []),
  ].join(', ')

const wordsOf = ({ name, what, by }: PlaceChange, lens: Lens): string => {
  if (what === 'moved') return `${name} moved ${by ? moveWords(by, lens) : ''}`
  return `${name} ${{ added: 'is new', removed: 'is gone', changed: 'has changed' }[what]}`
}

/** A word for each, at its new place; of what is gone at its old one, of what has moved between the two. */
export const differenceLabels = (changes: readonly PlaceChange[], lens: Lens): readonly Label[] =>
  changes.flatMap((change) => {
    const outlines = (change.to.length > 0 ? change.to : change.from).flat()
    if (outlines.length === 0) return []
    const at = change.arrow ? between(...change.arrow, 0.5) : middle(boxOf(outlines))
    return [{ at: pxOf(lens, at), words: wordsOf(change, lens) }]
  })
