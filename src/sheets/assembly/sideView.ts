import { fitScale, type Scale } from '../../drawing/paper'
import { onPaper } from '../../drawing/page'
import type { Box } from '../../geometry/box'
import type { Mark } from '../../model/drawing'
import { lineMark } from '../../parts/marks'
import type { Units } from '../../units/length'
import type { Writer } from '../../units/writer'
import { LETTERS, panel, ruled } from '../ink'
import { chain, measured, together, wordsAt, type Worded } from '../paperDimensions'
import type { Drawn, FigurePiece } from '../piece'
import { framesOf } from './frames'
import type { Member } from './members'
import { rings } from './rings'
import { type RackBuilt, sharesNext, STRAP_OVER_MM, strapsU } from './rowBuilt'
import { coverOf, FROM_SIDE, type Laid, memberMarks, onSheet, pointedAt, seenAs, seenMark } from './shapes'

/** Room about the rack on the paper, mm: dimensions stand under it, the fall over it. */
const ROOM = { side: 13, foot: 17, head: 15 }

/** Taller than this it would leave no room for the members under it, mm of paper. */
const TALLEST_MM = 120

/** The runners of a base run past a rack: they are cut off at its ends, mm beyond them. */
const PAST_MM = 90

/** Air beyond the last member, mm of the rack. */
const AIR_MM = 30

const clippedTo = (member: Member, fromU: number, toU: number): Member => ({
  ...member,
  from: { ...member.from, u: Math.max(member.from.u, fromU) },
  to: { ...member.to, u: Math.min(member.to.u, toU) },
})

/** From end to end of what is built, mm along the row, and how high it stands. */
const extentOf = ({ members, rackMm }: RackBuilt): { fromU: number; toU: number; topMm: number } => {
  const us = members.flatMap(({ from, to }) => [from.u, to.u])
  return {
    fromU: Math.min(0, ...us),
    toU: Math.max(rackMm, ...us) + AIR_MM,
    topMm: Math.max(0, ...members.map(({ to, stick }) => to.z + stick.heightMm / 2)),
  }
}

const plates = (rack: RackBuilt, laid: Laid): Mark[] => {
  const { plate } = rack
  if (plate === undefined) return []
  return framesOf(rack).map(({ u, risers }) => {
    const low = onSheet(laid, { x: u - plate.alongMm, y: 0 })
    const high = onSheet(laid, { x: u + plate.alongMm, y: risers[0]?.from.z ?? 0 })
    return panel({ x0: low.x, y0: low.y, x1: high.x, y1: high.y }, 'outline', 'none')
  })
}

/** The risers that this rack shares with the next one, which brings them. */
const sharedRiser = (rack: RackBuilt): readonly Member[] => {
  const frame = framesOf(rack)[0]
  const riser = frame?.risers[0]
  if (!sharesNext(rack) || !frame || !riser) return []
  const byU = rack.rackMm - frame.u
  return [
    {
      ...riser,
      from: { ...riser.from, u: riser.from.u + byU },
      to: { ...riser.to, u: riser.to.u + byU },
    },
  ]
}

const dimensions = (rack: RackBuilt, laid: Laid, write: Writer): Worded => {
  const us = [...framesOf(rack).map(({ u }) => u), ...strapsU(rack)]
  const ends = sharesNext(rack) ? [...us, rack.rackMm] : us
  const x = (u: number) => onSheet(laid, { x: u, y: 0 }).x
  const rail = rack.members.find(({ stick }) => stick.mark.startsWith('RL'))
  const y = laid.y - 12.5
  return together([
    chain(ends.map(x), laid.y - 6, (index) => write.onTape((ends[index + 1] ?? 0) - (ends[index] ?? 0))),
    ...(rail
      ? [
          measured(
            { x: x(rail.from.u), y },
            { x: x(rail.to.u), y },
            0,
            `rail ${write.onTape(rail.stick.lengthMm)}`,
          ),
        ]
      : []),
  ])
}

/** Straps come from the house: they are drawn to the top of the drawing. */
const straps = (rack: RackBuilt, laid: Laid, topMm: number): Mark[] => {
  const low = Math.min(...rack.members.map(({ from }) => from.z))
  return strapsU(rack).map((u) =>
    ruled(onSheet(laid, { x: u, y: low }), onSheet(laid, { x: u, y: topMm + STRAP_OVER_MM }), 'hidden'),
  )
}

