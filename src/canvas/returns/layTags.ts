import { textWidth } from '../../drawing/lettering'
import { distance, type Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import { feet } from '../../units/length'
import { pxOf, type Lens } from '../lens'
import type { Slip } from '../label'
import { anchorsOf, type DrainTag } from './drainTags'

/** A tag that has room, px of canvas. */
export interface LaidTag {
  readonly tag: DrainTag
  readonly slip: Slip
  /** On the drain, where its words belong; a leader leads there where they stand far off. */
  readonly at: Point
  readonly isFar: boolean
}

export const TAG_LETTER_PX = 12
export const TAG_PAD_PX = 3
export const TAG_SHAPE_PX = 13

const HIGH_PX = 17
/** Off the middle of the pipe, px. */
const OFF_PX = 7
/** Words of a drain that is chosen may go so many steps further off to find room. */
const FAR_STEPS = 4

const widthOf = ({ words, state }: DrainTag): number =>
  textWidth(words, TAG_LETTER_PX) + 2 * TAG_PAD_PX + (state ? TAG_SHAPE_PX : 0)

const meets = (a: Slip, b: Slip): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1

/** Side of the squares that the paper is parted into, so that a slip is held against its neighbours alone; px. */
const SQUARE_PX = 64
/** More squares than a paper is wide. */
const SQUARES_WIDE = 1024

const squaresUnder = ({ x0, x1, y0, y1 }: Slip): number[] => {
  const squares: number[] = []
  const last = { x: Math.floor(x1 / SQUARE_PX), y: Math.floor(y1 / SQUARE_PX) }
  for (let y = Math.floor(y0 / SQUARE_PX); y <= last.y; y += 1)
    for (let x = Math.floor(x0 / SQUARE_PX); x <= last.x; x += 1) squares.push(y * SQUARES_WIDE + x)
  return squares
}

/** What is covered already, found by place. */
interface Covered {
  readonly isFree: (slip: Slip) => boolean
  readonly cover: (slip: Slip) => void
}

const coveredBy = (slips: readonly Slip[]): Covered => {
  const squares = new Map<number, Slip[]>()
  const cover = (slip: Slip): void => {
    for (const square of squaresUnder(slip)) {
      const there = squares.get(square)
      if (there) there.push(slip)
      else squares.set(square, [slip])
    }
  }
  slips.forEach(cover)
  const isFree = (slip: Slip): boolean =>
    squaresUnder(slip).every((square) => !squares.get(square)?.some((other) => meets(slip, other)))
  return { isFree, cover }
}

const isInside = (a: Slip, room: Slip): boolean =>
  a.x0 >= room.x0 && a.x1 <= room.x1 && a.y0 >= room.y0 && a.y1 <= room.y1

/** The way across a stretch on the screen, of length 1; upward where it has no length. */
export const acrossOf = (from: Point, to: Point): Point => {
  const run = distance(from, to)
  return run < 1 ? { x: 0, y: -1 } : { x: (to.y - from.y) / run, y: -(to.x - from.x) / run }
}

const slipAt = (at: Point, width: number, across: Point, side: number, step: number): Slip => {
  const offPx =
    OFF_PX + (Math.abs(across.x) * width + Math.abs(across.y) * HIGH_PX) / 2 + step * (HIGH_PX + 2)
  const x = at.x + across.x * side * offPx
  const y = at.y + across.y * side * offPx
  return { x0: x - width / 2, x1: x + width / 2, y0: y - HIGH_PX / 2, y1: y + HIGH_PX / 2 }
}

interface Laying {
  readonly lens: Lens
  /** Way across each drain on the screen, for its pegs. */
  readonly acrossAt: (tag: DrainTag) => Point
}

const triesOf = (tag: DrainTag, isChosen: boolean, { lens, acrossAt }: Laying): LaidTag[] => {
  const width = widthOf(tag)
  const across = acrossAt(tag)
  const steps = isChosen ? FAR_STEPS : 1
  return Array.from({ length: steps }, (_, step) => step).flatMap((step) =>
    anchorsOf(tag).flatMap((place) => {
      const at = pxOf(lens, place)
      return [1, -1].map((side) => ({
        tag,
        at,
        slip: slipAt(at, width, across, side, step),
        isFar: step > 0,
      }))
    }),
  )
}

/** Whether a stretch is long enough on the screen for its words. */
const isLongEnough = ({ from, to, ofItsLength }: DrainTag, width: number, { view }: Lens): boolean =>
  distance(from, to) * view.pxPerMm >= width * ofItsLength

/** From here on the floor is too far off for peg numbers of drains that are not chosen, px a mm: under 5 px a foot. */
const LEAST_PEG_SCALE = 5 / feet(1)

/** Words stand no further off than this from what they name, px. */
const MARGIN_PX = 200

const isInSight = ({ from, to }: DrainTag, lens: Lens): boolean => {
  const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
  const { width, height } = lens.size
  return (
    Math.max(a.x, b.x) > -MARGIN_PX &&
    Math.min(a.x, b.x) < width + MARGIN_PX &&
    Math.max(a.y, b.y) > -MARGIN_PX &&
    Math.min(a.y, b.y) < height + MARGIN_PX
  )
}

/** The tag in all its words and in few, as far as its stretch bears them. A chosen drain says what it can. */
const formsOf = (tag: DrainTag, isChosen: boolean, lens: Lens): readonly DrainTag[] => {
  if (tag.as === 'peg') return isChosen || lens.view.pxPerMm >= LEAST_PEG_SCALE ? [tag] : []
  const few = { ...tag, words: tag.short }
  const bears = (form: DrainTag) => isLongEnough(form, widthOf(form), lens)
  return [tag, few].filter((form) => bears(form) || (isChosen && form === few))
}

/**
 * The tags that find room: none covers another, nor what is taken. Tags of chosen drains come first and may go further
 * off; of the others those that find no place beside their drain are left out.
 */
export const layTags = (
  tags: readonly DrainTag[],
  chosen: readonly PartId[],
  lens: Lens,
  room: Slip,
  taken: readonly Slip[],
): readonly LaidTag[] => {
  const acrossOfDrain = new Map<PartId, Point>()
  for (const { part, from, to, as } of tags)
    if (as === 'drain' && !acrossOfDrain.has(part))
      acrossOfDrain.set(part, acrossOf(pxOf(lens, from), pxOf(lens, to)))
  const laying: Laying = {
    lens,
    acrossAt: ({ part, from, to, as }) =>
      as === 'peg'
        ? (acrossOfDrain.get(part) ?? { x: 0, y: -1 })
        : acrossOf(pxOf(lens, from), pxOf(lens, to)),
  }
  const { isFree, cover } = coveredBy(taken)
  const isChosen = ({ part }: DrainTag) => chosen.includes(part)
  const inOrder = [...tags.filter(isChosen), ...tags.filter((tag) => !isChosen(tag))]
  return inOrder.flatMap((tag) => {
    if (!isInSight(tag, lens)) return []
    const found = formsOf(tag, isChosen(tag), lens)
      .flatMap((form) => triesOf(form, isChosen(tag), laying))
      .find(({ slip }) => isInside(slip, room) && isFree(slip))
    if (!found) return []
    cover(found.slip)
    return [found]
  })
}
