import { type Box, boxOf } from '../../../../geometry/box'
import type { Member } from '../../../../sheets/assembly/members'
import { FROM_HIGH_END, FROM_SIDE, type View } from '../../../../sheets/assembly/shapes'
import { type Arranged, arrange, type Room, type Views } from './arrange'
import type { BenchGiven } from './given'
import { ladderWidth } from './glass'
import { levelsOf, tapeOf } from './levels'
import { looked } from './shape'
import { breaksOf, drawnIn } from './stretch'

/** Room round the drawings for what is written there, mm of glass. */
export const ROOM = { head: 6, foot: 10.5, side: 2.5, upright: 5.5 }

/** Never smaller than this, however low the drawer, mm of glass a rack is high. */
const LEAST_HEIGHT_MM = 22

export interface Sizes {
  readonly lengthMm: number
  readonly acrossMm: number
  readonly topMm: number
}

/** However narrow the room, so much of the long drawing is taken to be seen at once, mm of glass. */
const LEAST_SEEN_MM = 40

/** How both drawings of a row lie on the glass; lengths in mm of glass, `scale` mm of glass a mm of the rack. */
export interface Fit extends Arranged {
  readonly heightMm: number
  readonly longMm: number
  readonly endMm: number
  /** What of the long drawing is seen at once. */
  readonly seenMm: number
  readonly leftMm: number
  readonly rightMm: number
}

/** What members cover in a view, mm of the rack. */
export const extentOf = (members: readonly Member[], view: View): Box =>
  boxOf(
    members
      .map((member) => looked(member, view))
      .flatMap(({ from, to, stick }) =>
        [from, to].flatMap((at) => [
          { x: view.across(at), y: at.z - stick.heightMm / 2 },
          { x: view.across(at), y: at.z + stick.heightMm / 2 },
        ]),
      ),
  )

/** Words of the rungs of both ladders, the long drawing's at its left and the end view's at its right. */
export const ladderTexts = ({ frame, rack, stretch, write, drill }: BenchGiven) => ({
  levels: levelsOf(frame, stretch).map(({ mm, words }) => ({ mm, text: `${words} ${write.onTape(mm)}` })),
  tape: (rack ? tapeOf(rack) : []).map(({ mm, words, isDrilled }) => ({
    mm,
    text: `${(isDrilled ? drill : write).onTape(mm)} ${words}`,
  })),
})

/** How long, wide and high what is drawn is, mm of the rack; it is drawn as wide at either side of its centreline. */
const sizesOf = ({ frame, stretch }: BenchGiven): Sizes => {
  const members = drawnIn(frame, stretch)
  const long = extentOf(members, FROM_SIDE)
  const wide = extentOf(members, FROM_HIGH_END)
  const us = [long.x0, long.x1, ...breaksOf(frame, stretch)]
  return {
    lengthMm: Math.max(...us) - Math.min(...us),
    acrossMm: 2 * Math.max(Math.abs(wide.x0), Math.abs(wide.x1)),
    topMm: long.y1,
  }
}

/** How the views of a row lie on the glass: a rack as large as there is room, a row of many as high as there is room. */
export const fitOf = (given: BenchGiven, room: Room, zoom: number, views: Views | undefined): Fit => {
  const { lengthMm, acrossMm, topMm } = sizesOf(given)
  const { levels, tape } = ladderTexts(given)
  const leftMm = ladderWidth(levels.map(({ text }) => text)) + ROOM.side
  const rightMm = ladderWidth(tape.map(({ text }) => text)) + ROOM.side
  const arranged = arrange(
    {
      along: { besideMm: leftMm + ROOM.side, lengthMm },
      across: { besideMm: ROOM.upright + rightMm, lengthMm: acrossMm },
      scaleFor: (heightMm) => (heightMm - ROOM.head - ROOM.foot) / topMm,
      leastScale: LEAST_HEIGHT_MM / topMm,
      isRow: given.stretch.rack === undefined && given.frame.rack.racks > 1,
      canStack: true,
    },
    room,
    views,
  )
  const scale = zoom * Math.max(LEAST_HEIGHT_MM / topMm, arranged.scale)
  const endMm = ROOM.upright + acrossMm * scale + rightMm
  return {
    ...arranged,
    scale,
    heightMm: ROOM.head + ROOM.foot + topMm * scale,
    longMm: leftMm + lengthMm * scale + ROOM.side,
    endMm,
    seenMm: Math.max(
      LEAST_SEEN_MM,
      room.widthMm - (arranged.views === 'both' && !arranged.isStacked ? endMm : 0),
    ),
    leftMm,
    rightMm,
  }
}
