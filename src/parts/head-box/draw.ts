import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { discMark, nameMarks, shapeMark } from '../marks'
import type { HeadBox } from './schema'

const OUTLET_RADIUS_MM = inches(1.5)

/** A tank on its stand seen from above, as equipment is drawn: hatched like a pit it would vanish over one. */
export const drawHeadBox = (part: HeadBox, built: Built): readonly Mark[] => [
  ...built.bodies.map(({ outline }) => shapeMark(outline, 'outline', 'steel')),
  ...built.mouths.map(({ at }) => discMark(at, OUTLET_RADIUS_MM, 'water', 'paper')),
  ...nameMarks(part.name, part.at),
]
