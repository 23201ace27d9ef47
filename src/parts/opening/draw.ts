import { offset } from '../../geometry/motion'
import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { lineMark, nameMarks, shapeMark } from '../marks'
import { leavesOf, type Leaf } from './leaves'
import type { Opening } from './schema'

/** How far outside the wall the name stands. */
const NAME_OUT_MM = inches(9)

/** The leaf as it stands open, then the arc of its edge, by the public convention. */
const leafMarks = ({ hinge, sweep }: Leaf): readonly Mark[] => [
  lineMark([hinge, ...sweep.slice(-1)], 'outline'),
  lineMark(sweep, 'hidden'),
]

/** A gap in the wall, its leaves and what they keep clear. */
export const drawOpening = (part: Opening, built: Built): readonly Mark[] => {
  const outlines = (role: string) =>
    built.bodies.filter((body) => body.role === role).map(({ outline }) => outline)
  return [
    ...outlines('keep-clear').map((outline) => shapeMark(outline, 'keep-clear', 'keep-clear')),
    ...outlines('door').map((outline) => shapeMark(outline, 'outline', 'paper')),
    ...leavesOf(part).flatMap(leafMarks),
    ...nameMarks(part.name, offset(part.at, part.heading, -NAME_OUT_MM, 0), part.heading % 180 === 0),
  ]
}
