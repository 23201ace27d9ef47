import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { discMark, nameMarks, shapeMark } from '../marks'
import type { HeadBox } from './schema'

const OUTLET_RADIUS_MM = inches(1.5)

/** An open tank seen from above: its outline with water in it, and where the mains meet it. */
export const drawHeadBox = (part: HeadBox, built: Built): readonly Mark[] => [
  ...built.bodies.map(({ outline }) => shapeMark(outline, 'outline', 'pit')),
  ...built.mouths.map(({ at }) => discMark(at, OUTLET_RADIUS_MM, 'water', 'paper')),
  ...nameMarks(part.name, part.at),
]
