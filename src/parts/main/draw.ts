import { polyOf } from '../../catalogue/pipe'
import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { inches } from '../../units/length'
import { discMark, lineMark, nameMarks } from '../marks'
import { labelPlace } from '../points'
import type { Main } from './schema'

/** How far the words stand off the line. */
const LABEL_OFF_MM = inches(6)

/** The pump line with the way its water runs, its fittings, its name and size. */
export const drawMain = (part: Main, built: Built): readonly Mark[] => {
  const { odMm, title } = polyOf(part.pipe)
  const { at, upright } = labelPlace(part.points, LABEL_OFF_MM)
  return [
    ...built.tubes.map(({ path }) => lineMark(path, 'water', 'middle')),
    ...built.fittings
      .filter(({ item }) => item.startsWith('elbow'))
      .map(({ at: bend }) => discMark(bend, odMm / 2, 'water', 'paper')),
    ...nameMarks([part.name, title].filter(Boolean).join(', '), at, upright),
  ]
}
