import { drainPipeOf } from '../../catalogue/pipe'
import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { discMark, lineMark, nameMarks, shapeMark } from '../marks'
import { labelPlace } from '../points'
import type { DrainLine } from './schema'

/** The buried line with its fall arrows, the trench it needs, its cleanouts, its name and size. */
export const drawDrainLine = (part: DrainLine, built: Built): readonly Mark[] => {
  const { odMm, title } = drainPipeOf(part.pipe)
  const { at, upright } = labelPlace(part.points, part.trenchMm)
  return [
    ...built.bodies.map(({ outline }) => shapeMark(outline, 'hidden', 'none')),
    ...built.tubes.map(({ path }) => lineMark(path, 'drain', 'middle')),
    ...built.fittings
      .filter(({ item }) => item.startsWith('drain-cleanout'))
      .map((cleanout) => discMark(cleanout.at, odMm / 2, 'drain', 'paper')),
    ...nameMarks([part.name, title].filter(Boolean).join(', '), at, upright).map((mark) => ({
      ...mark,
      short: part.name || title,
    })),
  ]
}
