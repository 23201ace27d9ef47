import type { Words } from '../checks/context'
import { BENCHMARK_MM } from '../drawing/houseMarks'
import type { Evaluation } from '../evaluate/evaluation'
import { boxOf, middle } from '../geometry/box'
import type { TextMark } from '../model/drawing'
import { AT_THE_PIT } from './cautions'
import { textBox, type ClearWords } from './clearWords'
import { lettered, LETTERS } from './ink'

/** The value of the benchmark, beside it. */
export const benchmarkWords = (
  { bay }: Evaluation,
  ratio: number,
  words: ClearWords,
  write: Words,
): TextMark[] => {
  const { at, valueMm } = bay.house.benchmark
  const text = `BM ${write.length(valueMm)}`
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

/** Words of caution at each pit. */
export const pitWords = ({ bay }: Evaluation, ratio: number, words: ClearWords): TextMark[] =>
  bay.built
    .flatMap(({ bodies }) => bodies.filter(({ role }) => role === 'pit'))
    .flatMap(({ outline }) => {
      const box = boxOf(outline)
      const at = middle(box)
      const aside = 3.4 * ratio
      const style = { anchor: 'middle' } as const
      const tries = [
        ...[aside, -aside].map((dx) =>
          lettered(AT_THE_PIT, { x: at.x + dx, y: at.y }, LETTERS.small, { ...style, upright: true }),
        ),
        ...[box.y0 - aside, box.y1 + aside].map((y) =>
          lettered(AT_THE_PIT, { x: at.x, y }, LETTERS.small, style),
        ),
      ]
      return words.first(tries, (mark) => [textBox(mark, ratio)]) ?? []
    })

/** How much each drain line falls, beside it. */
export const fallWords = ({ bay }: Evaluation, ratio: number, words: ClearWords, write: Words): TextMark[] =>
  [...bay.levels.drains.values()].flatMap(({ slopeMmPerM, high, low }) => {
    const isUpright = Math.abs(low.at.y - high.at.y) > Math.abs(low.at.x - high.at.x)
    const tries = [0.5, 0.3, 0.7].flatMap((share) =>
      [2.4, -2.4, 5, -5].map((aside) => {
        const x = high.at.x + (low.at.x - high.at.x) * share + (isUpright ? aside * ratio : 0)
        const y = high.at.y + (low.at.y - high.at.y) * share + (isUpright ? 0 : aside * ratio)
        return lettered(`falls ${write.fall(slopeMmPerM)}`, { x, y }, LETTERS.small, {
          pen: 'drain',
          anchor: 'middle',
          upright: isUpright,
        })
      }),
    )
    return words.first(tries, (mark) => [textBox(mark, ratio)]) ?? []
  })