/** Which end is high, and the way the gutters fall. */
const fallWords = (rack: RackBuilt, widthMm: number, topMm: number): Worded => {
  const y = topMm - 3.4
  const high = wordsAt(rack.isHighEnd ? 'HIGH END OF ROW' : 'HIGH SIDE', { x: 2, y }, LETTERS.heading)
  const low = wordsAt(
    rack.isLowEnd ? 'LOW END OF ROW' : 'LOW SIDE, next rack',
    { x: widthMm - 2, y },
    LETTERS.heading,
    'end',
  )
  const from = { x: (high.boxes[0]?.x1 ?? 0) + 3, y }
  const to = { x: (low.boxes[0]?.x0 ?? widthMm) - 3, y }
  const middle = { x: (from.x + to.x) / 2, y: y - 3 }
  return together([
    high,
    low,
    { marks: [lineMark([from, to], 'outline', 'end')], boxes: [] },
    wordsAt('gutters fall this way', middle, LETTERS.body, 'middle'),
  ])
}

/** The rack with what of its row's base passes it. */
const shownOf = (rack: RackBuilt): readonly Member[] => {
  const { fromU, toU } = extentOf(rack)
  const [low, high] = [rack.isHighEnd ? fromU : -PAST_MM, rack.isLowEnd ? toU : rack.rackMm + PAST_MM]
  return [
    ...[...rack.runners, ...rack.bearers].map((member) => clippedTo(member, low, high)),
    ...rack.members,
  ]
}

const ringed = (rack: RackBuilt, laid: Laid, words: Worded, within: Box): Mark[] => {
  const shown = shownOf(rack)
  const covers = [...shown, ...sharedRiser(rack)].flatMap((member) => coverOf(member, FROM_SIDE, laid))
  return rings(pointedAt(shown, FROM_SIDE, laid, rack.rackMm / 2), covers, words.boxes, within)
}

const laidIn = (rack: RackBuilt, scale: Scale, widthMm: number): Laid => {
  const { fromU, toU } = extentOf(rack)
  const drawnMm = (toU - fromU) / scale.ratio
  return { scale: 1 / scale.ratio, x: (widthMm - drawnMm) / 2 - fromU / scale.ratio, y: ROOM.foot }
}

const draw = (
  rack: RackBuilt,
  write: Writer,
  units: Units,
  room: { readonly widthMm: number; readonly heightMm: number },
): Drawn => {
  const { fromU, toU, topMm } = extentOf(rack)
  const inside = {
    widthMm: room.widthMm - 2 * ROOM.side,
    heightMm: Math.min(room.heightMm, TALLEST_MM) - ROOM.foot - ROOM.head,
  }
  const scale = fitScale({ widthMm: toU - fromU, heightMm: topMm }, inside, units)
  const laid = laidIn(rack, scale, room.widthMm)
  const heightMm = ROOM.foot + topMm / scale.ratio + ROOM.head
  const words = together([dimensions(rack, laid, write), fallWords(rack, room.widthMm, heightMm)])
  const floor = [fromU, toU].map((u, end) => ({
    x: onSheet(laid, { x: u, y: 0 }).x + (end * 2 - 1) * 6,
    y: laid.y,
  }))
  const within: Box = { x0: 1, x1: room.widthMm - 1, y0: laid.y - 4, y1: heightMm - 8 }
  return {
    heightMm,
    scaleWords: scale.words,
    ratio: scale.ratio,
    items: [
      {
        placement: onPaper,
        marks: [
          ...(floor[0] && floor[1] ? [ruled(floor[0], floor[1], 'wall')] : []),
          ...plates(rack, laid),
          ...sharedRiser(rack).map((riser) => seenMark(seenAs(riser, FROM_SIDE), laid, 'hidden', 'none')),
          ...straps(rack, laid, topMm),
          ...memberMarks(shownOf(rack), FROM_SIDE, laid),
          ...words.marks,
          ...ringed(rack, laid, words, within),
        ],
      },
    ],
  }
}

/** A rack along the row, high end at the left, to scale. */
export const sideView = (rack: RackBuilt, name: string, write: Writer, units: Units): FigurePiece => ({
  as: 'figure',
  caption: `${name} from its side, this way up: each member with its mark; ${rack.facts.carriedBy === 'house' ? 'straps' : 'riser middles'} and rail below`,
  draw: (room) => draw(rack, write, units, room),
})
