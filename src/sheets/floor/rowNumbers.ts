import { rowBoxes } from '../../checks/standing'
import { textWidth } from '../../drawing/lettering'
import { isOnPaper } from '../../drawing/view'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Box } from '../../geometry/box'
import type { TextMark } from '../../model/drawing'
import { textBox, type ClearWords } from '../clearWords'
import { LETTERS } from '../ink'
import { isText } from './partShapes'

/** How far a number may slide along its row, letter heights: it stays within its rack. */
const SLIDES = [0, 1.2, -1.2, 2.4, -2.4]

const slid = (mark: TextMark, by: number, ratio: number): TextMark => {
  const off = by * mark.paperMm * ratio
  const { x, y } = mark.at
  return { ...mark, at: mark.upright ? { x, y: y + off } : { x: x + off, y } }
}

const HEIGHTS = [LETTERS.heading, LETTERS.body, LETTERS.small] as const

/** The largest letters that stay within a row, mm of paper. */
const nameHeight = ({ text, upright }: TextMark, row: Box | undefined, ratio: number): number => {
  if (row === undefined) return LETTERS.heading
  const [across, along] = upright ? [row.x1 - row.x0, row.y1 - row.y0] : [row.y1 - row.y0, row.x1 - row.x0]
  const fits = (height: number) => height * ratio <= across && textWidth(text, height * ratio) <= along
  return HEIGHTS.find(fits) ?? LETTERS.least
}

/** Rows' names, large enough to find from the door, then the numbers of racks and lines that are clear of them. In mm of floor. */
export const rowNumbers = (
  { bay, layout, marksOf }: Evaluation,
  ratio: number,
  words: ClearWords,
): TextMark[] => {
  const boxes = new Map(rowBoxes(bay.built).map(({ part, box }) => [part, box]))
  const said = layout.parts
    .filter(({ id }) => bay.builtOf.get(id)?.rack !== undefined)
    .flatMap(({ id, name }) =>
      (marksOf.get(id) ?? []).filter(isText).map((mark) => ({ mark, name, box: boxes.get(id) })),
    )
    .filter(({ mark }) => isOnPaper(mark.nearMm, ratio))
  const names = said
    .filter(({ mark, name }) => mark.text === name)
    .map(({ mark, box }) => ({ ...mark, paperMm: nameHeight(mark, box, ratio) }))
  for (const mark of names) words.take([textBox(mark, ratio)])
  const numbers = said
    .filter(({ mark, name }) => mark.text !== name)
    // Lines before racks: a rack's number has its whole rack to slide along, a line's only the row's end.
    .toSorted((a, b) => (a.mark.nearMm ?? 0) - (b.mark.nearMm ?? 0))
    .flatMap(({ mark }) => {
      const tries = SLIDES.map((by) => slid(mark, by, ratio))
      return words.first(tries, (place) => [textBox(place, ratio)]) ?? []
    })
  return [...names, ...numbers]
}
