import { textWidth } from '../../drawing/lettering'
import type { CanvasLike } from '../../drawing/paint'
import { grown, middle } from '../../geometry/box'
import { between, distance, type Point } from '../../geometry/point'
import type { Evaluation } from '../../evaluate/evaluation'
import type { MainLeg, MainWater, TowerAt } from '../../model/water'
import { nameOf } from '../../store/partNames'
import type { Writer } from '../../units/writer'
import type { Label, Slip } from '../label'
import { pxOf, type Lens } from '../lens'
import { FASTEST_MS } from './scale'
import { towerSpotsOf } from './spots'
import { extremeWords } from './under'

/** Marks and words over the water paint, in px of canvas. */

const RING_PX = 8
const LABEL_OFF_PX = 30
const LABEL_LETTER_PX = 13

const ringAround = (ctx: CanvasLike, { x, y }: Point, { theme }: Lens): void => {
  ctx.setLineDash([])
  for (const [colour, width] of [
    [theme.sheet, 5],
    [theme.ink, 2.5],
  ] as const) {
    ctx.beginPath()
    ctx.moveTo(x + RING_PX, y)
    ctx.arc(x, y, RING_PX, 0, 2 * Math.PI)
    ctx.lineWidth = width
    ctx.strokeStyle = colour
    ctx.stroke()
  }
}

/** A triangle on the ring: it points down from under the least fed tower, and up from over the most fed. */
const pointer = (ctx: CanvasLike, { x, y }: Point, down: 1 | -1, { theme }: Lens): void => {
  const from = y + down * (RING_PX + 3)
  ctx.beginPath()
  ctx.moveTo(x - 6, from)
  ctx.lineTo(x + 6, from)
  ctx.lineTo(x, from + down * 9)
  ctx.closePath()
  ctx.fillStyle = theme.ink
  ctx.fill()
  ctx.lineWidth = 1.5
  ctx.strokeStyle = theme.sheet
  ctx.stroke()
}

interface Extreme {
  readonly which: 'least' | 'most'
  readonly tower: TowerAt
  readonly down: 1 | -1
}

const extremesOf = ({ bay }: Evaluation): readonly Extreme[] => {
  const figures = bay.water.bay
  if (!figures) return []
  return [
    { which: 'least', tower: figures.least, down: 1 },
    { which: 'most', tower: figures.most, down: -1 },
  ]
}

/** Rings the least and the most fed tower of the bay. */
export const drawExtremes = (ctx: CanvasLike, lens: Lens, evaluation: Evaluation): void => {
  for (const { tower, down } of extremesOf(evaluation)) {
    const at = pxOf(lens, tower.at)
    ringAround(ctx, at, lens)
    pointer(ctx, at, down, lens)
  }
}

/** What the rings cover on the canvas, px. */
export const ringBoxes = (lens: Lens, evaluation: Evaluation): readonly Slip[] =>
  extremesOf(evaluation).map(({ tower }) => {
    const { x, y } = pxOf(lens, tower.at)
    return grown({ x0: x, y0: y, x1: x, y1: y }, RING_PX)
  })

/** Down or up on the canvas, whichever way the row's nearer end lies: so the words cover few of its towers. */
const outOfRow = ({ bay }: Evaluation, { part, at }: TowerAt): 1 | -1 => {
  const built = bay.builtOf.get(part)
  const spots = built && towerSpotsOf(built, null)
  return spots && at.y > middle(spots.box).y ? -1 : 1
}

/** `▼ least: Row 2, line 3, station 24: 3.1 gph`, beside the marks. */
export const extremeLabels = (lens: Lens, evaluation: Evaluation): Label[] => {
  const figures = evaluation.bay.water.bay
  if (!figures) return []
  return extremesOf(evaluation).map(({ which, tower, down }) => {
    const { x, y } = pxOf(lens, tower.at)
    const words = extremeWords(which, evaluation, figures, lens.writer)
    const at = { x, y: y + outOfRow(evaluation, tower) * LABEL_OFF_PX }
    return { at, words, triangle: down > 0 ? 'down' : 'up' }
  })
}

/** `5.6 ft/s, over 5.0 ft/s`. */
const speedWords = (velocityMS: number, { velocity }: Writer): string =>
  velocityMS > FASTEST_MS ? `${velocity(velocityMS)}, over ${velocity(FASTEST_MS)}` : velocity(velocityMS)

/** How far the words of a label may stand out beyond its main, as a share of their own length. */
const OUT_BY = 0.5

/** Whether a main is long enough on the screen to bear its label; the fastest of all and one that is too fast always are. */
const bearsLabel = (
  { points, fastestMS }: MainWater,
  words: string,
  most: number,
  { view }: Lens,
): boolean => {
  if (fastestMS >= most || fastestMS > FASTEST_MS) return true
  const long = points.slice(1).reduce((sum, { at }, i) => sum + distance(at, points[i]?.at ?? at), 0)
  return long * view.pxPerMm >= textWidth(words, LABEL_LETTER_PX) * (1 - OUT_BY)
}

/** Each main's fastest stretch with its velocity; mains that are small on the screen leave it out. */
export const velocityLabels = (lens: Lens, { bay, layout }: Evaluation): Label[] => {
  const mains = [...bay.water.mains.values()]
  const most = Math.max(...mains.map(({ fastestMS }) => fastestMS))
  return mains.flatMap((main) => {
    const { part, points, legs, fastestMS } = main
    const index = legs.findIndex(({ velocityMS }: MainLeg) => Math.abs(velocityMS) >= fastestMS)
    const [from, to] = points.slice(index, index + 2)
    const found = layout.parts.find(({ id }) => id === part)
    if (!found || !from || !to || fastestMS === 0) return []
    const words = `${nameOf(found)}: ${speedWords(fastestMS, lens.writer)}`
    return bearsLabel(main, words, most, lens)
      ? [{ at: pxOf(lens, between(from.at, to.at, 0.5)), words }]
      : []
  })
}
