import { middle, boxOf } from '../../geometry/box'
import { inches } from '../../units/length'
import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { discMark, lineMark, nameMarks, shapeMark } from '../marks'
import type { Trough } from './schema'

const OUTLET_RADIUS_MM = inches(1)

/** The trough from above: its lips, an arrow down its fall along every section, its outlet. */
export const drawTrough = (part: Trough, built: Built): readonly Mark[] => {
  const outlines = built.bodies.map(({ outline }) => outline)
  return [
    ...outlines.map((outline) => shapeMark(outline, 'trough', 'trough')),
    ...built.sticks.map(({ from, to }) => lineMark([from, to], 'water', 'middle')),
    ...built.mouths.map(({ at }) => discMark(at, OUTLET_RADIUS_MM, 'trough', 'drain')),
    ...outlines.flatMap((outline) => nameMarks(part.name, middle(boxOf(outline)), part.heading % 180 === 90)),
  ]
}
