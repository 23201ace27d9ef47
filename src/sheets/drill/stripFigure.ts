import { textWidth } from '../../drawing/lettering'
import type { Hole } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { memberName } from '../../model/memberNames'
import type { Units } from '../../units/length'
import type { Writer } from '../../units/writer'
import { lettered, LETTERS, ruled } from '../ink'
import type { Drawn, FigurePiece } from '../piece'
import { bottomOf, type DrilledKind } from './drilledKinds'
import { kindMark } from './drillWords'
import { tapeStep, type Strip, type Tile } from './stripTiles'

/** What one tile is drawn from. Everything on it lies in mm from the member's foot, and from the middle of its face. */
export interface TileSubject {
  readonly kind: DrilledKind
  readonly strip: Strip
  readonly tile: Tile
  /** Tiles that are printed, to tell which neighbours there are to match. */
  readonly printed: ReadonlySet<number>
  readonly units: Units
  readonly write: Writer
}

/** From an end of a tile to its first words: the words along the end stand there. */
const END_MM = 13
const HOLE_LETTER_MM = 4
const MARK_LETTER_MM = 8
const CLEAR_MM = 1.6

const holesOn = ({ kind, tile }: TileSubject): readonly Hole[] =>
  kind.holes.filter(
    ({ centreMm, diameterMm }) =>
      centreMm - diameterMm / 2 >= tile.fromMm && centreMm + diameterMm / 2 <= tile.toMm,
  )

/** Edges of the member, its foot and its top; where the strip goes on, a thin end to cut at. */
const outline = ({ kind, tile }: TileSubject, half: number): Mark[] => {
  const { fromMm, toMm } = tile
  const isTop = toMm >= kind.lengthMm
  const across = (x: number, pen: 'wall' | 'outline' | 'hidden') =>
    ruled({ x, y: -half }, { x, y: half }, pen)
  const isWhole = half >= kind.faceMm / 2
  return [
    ...(isWhole ? [-half, half] : []).map((y) => ruled({ x: fromMm, y }, { x: toMm, y }, 'outline')),
    across(fromMm, fromMm === 0 ? 'wall' : 'hidden'),
    across(toMm, isTop ? 'outline' : 'hidden'),
  ]
}

/** The tape along the lower edge: every number is that many inches or mm from the foot. */
const tapeMarks = ({ tile, units }: TileSubject, half: number): Mark[] => {
  const { numberMm, markMm } = tapeStep(units)
  const first = Math.ceil(tile.fromMm / markMm - 1e-9)
  const last = Math.floor(tile.toMm / markMm + 1e-9)
  const perNumber = Math.round(numberMm / markMm)
  return Array.from({ length: last - first + 1 }, (_, i) => first + i).flatMap((step) => {
    const x = step * markMm
    const isNumber = step % perNumber === 0
    const tick = ruled({ x, y: -half }, { x, y: -half + (isNumber ? 3 : 1.6) }, 'outline')
    const isClear = x > tile.fromMm + 2 && x < tile.toMm - 2
    if (!isNumber || !isClear) return [tick]
    const number = units === 'metric' ? Math.round(x) : step / perNumber
    return [tick, lettered(String(number), { x, y: -half + 5 }, LETTERS.small, { anchor: 'middle' })]
  })
}

/** Right of the hole's middle where it fits on the tile, else left of its bottom. */
const beside = (
  text: string,
  y: number,
  { hole, tile, side }: { readonly hole: Hole; readonly tile: Tile; readonly side: 'above' | 'below' },
): Mark => {
  const width = textWidth(text, HOLE_LETTER_MM)
  const right = hole.centreMm + CLEAR_MM
  const left = bottomOf(hole) - CLEAR_MM
  const fitsRight = right + width <= tile.toMm - 1
  const fitsLeft = left - width >= tile.fromMm + END_MM
  const goesRight = side === 'above' ? fitsRight || !fitsLeft : fitsRight && !fitsLeft
  return goesRight
    ? lettered(text, { x: right, y }, HOLE_LETTER_MM)
    : lettered(text, { x: left, y }, HOLE_LETTER_MM, { anchor: 'end' })
}

const circle = ({ centreMm, diameterMm, asideMm = 0 }: Hole): Mark => ({
  as: 'discs',
  pen: 'outline',
  wash: 'none',
  discs: Float64Array.of(centreMm, asideMm, diameterMm / 2),
})

/** A hole at its size, and the cross of its centre. */
const bareHole = (hole: Hole, half: number): Mark[] => {
  const { centreMm: x, diameterMm, asideMm: y = 0 } = hole
  const r = diameterMm / 2
  return [
    circle(hole),
    ruled({ x: x - r - 4, y }, { x: x + r + 4, y }, 'dimension'),
    ruled({ x, y: y - r - 4 }, { x, y: half - 2 }, 'dimension'),
  ]
}

const offWords = ({ asideMm = 0 }: Hole, abreast: number, { onTape }: Writer): string => {
  if (asideMm === 0) return ''
  return `, ${abreast > 1 ? 'each ' : ''}${onTape(Math.abs(asideMm))} off the middle`
}

