import { between, type Point } from '../../geometry/point'
import type { TextMark } from '../../model/drawing'
import { legsOf } from '../../parts/points'

/** Steps aside in letter heights, along and across the words, nearest first. A name further off would seem another part's. */
const STEPS: readonly Point[] = [0, 1.4, -1.4, 2.8, -2.8]
  .flatMap((across) => [0, 2, -2, 4, -4].map((along) => ({ x: along, y: across })))
  .toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y))

const stepped = (mark: TextMark, { x, y }: Point, ratio: number): TextMark => {
  const letter = mark.paperMm * ratio
  const [dx, dy] = mark.upright ? [y, x] : [x, y]
  return { ...mark, at: { x: mark.at.x + dx * letter, y: mark.at.y + dy * letter } }
}

/** Places along a leg as shares of it, its middle first, and beside it in letter heights. */
const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9]
const CLOSE = [0.9, -0.9]
const ASIDE = [...CLOSE, 1.8, -1.8, 2.7, -2.7]

/** Words beside every leg of a run, the longest leg first. */
const beside = (
  mark: TextMark,
  run: readonly Point[],
  asides: readonly number[],
  ratio: number,
): TextMark[] =>
  legsOf(run)
    .toSorted((a, b) => b.lengthMm - a.lengthMm)
    .flatMap(({ from, to }) => {
      const upright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x)
      return asides.flatMap((aside) =>
        SHARES.map((share) => {
          const { x, y } = between(from, to, share)
          const off = aside * mark.paperMm * ratio
          return { ...mark, upright, at: upright ? { x: x - off, y } : { x, y: y + off } }
        }),
      )
    })

/** Places for a name: it may stand off its run by a few lines. */
export const besideRun = (mark: TextMark, run: readonly Point[], ratio: number): TextMark[] =>
  beside(mark, run, ASIDE, ratio)

/** Places for words that say no name, and so must stand at the run itself. */
export const atRun = (mark: TextMark, run: readonly Point[], ratio: number): TextMark[] =>
  beside(mark, run, CLOSE, ratio)

/** Places near where a part would have its name, nearest first. */
export const aroundPlace = (mark: TextMark, ratio: number): TextMark[] =>
  STEPS.map((step) => stepped(mark, step, ratio))
