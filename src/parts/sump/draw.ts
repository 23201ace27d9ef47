import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { crossMarks, discMark, nameMarks, shapeMark } from '../marks'
import type { Sump } from './schema'

const PUMP_RADIUS_MM = inches(4)

/** A hole in the floor, by the public convention: its outline and both diagonals. */
export const drawSump = (part: Sump, built: Built): readonly Mark[] => [
  ...built.bodies.flatMap(({ outline }) => [
    shapeMark(outline, 'outline', 'pit'),
    ...crossMarks(outline, 'hidden'),
  ]),
  ...built.fittings
    .filter(({ item }) => item === 'pump')
    .map(({ at }) => discMark(at, PUMP_RADIUS_MM, 'water', 'paper')),
  ...nameMarks(part.name, part.at),
]
