import type { PageItem } from '../../drawing/page'
import { onPaper } from '../../drawing/page'
import type { Words } from '../../checks/context'
import type { Mark } from '../../model/drawing'
import { textWidth } from '../../drawing/lettering'
import { lettered, LETTERS, panel, ruled, shaped } from '../ink'
import type { FigurePiece } from '../piece'
import type { GutterRun } from './gutterRuns'

const HEIGHT_MM = 46
const SIDE_MM = 12
/** The gutter is drawn so much lower at its low end than at its high end: a sign of the fall, not its size. */
const FALL_MM = 7
const TOP_MM = 32
const BEARER = { widthMm: 2.6, heightMm: 3.2, topMm: 19 }
const SHIM_MM = 1.4
const LETTER_MM = LETTERS.least

/** The line laid out on paper: where a place along it lies, and how high the gutter is drawn there. */
interface Layout {
  readonly x: (fromHighMm: number) => number
  readonly y: (fromHighMm: number) => number
}

const layoutOf = ({ runMm }: GutterRun, widthMm: number): Layout => {
  const scale = (widthMm - 2 * SIDE_MM) / runMm
  return {
    x: (fromHighMm) => SIDE_MM + fromHighMm * scale,
    y: (fromHighMm) => TOP_MM - (fromHighMm / runMm) * FALL_MM,
  }
}

const gutterMarks = ({ runMm, lengths }: GutterRun, { x, y }: Layout): Mark[] => [
  ruled({ x: x(0), y: y(0) }, { x: x(runMm), y: y(runMm) }, 'trough'),
  ruled({ x: x(0), y: y(0) + 2 }, { x: x(runMm), y: y(runMm) + 2 }, 'trough'),
  ...[0, runMm].map((at) => ruled({ x: x(at), y: y(at) }, { x: x(at), y: y(at) + 2 }, 'outline')),
  ...lengths
    .slice(0, -1)
    .map(({ endsMm }) =>
      ruled({ x: x(endsMm), y: y(endsMm) - 1 }, { x: x(endsMm), y: y(endsMm) + 3 }, 'outline'),
    ),
]

const lengthMarks = ({ lengths }: GutterRun, { x, y }: Layout, { onTape }: Words): Mark[] =>
  lengths.map(({ lengthMm, endsMm }) => {
    const middle = endsMm - lengthMm / 2
    return lettered(onTape(lengthMm), { x: x(middle), y: y(middle) + 5 }, LETTER_MM, { anchor: 'middle' })
  })

/** The outlet under the gutter, its name over it and above the lengths, where no shim stands in its way. */
const outletMarks = ({ outletFromHighMm }: GutterRun, { x, y }: Layout): Mark[] => {
  const at = { x: x(outletFromHighMm), y: y(outletFromHighMm) }
  return [
    shaped(
      [
        { x: at.x - 1.2, y: at.y },
        { x: at.x + 1.2, y: at.y },
        { x: at.x, y: at.y - 3 },
      ],
      'water',
      'water',
    ),
    lettered('outlet', { x: at.x, y: at.y + 9 }, LETTER_MM, { anchor: 'middle' }),
  ]
}

/** Bearers under their shims, with their numbers; where they stand too close for all, every second, third and so on has its number. */
const bearerMarks = ({ shims, inRow }: GutterRun, { x, y }: Layout): Mark[] => {
  const alongs = shims.map(({ fromHighMm }) => fromHighMm - (inRow?.beginsMm ?? 0))
  const places = alongs.map(x)
  const apart = Math.min(...places.slice(1).map((place, index) => place - (places[index] ?? 0)), Infinity)
  const wide = textWidth(String(shims.length), LETTER_MM) + 1.5
  const every = Math.max(1, Math.ceil(wide / apart))
  return alongs.flatMap((alongMm, index) => {
    const place = x(alongMm)
    const box = {
      x0: place - BEARER.widthMm / 2,
      x1: place + BEARER.widthMm / 2,
      y0: BEARER.topMm - BEARER.heightMm,
      y1: BEARER.topMm,
    }
    const number = lettered(String(index + 1), { x: place, y: box.y0 - 2.4 }, LETTER_MM, { anchor: 'middle' })
    const stack = { ...box, x0: place - SHIM_MM / 2, x1: place + SHIM_MM / 2, y0: box.y1, y1: y(alongMm) }
    return [
      panel(stack, 'dimension', 'post'),
      panel(box, 'timber', 'timber'),
      ...(index % every === 0 ? [number] : []),
    ]
  })
}

const endMarks = (ends: readonly [high: string, low: string], widthMm: number): Mark[] => [
  lettered(ends[0], { x: SIDE_MM, y: HEIGHT_MM - 4 }, LETTERS.small),
  lettered(ends[1], { x: widthMm - SIDE_MM, y: HEIGHT_MM - 4 }, LETTERS.small, { anchor: 'end' }),
]

/** One line of gutter with its lengths, joints, outlet and bearers, as it is seen from the aisle with its high end to the left. */
export const gutterFigure = (
  run: GutterRun,
  ends: readonly [high: string, low: string],
  write: Words,
): FigurePiece => ({
  as: 'figure',
  caption: 'Lengths over the gutter, bearers by number under it; the fall is drawn larger than it is',
  draw: ({ widthMm }) => {
    const layout = layoutOf(run, widthMm)
    const marks = [
      ...gutterMarks(run, layout),
      ...lengthMarks(run, layout, write),
      ...outletMarks(run, layout),
      ...bearerMarks(run, layout),
      ...endMarks(ends, widthMm),
    ]
    const items: readonly PageItem[] = [{ marks, placement: onPaper }]
    return { heightMm: HEIGHT_MM, items, scaleWords: 'not to scale' }
  },
})