/** Holes side by side, the tick of their bottom, and how far both are from the foot. */
const holeMarks = (
  holes: readonly [Hole, ...Hole[]],
  { kind, tile, write }: TileSubject,
  half: number,
): Mark[] => {
  const [hole] = holes
  const { centreMm: x, diameterMm } = hole
  const low = Math.min(...holes.map(({ asideMm = 0 }) => asideMm)) - diameterMm / 2
  const bottom = bottomOf(hole)
  const bit = `Bit ${write.onTape(diameterMm)}${offWords(hole, holes.length, write)}`
  const lies = kind.passing ? `${bit}, for the ${kind.passing.name}` : bit
  const reach = textWidth(lies, HOLE_LETTER_MM) / 2
  const bitX = Math.min(tile.toMm - 1 - reach, Math.max(tile.fromMm + END_MM + reach, x))
  return [
    ...holes.flatMap((each) => bareHole(each, half)),
    ruled({ x: bottom, y: low - 4 }, { x: bottom, y: half - 9 }, 'outline'),
    beside(`Centre ${write.onTape(x)}`, half - 5, { hole, tile, side: 'above' }),
    beside(`Bottom ${write.onTape(bottom)}`, half - 11.5, { hole, tile, side: 'below' }),
    lettered(lies, { x: bitX, y: low - 8 }, HOLE_LETTER_MM, { anchor: 'middle' }),
  ]
}

/** Holes at one height together. */
const abreast = (holes: readonly Hole[]): readonly (readonly [Hole, ...Hole[]])[] => {
  const groups = new Map<number, [Hole, ...Hole[]]>()
  for (const hole of holes) {
    const group = groups.get(hole.centreMm)
    if (group) group.push(hole)
    else groups.set(hole.centreMm, [hole])
  }
  return [...groups.values()]
}

/** What a tile's end says: the foot, or how far from the foot it is laid. */
const endWords = ({ tile, write }: TileSubject): Mark =>
  lettered(
    tile.fromMm === 0 ? 'FOOT: this end down' : `This end ${write.onTape(tile.fromMm)} from the foot`,
    { x: tile.fromMm + 5, y: 0 },
    3.2,
    { anchor: 'middle', upright: true },
  )

const letterOf = (number: number): string => String.fromCodePoint('A'.charCodeAt(0) + ((number - 1) % 26))

/** A line that lies on the like one of the next tile: A on A, B on B. */
const matchMarks = ({ strip, tile, printed }: TileSubject, half: number): Mark[] => {
  const matched = [
    { with: tile.number - 1, x: tile.fromMm + strip.overlapMm / 2, number: tile.number - 1 },
    { with: tile.number + 1, x: tile.toMm - strip.overlapMm / 2, number: tile.number },
  ]
  return matched
    .filter((each) => printed.has(each.with))
    .flatMap(({ x, number }) => [
      ruled({ x, y: half - 6 }, { x, y: half }, 'outline'),
      ruled({ x, y: -half + 8 }, { x, y: -half + 14 }, 'outline'),
      lettered(letterOf(number), { x: x + 1.4, y: -half + 12 }, LETTERS.heading),
    ])
}

/** Which strip and which tile it is, in the half of the tile that the holes leave bare. */
const nameMarks = (subject: TileSubject, half: number): Mark[] => {
  const { kind, strip, tile } = subject
  const middle = (tile.fromMm + tile.toMm) / 2
  const isLeft = (holesOn(subject)[0]?.centreMm ?? Infinity) > middle
  const x = isLeft ? tile.fromMm + END_MM : tile.toMm - 3
  const anchor = isLeft ? 'start' : 'end'
  // Below the words of the hole, above the line through its middle.
  const top = Math.min(20, half - 22)
  const lines = [
    `${memberName(kind.mark)}, ${kind.count} ${kind.count === 1 ? 'piece' : 'pieces'}`,
    `tile ${tile.number} of ${strip.tiles.length}`,
  ]
  return [
    lettered(kindMark(kind), { x, y: top }, MARK_LETTER_MM, { anchor }),
    ...lines.map((text, i) => lettered(text, { x, y: top - 8 - i * 5 }, 3.2, { anchor })),
  ]
}

const PRINTING = 'Print at 100 %, not fitted to the page.'

/** The marks of one tile, in mm from the member's foot and from the middle of its face. */
const tileMarks = (subject: TileSubject, half: number): Mark[] => {
  const { tile } = subject
  return [
    ...outline(subject, half),
    ...tapeMarks(subject, half),
    ...matchMarks(subject, half),
    endWords(subject),
    ...nameMarks(subject, half),
    lettered(PRINTING, { x: tile.fromMm + END_MM, y: -half + 9 }, LETTERS.small),
    ...abreast(holesOn(subject)).flatMap((holes) => holeMarks(holes, subject, half)),
  ]
}

const drawn = (
  subject: TileSubject,
  room: { readonly widthMm: number; readonly heightMm: number },
): Drawn => {
  const { kind, tile } = subject
  const half = Math.min(kind.faceMm, room.heightMm - 1) / 2
  const left = Math.max(0, (room.widthMm - (tile.toMm - tile.fromMm)) / 2)
  const placement = { scale: 1, xMm: left - tile.fromMm, yMm: half + 0.5 }
  return {
    heightMm: 2 * half + 1,
    items: [{ marks: tileMarks(subject, half), placement }],
    scaleWords: 'full size',
    ratio: 1,
  }
}

/** One tile of the strip at full size. */
export const tileFigure = (subject: TileSubject): FigurePiece => {
  const { kind, strip, tile, write } = subject
  const stretch = `from ${write.onTape(tile.fromMm)} to ${write.onTape(tile.toMm)} of the foot`
  return {
    as: 'figure',
    caption: `${kindMark(kind)}, tile ${tile.number} of ${strip.tiles.length}: ${stretch}`,
    draw: (room) => drawn(subject, room),
  }
}
