import { BENCHMARK_MM, benchmarkMarks, houseMarks } from '../../drawing/houseMarks'
import { fitScale } from '../../drawing/paper'
import type { Evaluation } from '../../evaluate/evaluation'
import { type Box, boxOf, middle } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { Mark, TextMark } from '../../model/drawing'
import { lineMark, shapeMark } from '../../parts/marks'
import { type ClearWords, clearWords, isInside, textBox } from '../clearWords'
import { lettered, LETTERS, panel } from '../ink'
import type { FigurePiece } from '../piece'
import { houseCorner } from './houseTables'
import type { RowSquare } from './rowCorners'
import type { Pegging } from './rowTables'

/** Paper about the house for the letters of its corners. */
const EDGE_MM = 7
const MOST_HEIGHT_MM = 120
/** Share of the page that the plan may take, so that words stand on it too. */
const MOST_SHARE = 0.5

const drains = ({ bay }: Evaluation): { name: string; path: readonly Point[] }[] =>
  bay.built.flatMap(({ part, tubes }) =>
    tubes.filter(({ role }) => role === 'drain').map(({ path }) => ({ name: part, path })),
  )

const pits = ({ bay }: Evaluation): { name: string; box: Box }[] =>
  bay.built.flatMap(({ part, bodies }) =>
    bodies.filter(({ role }) => role === 'pit').map(({ outline }) => ({ name: part, box: boxOf(outline) })),
  )

const shapes = (plan: Evaluation, rows: readonly RowSquare[], ratio: number): Mark[] => [
  ...houseMarks(plan.bay.house),
  ...rows.map(({ box }) => panel(box, 'timber', 'none')),
  ...pits(plan).map(({ box }) => panel(box, 'outline', 'pit')),
  ...drains(plan).map(({ path }) => lineMark(path, 'drain')),
  shapeMark(plan.bay.house.outline, 'wall', 'none'),
  ...benchmarkMarks(plan.bay.house, BENCHMARK_MM * ratio),
]

const HEIGHTS = [LETTERS.heading, LETTERS.body, LETTERS.least] as const

/** Words in the middle of a box, in the largest letters that lie within it; where none do, in the least, over its edges. */
const within = (text: string, box: Box, ratio: number): TextMark[] => {
  const isUpright = box.y1 - box.y0 > box.x1 - box.x0
  const tries = HEIGHTS.map((paperMm) =>
    lettered(text, middle(box), paperMm, { anchor: 'middle', upright: isUpright }),
  )
  return tries.filter((mark, i) => i === HEIGHTS.length - 1 || isInside(textBox(mark, ratio), box))
}

const cornerWords = ({ bay: { house } }: Evaluation, ratio: number): TextMark[][] => {
  const centre = middle(boxOf(house.outline))
  const off = 3.6 * ratio
  return house.outline.map((at, i) => [
    lettered(
      houseCorner(i),
      { x: at.x + Math.sign(at.x - centre.x) * off, y: at.y + Math.sign(at.y - centre.y) * off },
      LETTERS.body,
      { anchor: 'middle' },
    ),
    lettered(houseCorner(i), { x: at.x, y: at.y + Math.sign(centre.y - at.y) * off }, LETTERS.least, {
      anchor: 'middle',
    }),
  ])
}

const besideBenchmark = ({ bay: { house } }: Evaluation, ratio: number): TextMark[] => {
  const { at } = house.benchmark
  const off = (BENCHMARK_MM + 2.2) * ratio
  return [
    { x: at.x, y: at.y - off },
    { x: at.x, y: at.y + off },
    { x: at.x + off * 1.2, y: at.y },
    { x: at.x - off * 1.2, y: at.y },
  ].map((place) => lettered('BM', place, LETTERS.body, { anchor: 'middle' }))
}

const besideLine = (text: string, path: readonly Point[], ratio: number): TextMark[] => {
  const [from] = path
  const to = path.at(-1)
  if (!from || !to) return []
  const isUpright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x)
  const off = 2.2 * ratio
  return [0.5, 0.3, 0.7].flatMap((share) =>
    [off, -off].map((aside) => {
      const at = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
      const place = isUpright ? { x: at.x - aside, y: at.y } : { x: at.x, y: at.y + aside }
      return lettered(text, place, LETTERS.small, { anchor: 'middle', upright: isUpright })
    }),
  )
}

/** Names where they find room; a name that finds none stands in the tables. */
const namesOn = (
  plan: Evaluation,
  rows: readonly RowSquare[],
  ratio: number,
  words: ClearWords,
  name: (part: string) => string,
): TextMark[] =>
  [
    ...cornerWords(plan, ratio),
    besideBenchmark(plan, ratio),
    ...rows.map(({ part, box }) => within(name(part), box, ratio)),
    ...pits(plan).map((pit) => within(name(pit.name), pit.box, ratio)),
    ...drains(plan).map((drain) => besideLine(name(drain.name), drain.path, ratio)),
  ].flatMap((tries) => words.first(tries, (mark) => [textBox(mark, ratio)]) ?? [])

/** The whole floor small, to find what the tables name. */
export const planFigure = (
  plan: Evaluation,
  rows: readonly RowSquare[],
  { house, units, write }: Pegging,
): FigurePiece => ({
  as: 'figure',
  caption:
    'What is where: H are corners of the house, BM is the benchmark, boxes are rows from post to post; the south wall is at the foot',
  draw: ({ widthMm, heightMm }) => {
    const box = boxOf(house.outline)
    const floor = { widthMm: box.x1 - box.x0, heightMm: box.y1 - box.y0 }
    const room = {
      widthMm: widthMm - 2 * EDGE_MM,
      heightMm: Math.min(MOST_HEIGHT_MM, heightMm * MOST_SHARE) - 2 * EDGE_MM,
    }
    const scale = fitScale(floor, room, units)
    const { ratio } = scale
    const tallMm = floor.heightMm / ratio + 2 * EDGE_MM
    const left = (widthMm - floor.widthMm / ratio) / 2
    const reach = EDGE_MM * ratio
    const limits = { x0: box.x0 - reach, y0: box.y0 - reach, x1: box.x1 + reach, y1: box.y1 + reach }
    const words = clearWords([], limits)
    return {
      heightMm: tallMm,
      scaleWords: scale.words,
      items: [
        {
          marks: [...shapes(plan, rows, ratio), ...namesOn(plan, rows, ratio, words, write.name)],
          placement: {
            scale: 1 / ratio,
            xMm: left - box.x0 / ratio,
            yMm: EDGE_MM - box.y0 / ratio,
          },
        },
      ],
    }
  },
})
