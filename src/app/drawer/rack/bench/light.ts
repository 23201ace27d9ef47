import type { Mark } from '../../../../model/drawing'
import { lineMark, shapeMark } from '../../../../parts/marks'
import type { Frame } from '../../../../evaluate/loads/frame'
import type { RackBuilt } from '../../../../sheets/assembly/rowBuilt'
import { type Laid, onSheet, type View } from '../../../../sheets/assembly/shapes'
import { panel } from '../../../../sheets/ink'
import { footOf } from './levels'
import { risersOf, type Stretch } from './stretch'

const distinct = (places: readonly number[]): readonly number[] => [
  ...new Set(places.map((mm) => Math.round(mm))),
]

/** Towers as thin outlines, body and tip: they hide nothing. */
export const towerMarks = (
  { towers, rack }: Frame,
  { fromU, toU }: Stretch,
  view: View,
  laid: Laid,
): readonly Mark[] => {
  const hung = towers.filter(({ u }) => u >= fromU && u <= toU)
  const topMm = hung[0]?.z ?? 0
  const { bodyMm, tipWidthMm, tipMm } = rack
  const bodyToMm = Math.min(topMm, tipMm + 2 * bodyMm)
  return distinct(hung.map((at) => view.across(at))).flatMap((x) => {
    const outline = [
      [-bodyMm, topMm],
      [-bodyMm, bodyToMm],
      [-tipWidthMm, tipMm],
      [tipWidthMm, tipMm],
      [bodyMm, bodyToMm],
      [bodyMm, topMm],
    ].map(([wide = 0, z = 0]) => onSheet(laid, { x: x + wide / 2, y: z }))
    const hook = [topMm, rack.barTopMm].map((z) => onSheet(laid, { x, y: z }))
    return [shapeMark(outline, 'crop', 'none'), lineMark(hook, 'crop')]
  })
}

/** What risers stand on. */
export const plateMarks = (
  frame: Frame,
  plate: RackBuilt['plate'],
  { fromU, toU }: Stretch,
  view: View,
  laid: Laid,
): readonly Mark[] => {
  if (!plate) return []
  const half = view.looks === 'along' ? plate.acrossMm : plate.alongMm
  const risers = risersOf(frame).filter(
    ({ from }) => from.u > fromU - plate.alongMm && from.u < toU + plate.alongMm,
  )
  return distinct(risers.map(({ from }) => view.across(from))).map((x) => {
    const low = onSheet(laid, { x: x - half, y: 0 })
    const high = onSheet(laid, { x: x + half, y: footOf(frame) })
    return panel({ x0: low.x, y0: low.y, x1: high.x, y1: high.y }, 'outline', 'none')
  })
}

/** Where the row runs on: a zigzag, after ISO 128-2. */
export const breakMarks = (breaks: readonly number[], topMm: number, laid: Laid): readonly Mark[] =>
  breaks.map((u) => {
    const x = laid.x + u * laid.scale
    const [low, high] = [laid.y - 1, laid.y + topMm * laid.scale + 1]
    const middle = (low + high) / 2
    const points = [
      { x, y: low },
      { x, y: middle - 1.6 },
      { x: x - 1.2, y: middle - 0.6 },
      { x: x + 1.2, y: middle + 0.6 },
      { x, y: middle + 1.6 },
      { x, y: high },
    ]
    return lineMark(points, 'dimension')
  })
