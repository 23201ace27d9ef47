import type { Point } from '../../geometry/point'
import type { Mark } from '../../model/drawing'
import { discMark } from '../../parts/marks'
import type { Block } from '../block'
import { lettered, LETTERS, shaped } from '../ink'

const RADIUS_MM = 6.5
const HEIGHT_MM = 21

/** The north arrow beside what the plan is; `degrees` clockwise from the plan's up to true north. */
export const northBlock = (degrees: number, words: readonly string[]): Block => ({
  heightMm: HEIGHT_MM,
  draw: (left, top) => {
    const centre = { x: left + RADIUS_MM + 2, y: top - HEIGHT_MM / 2 }
    return [
      ...northArrow(centre, degrees),
      ...words.map((line, i) =>
        lettered(line, { x: left + 2 * RADIUS_MM + 8, y: top - 5 - i * 4.4 }, LETTERS.body),
      ),
    ]
  },
})

const northArrow = (centre: Point, degrees: number): Mark[] => {
  const turn = (degrees * Math.PI) / 180
  /** `ahead` of the centre towards north, `aside` to the east of it. */
  const place = (ahead: number, aside: number): Point => ({
    x: centre.x + ahead * Math.sin(turn) + aside * Math.cos(turn),
    y: centre.y + ahead * Math.cos(turn) - aside * Math.sin(turn),
  })
  const tip = place(RADIUS_MM, 0)
  const notch = place(-RADIUS_MM * 0.45, 0)
  const half = RADIUS_MM * 0.45
  const foot = -RADIUS_MM * 0.85
  return [
    discMark(centre, RADIUS_MM, 'dimension', 'none'),
    shaped([tip, place(foot, half), notch], 'outline', 'post'),
    shaped([tip, place(foot, -half), notch], 'outline', 'paper'),
    lettered('N', place(RADIUS_MM + 2.2, 0), LETTERS.heading, { anchor: 'middle' }),
  ]
}
