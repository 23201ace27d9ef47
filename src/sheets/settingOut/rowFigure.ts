import type { Box } from '../../geometry/box'
import { between, type Point } from '../../geometry/point'
import { onPaper } from '../../drawing/page'
import type { Mark } from '../../model/drawing'
import { discMark } from '../../parts/marks'
import { fromWalls } from '../baseline'
import { lettered, LETTERS, panel, ruled } from '../ink'
import type { FigurePiece } from '../piece'
import { type Corner, cornersOf, type RowSquare } from './rowCorners'
import { type Pegging, sidesOf } from './rowTables'
import { squareOn } from './squares'

const WIDTH_MM = 176
const HEIGHT_MM = 78
/** Strings along the two walls. */
const WALLS = { x: 9, y: 9 }
/** The row as it is drawn, whatever its own shape. */
const DRAWN: Box = { x0: 66, x1: 132, y0: 29, y1: 68 }
/** Legs of the drawn 3-4-5 triangle. */
const TRIANGLE = { x: 15, y: 20 }
const TICK_MM = 1.4
const LINE_MM = 3.6

/** A tape from a string to a place, with a tick at either end and its reading beside. */
const tape = (from: Point, to: Point, text: string): Mark[] => {
  const isUpright = from.x === to.x
  const tick = (p: Point) =>
    ruled({ x: p.x - TICK_MM, y: p.y - TICK_MM }, { x: p.x + TICK_MM, y: p.y + TICK_MM }, 'dimension')
  const at = between(from, to, isUpright ? 0.45 : 0.5)
  return [
    ruled(from, to, 'dimension'),
    tick(from),
    tick(to),
    lettered(text, isUpright ? { x: at.x + 2, y: at.y } : { x: at.x, y: at.y + 2 }, LETTERS.body, {
      anchor: 'middle',
      upright: isUpright,
    }),
  ]
}

const AWAY: Readonly<Record<Corner, Point>> = {
  A: { x: -1, y: -1 },
  B: { x: 1, y: -1 },
  C: { x: 1, y: 1 },
  D: { x: -1, y: 1 },
}

const drawnAt = (corner: Corner): Point =>
  cornersOf(DRAWN).find((one) => one.corner === corner)?.at ?? { x: 0, y: 0 }

/** The letter of a corner, outside of it. */
const letterMark = (corner: Corner): Mark => {
  const at = drawnAt(corner)
  return lettered(corner, { x: at.x + AWAY[corner].x * 3.4, y: at.y + AWAY[corner].y * 3.4 }, LETTERS.title, {
    anchor: 'middle',
  })
}

const lines = (texts: readonly string[], at: Point): Mark[] =>
  texts.map((text, i) => lettered(text, { x: at.x, y: at.y - i * LINE_MM }, LETTERS.body))

const stringMarks = (): Mark[] => [
  ruled({ x: WALLS.x, y: 3 }, { x: WALLS.x, y: HEIGHT_MM - 2 }, 'wall'),
  ruled({ x: 3, y: WALLS.y }, { x: WIDTH_MM - 2, y: WALLS.y }, 'wall'),
  lettered('string along the west wall', { x: WALLS.x - 3.4, y: 46 }, LETTERS.small, {
    anchor: 'middle',
    upright: true,
  }),
  lettered('string along the south wall', { x: WIDTH_MM - 4, y: WALLS.y - 3.4 }, LETTERS.small, {
    anchor: 'end',
  }),
]

/** Pairs of feet, as many as there are, along the drawn row. */
const feetMarks = ({ pairsMm, runs, box }: RowSquare): Mark[] => {
  const [low, high] = runs === 'x' ? [box.x0, box.x1] : [box.y0, box.y1]
  const span = high - low
  const room = runs === 'x' ? DRAWN.x1 - DRAWN.x0 : DRAWN.y1 - DRAWN.y0
  return pairsMm.flatMap((mm) => {
    const at = ((mm - low) / span) * room
    const both =
      runs === 'x'
        ? [DRAWN.y0 + 2, DRAWN.y1 - 2].map((y) => ({ x: DRAWN.x0 + at, y }))
        : [DRAWN.x0 + 2, DRAWN.x1 - 2].map((x) => ({ x, y: DRAWN.y0 + at }))
    return both.map((p) => discMark(p, 0.7, 'timber', 'timber'))
  })
}

const squareMarks = (): Mark[] => {
  const a = drawnAt('A')
  return [ruled({ x: a.x + TRIANGLE.x, y: a.y }, { x: a.x, y: a.y + TRIANGLE.y }, 'water')]
}

const squareWords = (row: RowSquare, { units, write }: Pegging): readonly string[] => {
  const { abMm, adMm } = sidesOf(row)
  const square = squareOn(adMm, abMm, units)
  if (!square) return []
  return [
    '3-4-5 at A:',
    `${write.length(square.acrossMm)} towards B`,
    `${write.length(square.alongMm)} towards D`,
    `${write.length(square.betweenMm)} from mark to mark`,
  ]
}

const rowMarks = (row: RowSquare, pegging: Pegging): Mark[] => {
  const { write, house } = pegging
  const { abMm, adMm, acMm, bdMm } = sidesOf(row)
  const { westMm, southMm } = fromWalls(house, { x: row.box.x0, y: row.box.y0 })
  const [a, b, c, d] = (['A', 'B', 'C', 'D'] as const).map(drawnAt)
  if (!a || !b || !c || !d) return []
  return [
    panel(DRAWN, 'timber', 'none'),
    ...feetMarks(row),
    ruled(a, c, 'centre'),
    ruled(b, d, 'centre'),
    ...squareMarks(),
    ...tape({ x: WALLS.x, y: a.y }, a, write.length(westMm)),
    ...tape({ x: a.x, y: WALLS.y }, a, write.length(southMm)),
    lettered(`A to B ${write.length(abMm)}`, { x: (a.x + b.x) / 2, y: a.y - 3 }, LETTERS.body, {
      anchor: 'middle',
    }),
    lettered(`A to D ${write.length(adMm)}`, { x: a.x - 3, y: (a.y + d.y) / 2 + 3 }, LETTERS.body, {
      anchor: 'middle',
      upright: true,
    }),
    ...(['A', 'B', 'C', 'D'] as const).map(letterMark),
    ...lines(
      [
        write.name(row.part),
        `Diagonal A to C: ${write.length(acMm)}`,
        `Diagonal B to D: ${write.length(bdMm)}`,
        ...squareWords(row, pegging),
      ],
      { x: DRAWN.x1 + 8, y: DRAWN.y1 - 6 },
    ),
  ]
}

/** One row with its corners, sides and diagonals, and how it is read from the two walls. */
export const rowFigure = (row: RowSquare, pegging: Pegging): FigurePiece => ({
  as: 'figure',
  caption: `${pegging.write.name(row.part)} as an example; every row is pegged so. Dots are posts`,
  draw: ({ widthMm, heightMm }) => {
    const scale = Math.min(1, widthMm / WIDTH_MM, heightMm / HEIGHT_MM)
    return {
      heightMm: HEIGHT_MM * scale,
      items: [{ marks: [...stringMarks(), ...rowMarks(row, pegging)], placement: { ...onPaper, scale } }],
      scaleWords: 'not to scale',
    }
  },
})
