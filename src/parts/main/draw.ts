import { polyOf } from '../../catalogue/pipe'
import type { Built } from '../../model/built'
import type { HeightMark, Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { discMark, lineMark, nameMarks } from '../marks'
import { labelPlace } from '../points'
import type { Main } from './schema'

/** How far the words stand off the line. */
const LABEL_OFF_MM = inches(6)

/** Words at a point from so near on. */
const NEAR_MM = 12

/** How high the pipe lies at each point that has a height of its own. */
const heightMarks = ({ points }: Main): HeightMark[] =>
  points.flatMap(({ x, y, heightMm }) =>
    heightMm === undefined ? [] : [{ as: 'height', pen: 'note', at: { x, y }, heightMm, nearMm: NEAR_MM }],
  )

/** The pump line with the way its water runs, its fittings, its name and size. */
export const drawMain = (part: Main, built: Built): readonly Mark[] => {
  const { odMm, title } = polyOf(part.pipe)
  const { at, upright } = labelPlace(part.points, LABEL_OFF_MM)
  return [
    ...built.tubes.map(({ path }) => lineMark(path, 'water', 'middle')),
    ...built.fittings
      .filter(({ item }) => item.startsWith('elbow'))
      .map(({ at: bend }) => discMark(bend, odMm / 2, 'water', 'paper')),
    ...heightMarks(part),
    ...nameMarks([part.name, title].filter(Boolean).join(', '), at, upright),
  ]
}
