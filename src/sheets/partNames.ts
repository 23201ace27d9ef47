import { serviceMarks } from '../drawing/houseMarks'
import { isOnPaper } from '../drawing/view'
import type { Evaluation } from '../evaluate/evaluation'
import type { Point } from '../geometry/point'
import type { Mark, TextMark } from '../model/drawing'
import type { PartId } from '../model/ids'
import { textBox, type ClearWords } from './clearWords'
import { LETTERS } from './ink'

export const isText = (mark: Mark): mark is TextMark => mark.as === 'text'

/** Words of a row stay where they number its racks and lines; names of other parts may step aside. */
export interface PartWords {
  readonly rows: readonly TextMark[]
  readonly others: readonly TextMark[]
}

/** More parts than this that differ by a number only are lettered at the ends of the series alone. */
const LONG_SERIES = 4

/** Parts in the middle of a long series, such as the legs of a house wall. */
const innerOfSeries = (parts: readonly { readonly id: PartId; readonly name: string }[]): Set<PartId> => {
  const series = new Map<string, PartId[]>()
  for (const { id, name } of parts) {
    const stem = name.replace(/\s*[0-9]+$/, '')
    series.set(stem, [...(series.get(stem) ?? []), id])
  }
  return new Set([...series.values()].flatMap((ids) => (ids.length > LONG_SERIES ? ids.slice(1, -1) : [])))
}

/** The words that parts say of themselves on paper at a scale, rows' names large enough to find from the door. */
export const partWords = ({ bay, layout, marksOf }: Evaluation, ratio: number): PartWords => {
  const isRow = new Set(bay.built.flatMap(({ part, rack }) => (rack === undefined ? [] : [part])))
  const wordsOf = (id: PartId) =>
    (marksOf.get(id) ?? []).filter(isText).filter(({ nearMm }) => isOnPaper(nearMm, ratio))
  const rows = layout.parts.filter(({ id }) => isRow.has(id))
  const others = layout.parts.filter(({ id }) => !isRow.has(id))
  const inner = innerOfSeries(others)
  return {
    rows: rows.flatMap(({ id, name }) =>
      wordsOf(id).map((mark) => (mark.text === name ? { ...mark, paperMm: LETTERS.heading } : mark)),
    ),
    others: [
      ...others.filter(({ id }) => !inner.has(id)).flatMap(({ id }) => wordsOf(id)),
      ...serviceMarks(bay.house).filter(isText),
    ],
  }
}

/** Everything else on the floor. Racks come first, so that what is buried under them still shows as the hidden line it is. */
export const partShapes = ({ bay, marksOf }: Evaluation): Mark[] => {
  const racksFirst = bay.built.toSorted((a, b) => Number(b.rack !== undefined) - Number(a.rack !== undefined))
  const marks = [...racksFirst.flatMap(({ part }) => marksOf.get(part) ?? []), ...serviceMarks(bay.house)]
  return marks.filter((mark) => !isText(mark))
}

/** Steps aside in letter heights, along and across the words, nearest first. A name further off would seem another part's. */
const STEPS: readonly Point[] = [0, 1.4, -1.4, 2.8, -2.8]
  .flatMap((across) => [0, 2, -2, 4, -4].map((along) => ({ x: along, y: across })))
  .toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y))

const aside = (mark: TextMark, { x, y }: Point, ratio: number): TextMark => {
  const letter = mark.paperMm * ratio
  const [dx, dy] = mark.upright ? [y, x] : [x, y]
  return { ...mark, at: { x: mark.at.x + dx * letter, y: mark.at.y + dy * letter } }
}

/** Names where they are clear of other words, at their part. Short names go first: a pit's can't slide along it as a pipe's can. */
export const clearNames = (names: readonly TextMark[], ratio: number, words: ClearWords): TextMark[] =>
  names
    .toSorted((a, b) => a.text.length - b.text.length)
    .flatMap((name) => {
      const tries = STEPS.map((step) => aside(name, step, ratio))
      return words.first(tries, (mark) => [textBox(mark, ratio)]) ?? []
    })
