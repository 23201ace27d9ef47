import { offset } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { Built, Mouth, Stick } from '../../model/built'
import type { BoxesMark, DiscsMark, Mark, Pen, Wash } from '../../model/drawing'
import { inches } from '../../units/length'
import { lineMark, nameMarks, shapeMark } from '../marks'
import { feedMarks } from './drawFeed'
import { frameOf, rowLengthMm, type Frame } from './frame'
import type { RackRow } from './schema'

/** Sticks that are drawn in one operation, and from how near. */
interface Layer {
  readonly marks: readonly string[]
  readonly pen: Pen
  readonly wash: Wash
  readonly nearMm: number
}

/** From the floor up. Each is hidden from afar, when it would be a line of ink and no more. */
const LOWER: readonly Layer[] = [
  { marks: ['BR', 'SP'], pen: 'timber', wash: 'timber', nearMm: 30 },
  { marks: ['BX', 'TT', 'XB', 'SB', 'GB'], pen: 'timber', wash: 'timber', nearMm: 20 },
  { marks: ['GT'], pen: 'trough', wash: 'trough', nearMm: 80 },
]

const UPPER: readonly Layer[] = [
  { marks: ['RL', 'RL-b', 'SV', 'DW'], pen: 'steel', wash: 'steel', nearMm: 40 },
  { marks: ['RS-p', 'RS-s', 'RS-d'], pen: 'timber', wash: 'timber', nearMm: 30 },
  { marks: ['HB'], pen: 'steel', wash: 'steel', nearMm: 20 },
]

const TOWERS_NEAR_MM = 60
const WORDS_NEAR_MM = 30
const LINE_NUMBERS_NEAR_MM = 10
const OUTLET_RADIUS_MM = inches(1.5)

/** Words along a row that runs up the plan are turned to read from the right. */
const isUpright = ({ heading }: RackRow): boolean => heading % 180 === 90

/** Half sizes of a stick seen from above, besides its own run, mm along x and y. */
const halfSizes = ({ from, to, widthMm, heightMm }: Stick, { downhill }: Frame): Point => {
  const alongX = downhill % 180 === 0
  const stands = from.x === to.x && from.y === to.y
  if (stands) return alongX ? { x: widthMm / 2, y: heightMm / 2 } : { x: heightMm / 2, y: widthMm / 2 }
  return Math.abs(to.x - from.x) > Math.abs(to.y - from.y)
    ? { x: 0, y: widthMm / 2 }
    : { x: widthMm / 2, y: 0 }
}

const writeBox = (boxes: Float64Array, index: number, stick: Stick, frame: Frame): void => {
  const { from, to } = stick
  const half = halfSizes(stick, frame)
  boxes[index] = Math.min(from.x, to.x) - half.x
  boxes[index + 1] = Math.min(from.y, to.y) - half.y
  boxes[index + 2] = Math.max(from.x, to.x) + half.x
  boxes[index + 3] = Math.max(from.y, to.y) + half.y
}

const layerMark = (built: Built, frame: Frame, { marks, ...ink }: Layer): BoxesMark => {
  const sticks = built.sticks.filter(({ mark }) => marks.includes(mark))
  const boxes = new Float64Array(sticks.length * 4)
  sticks.forEach((stick, index) => writeBox(boxes, index * 4, stick, frame))
  return { as: 'boxes', ...ink, boxes }
}

const discsAt = (
  mouths: readonly Mouth[],
  radiusMm: number,
  ink: Omit<DiscsMark, 'as' | 'discs'>,
): DiscsMark => {
  const discs = new Float64Array(mouths.length * 3)
  mouths.forEach(({ at }, index) => discs.set([at.x, at.y, radiusMm], index * 3))
  return { as: 'discs', ...ink, discs }
}

const mouthMarks = (part: RackRow, { mouths }: Built): DiscsMark[] => {
  const heads = mouths.filter(({ role }) => role === 'tower-head')
  const outlets = mouths.filter(({ role }) => role === 'trough-outlet')
  return [
    discsAt(outlets, OUTLET_RADIUS_MM, { pen: 'drain', wash: 'drain', nearMm: WORDS_NEAR_MM }),
    discsAt(heads, part.bodyMm / 2, { pen: 'crop', wash: 'paper', nearMm: TOWERS_NEAR_MM }),
  ]
}

/** A dot in a ring, which no tower is. */
const HOLD_RADII_MM = [inches(3), inches(1)]

/** A ground anchor, a tie or a strap from the house: over the riser that it holds, or in its place. */
const holdMarks = ({ fittings }: Built): Mark[] => {
  const places = fittings.filter(
    ({ item }) => item === 'ground-anchor' || item === 'row-tie' || item === 'house-strap',
  )
  if (places.length === 0) return []
  return HOLD_RADII_MM.map((radiusMm, index): DiscsMark => ({
    as: 'discs',
    pen: 'steel',
    wash: index === 0 ? 'paper' : 'steel',
    nearMm: WORDS_NEAR_MM,
    discs: Float64Array.from(places.flatMap(({ at }) => [at.x, at.y, radiusMm])),
  }))
}

const canopyMarks = ({ bodies }: Built): Mark[] =>
  bodies.filter(({ role }) => role === 'canopy').map(({ outline }) => shapeMark(outline, 'crop', 'crop'))

/** One arrow along every trough, down its fall. */
const fallMarks = ({ sticks }: Built, lines: number): Mark[] => {
  const gutters = sticks.filter(({ mark }) => mark === 'GT')
  const sections = gutters.length / lines
  const highEnds = gutters.filter((_, index) => index % sections === 0)
  const lowEnds = gutters.filter((_, index) => index % sections === sections - 1)
  return highEnds.flatMap(({ from }, line) => {
    const low = lowEnds[line]
    return low ? [{ ...lineMark([from, low.to], 'trough', 'middle'), nearMm: TOWERS_NEAR_MM }] : []
  })
}

/** Numbers of the racks along the centreline, and of the lines at the start. */
const numberMarks = (part: RackRow): Mark[] => {
  const pitchMm = part.rackLengthMm / part.barsPerRack
  const number = (index: number, alongMm: number, rightMm: number, nearMm: number): Mark[] =>
    nameMarks(`${index + 1}`, offset(part.at, part.heading, alongMm, rightMm), isUpright(part)).map(
      (mark) => ({ ...mark, nearMm }),
    )
  return [
    ...Array.from({ length: part.racks }, (_, rack) =>
      number(rack, rack * part.rackLengthMm + pitchMm, 0, WORDS_NEAR_MM),
    ),
    ...Array.from({ length: part.lines }, (_, line) =>
      number(line, 0, (line + 1 - (part.lines + 1) / 2) * part.lineSpacingMm, LINE_NUMBERS_NEAR_MM),
    ),
  ].flat()
}

/** The row from above, from the floor up: timber, troughs, rails and bars, towers, water, words. */
export const drawRackRow = (part: RackRow, built: Built): readonly Mark[] => {
  const frame = frameOf(part)
  const nameAt = offset(part.at, part.heading, rowLengthMm(part) / 2, 0)
  return [
    ...canopyMarks(built),
    ...LOWER.map((layer) => layerMark(built, frame, layer)),
    ...fallMarks(built, part.lines),
    ...UPPER.map((layer) => layerMark(built, frame, layer)),
    ...holdMarks(built),
    ...mouthMarks(part, built),
    ...feedMarks(part, built, frame),
    ...numberMarks(part),
    ...nameMarks(part.name, nameAt, isUpright(part)),
  ]
}
