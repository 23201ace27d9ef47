import { fittingOf } from '../../catalogue/fittings'
import type { Point } from '../../geometry/point'
import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { footprintOutline } from '../footprint'
import { crossMarks, discMark, nameMarks, shapeMark } from '../marks'
import type { Sump } from './schema'
import { bottomOf } from './shape'

const PUMP_RADIUS_MM = inches(4)

/** Where the diagonals of a square meet the circle in it, anticlockwise. */
const onCircle = ({ at, widthMm }: Sump): Point[] => {
  const mm = (widthMm / 2) * Math.SQRT1_2
  return [
    { x: at.x - mm, y: at.y - mm },
    { x: at.x + mm, y: at.y - mm },
    { x: at.x + mm, y: at.y + mm },
    { x: at.x - mm, y: at.y + mm },
  ]
}

/** By the public convention a hole has both diagonals, a round one those of its square; leaning sides end in a hidden line. */
const holeMarks = (part: Sump, outline: readonly Point[]): Mark[] => {
  if (part.shape === 'round')
    return [discMark(part.at, part.widthMm / 2, 'outline', 'pit'), ...crossMarks(onCircle(part), 'hidden')]
  const bottom =
    part.shape === 'sloped' ? [shapeMark(footprintOutline(bottomOf(part)), 'hidden', 'none')] : []
  return [shapeMark(outline, 'outline', 'pit'), ...bottom, ...crossMarks(outline, 'hidden')]
}

/** A hole in the floor, the pumps in it, its name. */
export const drawSump = (part: Sump, built: Built): readonly Mark[] => [
  ...built.bodies.flatMap(({ outline }) => holeMarks(part, outline)),
  ...built.fittings
    .filter(({ item }) => fittingOf(item).noun === 'pump')
    .map(({ at }) => discMark(at, PUMP_RADIUS_MM, 'water', 'paper')),
  ...nameMarks(part.name, part.at),
]
