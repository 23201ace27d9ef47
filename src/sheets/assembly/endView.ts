import { DIMENSION_LETTER_MM } from '../../drawing/dimension'
import { textWidth } from '../../drawing/lettering'
import { fitScale } from '../../drawing/paper'
import { onPaper } from '../../drawing/page'
import type { Box } from '../../geometry/box'
import type { Mark } from '../../model/drawing'
import type { Units } from '../../units/length'
import { atDrill } from '../../units/precision'
import { type Writer, writerFor } from '../../units/writer'
import { LETTERS, panel, ruled } from '../ink'
import { measured, together, wordsAt, type Worded } from '../paperDimensions'
import type { Drawn, FigurePiece } from '../piece'
import { flatFrame, flatWidth } from './flatFrame'
import { framesOf } from './frames'
import { type Height, heightsOf } from './heights'
import { ladder } from './ladder'
import type { Member } from './members'
import { rings } from './rings'
import { type RackBuilt, STRAP_OVER_MM, strapsU } from './rowBuilt'
import { coverOf, FROM_HIGH_END, type Laid, memberMarks, onSheet, pointedAt } from './shapes'

/** Room about the two drawings, mm of paper. */
const ROOM = { side: 4, foot: 15, head: 10, ladder: 48, flat: 12 }
const LINE_MM = 3.7
/** Taller than this it would leave no room for the joints under it, mm of paper. */
const TALLEST_MM = 120
/** Never drawn narrower than this half, mm of the rack. */
const LEAST_HALF_MM = 300

/** Heights beside the rack. */
const heightLadder = (
  heights: readonly Height[],
  x: number,
  laid: Laid,
  footMm: number,
  write: Writer,
  drill: Writer,
): Worded =>
  ladder(
    heights.map(({ mm, words, isDrilled }) => ({
      y: laid.y + (footMm + mm) * laid.scale,
      text: `${(isDrilled ? drill : write).onTape(mm)} ${words}`,
    })),
    x,
    { letterMm: LETTERS.body, lineMm: LINE_MM, side: 'right' },
  )

/** Where risers stand; the rails of a rack that hangs. */
const risersV = (rack: RackBuilt): readonly number[] => {
  const risers = framesOf(rack)[0]?.risers ?? rack.members.filter(({ stick }) => stick.mark.startsWith('RL'))
  return risers.map(({ from }) => from.v).toSorted((a, b) => a - b)
}

const plates = (rack: RackBuilt, footMm: number, laid: Laid): Mark[] => {
  const { plate } = rack
  if (plate === undefined) return []
  return risersV(rack).map((v) => {
    const low = onSheet(laid, { x: v - plate.acrossMm, y: 0 })
    const high = onSheet(laid, { x: v + plate.acrossMm, y: footMm })
    return panel({ x0: low.x, y0: low.y, x1: high.x, y1: high.y }, 'outline', 'none')
  })
}

/** Straps that carry rails and bearers. */
const straps = (rack: RackBuilt, laid: Laid): Mark[] => {
  if (strapsU(rack).length === 0) return []
  const [low, high] = [
    Math.min(...rack.members.map(({ from }) => from.z)),
    extentOf(rack).topMm + STRAP_OVER_MM,
  ]
  return risersV(rack).map((v) =>
    ruled(onSheet(laid, { x: v, y: low }), onSheet(laid, { x: v, y: high }), 'hidden'),
  )
}

const widths = (rack: RackBuilt, laid: Laid, write: Writer): Worded => {
  const [left = 0, right = 0] = risersV(rack)
  const bar = rack.members.find(({ stick }) => stick.mark === 'HB')
  const x = (v: number) => onSheet(laid, { x: v, y: 0 }).x
  // Where its name finds no room between the ends, the number stands alone.
  const span = (fromV: number, toV: number, downMm: number, nameOf: (tape: string) => string): Worded => {
    const [from, to] = [fromV, toV].map((v) => ({ x: x(v), y: laid.y - downMm }))
    const tape = write.onTape(toV - fromV)
    if (!from || !to) return { marks: [], boxes: [] }
    const fits = textWidth(nameOf(tape), DIMENSION_LETTER_MM) < 0.9 * (to.x - from.x)
    return measured(from, to, 0, fits ? nameOf(tape) : tape)
  }
  return together([
    span(left, right, 5, (tape) => `${tape} middles`),
    ...(bar
      ? [span(Math.min(bar.from.v, bar.to.v), Math.max(bar.from.v, bar.to.v), 11, (tape) => `bar ${tape}`)]
      : []),
  ])
}

