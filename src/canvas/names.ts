import type { Box } from '../geometry/box'
import { textWidth } from '../drawing/lettering'
import { letterPx } from '../drawing/view'
import type { Mark, TextMark } from '../model/drawing'
import type { DrawnPart } from './drawnParts'
import { pxOf, type Lens } from './lens'

/** Which words find room on the screen. Words that would lie on other words are left out until one looks nearer. */

/** A part smaller than this on the screen bears no name: there would be more name than part. */
const LEAST_PART_PX = 14

/** The rim that keeps two words apart, as a share of the letter height. */
const RIM = 0.15

const isLargeEnough = ({ box }: DrawnPart, { view }: Lens): boolean =>
  !box || Math.max(box.x1 - box.x0, box.y1 - box.y0) * view.pxPerMm >= LEAST_PART_PX

const isText = (mark: Mark): mark is TextMark => mark.as === 'text'

const startOf = ({ anchor }: TextMark, middle: number, size: number): number => {
  if (anchor === 'middle') return middle - size / 2
  return anchor === 'start' ? middle : middle - size
}

/** Where words lie on the canvas, px. Upright words read from the bottom to the top. */
const boxOf = (mark: TextMark, lens: Lens): Box => {
  const letter = letterPx(mark.paperMm, lens.paint)
  const along = textWidth(mark.text, letter)
  const half = letter * (0.5 + RIM)
  const { x, y } = pxOf(lens, mark.at)
  if (!mark.upright) {
    const x0 = startOf(mark, x, along)
    return { x0, x1: x0 + along, y0: y - half, y1: y + half }
  }
  const y0 = -startOf(mark, -y, along) - along
  return { x0: x - half, x1: x + half, y0, y1: y0 + along }
}

const meets = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1

const isOnScreen = (box: Box, { size }: Lens): boolean =>
  meets(box, { x0: 0, y0: 0, x1: size.width, y1: size.height })

const isShown = ({ nearMm }: TextMark, { view }: Lens): boolean =>
  nearMm === undefined || nearMm * view.pxPerMm >= 1

/** Words in order of need that have room; each keeps the ones after it off its place. */
export const roomyWords = (words: readonly Mark[], lens: Lens): TextMark[] => {
  const taken: Box[] = []
  return words.filter(isText).filter((mark) => {
    if (!isShown(mark, lens)) return false
    const box = boxOf(mark, lens)
    if (!isOnScreen(box, lens) || taken.some((other) => meets(box, other))) return false
    taken.push(box)
    return true
  })
}

/** The most that words may cover of a line that they lie along. */
const MOST_SHARE = 0.75

/** Words that would hide the line that they name are said in few, or not at all. */
const asItBears = ({ box }: DrawnPart, mark: Mark, { view, paint }: Lens): readonly Mark[] => {
  if (mark.as !== 'text' || mark.short === undefined || !box) return [mark]
  const roomPx = MOST_SHARE * Math.max(box.x1 - box.x0, box.y1 - box.y0) * view.pxPerMm
  const letter = letterPx(mark.paperMm, paint)
  const text = [mark.text, mark.short].find((words) => textWidth(words, letter) <= roomPx)
  return text === undefined ? [] : [{ ...mark, text }]
}

/** The names of all parts that are large enough to bear one, in the order of the parts. */
export const namesIn = (parts: readonly DrawnPart[], lens: Lens): readonly Mark[] =>
  parts
    .filter((part) => isLargeEnough(part, lens))
    .flatMap((part) => part.words.flatMap((mark) => asItBears(part, mark, lens)))

/** Where the names of parts stand on the canvas, px. */
export const nameBoxes = (parts: readonly DrawnPart[], lens: Lens): readonly Box[] =>
  roomyWords(namesIn(parts, lens), lens).map((mark) => boxOf(mark, lens))
