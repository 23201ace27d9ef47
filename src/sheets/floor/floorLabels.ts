import type { Words } from '../../checks/context'
import { BENCHMARK_MM } from '../../drawing/houseMarks'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, middle, type Box } from '../../geometry/box'
import type { TextMark } from '../../model/drawing'
import { AT_THE_PIT } from '../cautions'
import { isInside, textBox, type ClearWords } from '../clearWords'
import { lettered, LETTERS } from '../ink'
import { atRun } from './namePlaces'
import { shared } from './names'

/** The value of the benchmark, beside it. */
export const benchmarkWords = (
  { bay }: Evaluation,
  ratio: number,
  words: ClearWords,
  write: Words,
): TextMark[] => {
  const { at, valueMm } = bay.house.benchmark
  const text = `BM ${write.plainLevel(valueMm)}`
  const out = (BENCHMARK_MM + 1.2) * ratio
  const place = (dx: number, dy: number, anchor: TextMark['anchor']) =>
    lettered(text, { x: at.x + dx * out, y: at.y + dy * out }, LETTERS.body, { anchor })
  const tries = [
    ...[1.3, -1.3].flatMap((dy) => [place(0, dy, 'middle'), place(-1, dy, 'end'), place(1, dy, 'start')]),
    place(-1, 0, 'end'),
    place(1, 0, 'start'),
  ]
  const clear = words.first(tries, (mark) => [textBox(mark, ratio)])
  return clear === undefined ? tries.slice(0, 1) : [clear]
}

/** The words of caution stand in the column anyway; beside more pits than this they would crowd the plan. */
const MANY_PITS = 4
/** Where words may lie across a pit, shares of its side. */
const ACROSS = [0.3, 0.7, 0.2, 0.8, 0.5]
/** From the edge of a pit to the middle of words beside it, mm of paper. */
const BESIDE_PIT_MM = 2.4

const atPit = (box: Box, ratio: number, words: ClearWords): TextMark[] => {
  const at = middle(box)
  const off = BESIDE_PIT_MM * ratio
  const written = (x: number, y: number, upright: boolean) =>
    lettered(AT_THE_PIT, { x, y }, LETTERS.small, { anchor: 'middle', upright })
  const boxes = (mark: TextMark) => [textBox(mark, ratio)]
  const inside = ACROSS.flatMap((share) => [
    written(box.x0 + (box.x1 - box.x0) * share, at.y, true),
    written(at.x, box.y0 + (box.y1 - box.y0) * share, false),
  ]).filter((mark) => isInside(textBox(mark, ratio), box))
  const beside = [
    ...[box.x0 - off, box.x1 + off].map((x) => written(x, at.y, true)),
    ...[box.y0 - off, box.y1 + off].map((y) => written(at.x, y, false)),
  ]
  const clear = inside.find((mark) => words.take(boxes(mark))) ?? words.firstOffLines(beside, boxes)
  return clear === undefined ? [] : [clear]
}

/** Words of caution at each pit, in it where they can be, and nowhere that they would hide something. */
export const pitWords = ({ bay }: Evaluation, ratio: number, words: ClearWords): TextMark[] => {
  const pits = bay.built.flatMap(({ bodies }) => bodies.filter(({ role }) => role === 'pit'))
  return pits.length > MANY_PITS ? [] : pits.flatMap(({ outline }) => atPit(boxOf(outline), ratio, words))
}

export interface FallWords {
  readonly marks: readonly TextMark[]
  /** What is said once of many. */
  readonly notes: readonly string[]
}

/** Moved from here to where it is lettered. */
const ORIGIN = { x: 0, y: 0 }

/** How much each drain line falls: beside it, once for all where many fall alike, or in a note where it finds no room. */
export const fallWords = ({ bay }: Evaluation, ratio: number, words: ClearWords, write: Words): FallWords => {
  const drains = [...bay.levels.drains].map(([part, { slopeMmPerM, high, low }]) => ({
    name: write.name(part),
    fall: write.fall(slopeMmPerM),
    run: [high.at, low.at],
  }))
  const common = shared(drains.map(({ fall }) => fall))
  const written = drains
    .filter(({ fall }) => fall !== common)
    .map(({ name, fall, run }) => {
      const mark = lettered(`falls ${fall}`, ORIGIN, LETTERS.small, { pen: 'drain', anchor: 'middle' })
      const place = words.first(atRun(mark, run, ratio), (tried) => [textBox(tried, ratio)])
      return place ?? `${name} falls ${fall}.`
    })
  return {
    marks: written.filter((one) => typeof one !== 'string'),
    notes: [
      ...(common === undefined ? [] : [`Drain lines fall ${common}, unless it is written beside them.`]),
      ...written.filter((one) => typeof one === 'string'),
    ],
  }
}
