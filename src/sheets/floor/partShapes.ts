import { serviceMarks } from '../../drawing/houseMarks'
import { isOnPaper } from '../../drawing/view'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Mark, TextMark } from '../../model/drawing'

export const isText = (mark: Mark): mark is TextMark => mark.as === 'text'

/**
 * The parts of a row lie over each other: below twice the finest detail they run together into one grey. What lies over
 * all of them, laterals and arrows, needs as much again. From prints at 1:128, 1:192 and 1:360.
 */
const COARSER = { inRow: 2, overRow: 4 } as const

const isOverRow = (mark: Mark): boolean =>
  mark.as === 'path' && (mark.pen === 'water' || mark.arrows !== undefined)

/** False for what would only crowd a row at this scale. */
const isWorthInk = (mark: Mark, ratio: number): boolean =>
  mark.as === 'dimension' ||
  isOnPaper(mark.nearMm, ratio * (isOverRow(mark) ? COARSER.overRow : COARSER.inRow))

/**
 * All shapes on the floor and under it. Racks come first, so that what is buried under them still shows as the hidden
 * line it is.
 */
export const partShapes = ({ bay, marksOf }: Evaluation, ratio: number): Mark[] => {
  const marksAt = (isRow: boolean) =>
    bay.built
      .filter(({ rack }) => (rack !== undefined) === isRow)
      .flatMap(({ part }) => marksOf.get(part) ?? [])
  const rows = marksAt(true).filter((mark) => isWorthInk(mark, ratio))
  return [...rows, ...marksAt(false), ...serviceMarks(bay.house)].filter((mark) => !isText(mark))
}