const shownOf = ({ runners, bearers, members }: RackBuilt): readonly Member[] => [
  ...runners,
  ...bearers.slice(0, 1),
  ...members,
]

/** Half as wide as it is across, and as high as it stands, mm. */
const extentOf = (rack: RackBuilt) => ({
  halfMm: Math.max(
    LEAST_HALF_MM,
    ...shownOf(rack).flatMap(({ from, to }) => [Math.abs(from.v), Math.abs(to.v)]),
    ...risersV(rack).map((v) => Math.abs(v) + (rack.plate?.acrossMm ?? 0)),
  ),
  topMm: Math.max(0, ...rack.members.map(({ to, stick }) => to.z + stick.heightMm / 2)),
})

/** The rack as it stands, with its heights at its right side. */
const standing = (rack: RackBuilt, laid: Laid, heightMm: number, write: Writer, units: Units): Mark[] => {
  const footMm = framesOf(rack)[0]?.risers[0]?.from.z ?? 0
  const shown = shownOf(rack)
  const x = laid.x + extentOf(rack).halfMm * laid.scale + 2
  const title = wordsAt('From its high end', { x: laid.x, y: heightMm - 3 }, LETTERS.body + 0.3, 'middle')
  const words = together([
    widths(rack, laid, write),
    heightLadder(heightsOf(rack), x, laid, footMm, write, writerFor(units, atDrill)),
    title,
  ])
  const within: Box = { x0: 0.5, x1: x + 1, y0: 3, y1: heightMm - 6 }
  const covers = shown.flatMap((member) => coverOf(member, FROM_HIGH_END, laid))
  return [
    ruled({ x: ROOM.side - 2, y: laid.y }, { x: x - 2, y: laid.y }, 'wall'),
    ...plates(rack, footMm, laid),
    ...straps(rack, laid),
    ...memberMarks(shown, FROM_HIGH_END, laid),
    ...words.marks,
    ...rings(pointedAt(shown, FROM_HIGH_END, laid, 0), covers, words.boxes, within),
  ]
}

const draw = (
  rack: RackBuilt,
  write: Writer,
  units: Units,
  room: { readonly widthMm: number; readonly heightMm: number },
): Drawn => {
  const frames = framesOf(rack)
  const frame = frames.find(({ isSleeved }) => !isSleeved) ?? frames[0]
  const flatMm = frame ? flatWidth(frame) : 0
  const { halfMm, topMm } = extentOf(rack)
  const inside = {
    widthMm: room.widthMm - 2 * ROOM.side - ROOM.ladder - ROOM.flat,
    heightMm: Math.min(room.heightMm, TALLEST_MM) - ROOM.foot - ROOM.head,
  }
  const scale = fitScale({ widthMm: 2 * halfMm + flatMm, heightMm: topMm }, inside, units)
  const k = 1 / scale.ratio
  const laid: Laid = { scale: k, x: ROOM.side + halfMm * k, y: ROOM.foot }
  const heightMm = ROOM.foot + topMm * k + ROOM.head
  const flatX = room.widthMm - ROOM.side - ROOM.flat / 2 - (flatMm / 2) * k - 4
  const flat = frame && flatFrame(frame, { ...laid, x: flatX }, write)
  return {
    heightMm,
    scaleWords: scale.words,
    ratio: scale.ratio,
    items: [
      {
        placement: onPaper,
        marks: [...standing(rack, laid, heightMm, write, units), ...(flat?.marks ?? [])],
      },
    ],
  }
}

/** A rack across the row, with its heights from the foot, and one of its frames as it is squared on the floor. */
export const endView = (rack: RackBuilt, name: string, write: Writer, units: Units): FigurePiece => ({
  as: 'figure',
  caption:
    rack.facts.carriedBy === 'house'
      ? `${name} from its high end, heights over the floor; straps carry rails and bearers`
      : `${name} from its high end, heights from the foot of a riser, and a frame as it is squared on the flat`,
  draw: (room) => draw(rack, write, units, room),
})
