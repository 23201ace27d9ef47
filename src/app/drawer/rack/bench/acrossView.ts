import { ladder } from '../../../../sheets/assembly/ladder'
import type { Member } from '../../../../sheets/assembly/members'
import { FROM_HIGH_END, type Laid, onSheet } from '../../../../sheets/assembly/shapes'
import { ruled } from '../../../../sheets/ink'
import { together } from '../../../../sheets/paperDimensions'
import { extentOf, type Fit, ladderTexts, ROOM } from './fit'
import { type BenchGiven, statesOf } from './given'
import { LADDER_OFF_MM, LETTER_MM, LINE_MM } from './glass'
import { holeMarks } from './holes'
import { plateMarks, towerMarks } from './light'
import { footOf } from './levels'
import { acrossDimensions } from './measures'
import { pillsOf } from './pills'
import { type Drawing, shapesOf } from './shape'
import { drawnIn, risersOf, runsAcross } from './stretch'

/** Along the row from its start: the axes run as those of a sheet do from the high end. */
const FROM_START = FROM_HIGH_END

const acrossLaid = (members: readonly Member[], { scale }: Fit): Laid => {
  const { x0, x1 } = extentOf(members, FROM_START)
  const half = Math.max(Math.abs(x0), Math.abs(x1))
  return { scale, x: ROOM.upright + half * scale, y: ROOM.foot }
}

/** A row, or a rack of it, seen along it from its start. */
export const acrossView = (given: BenchGiven, fit: Fit): Drawing => {
  const { frame, stretch, rack, write, strength } = given
  const members = drawnIn(frame, stretch)
  const laid = acrossLaid(members, fit)
  const { x0, x1, y1: topMm } = extentOf(members, FROM_START)
  const half = Math.max(Math.abs(x0), Math.abs(x1))
  const rightX = laid.x + half * laid.scale
  const footMm = footOf(frame)
  const words = together([
    acrossDimensions(frame, members, { fromV: -half, topMm }, laid, write),
    ladder(
      ladderTexts(given).tape.map(({ mm, text }) => ({ y: laid.y + (mm + footMm) * laid.scale, text })),
      rightX + LADDER_OFF_MM,
      { letterMm: LETTER_MM, lineMm: LINE_MM, side: 'right' },
    ),
  ])
  const named = new Set(members.filter(runsAcross).map(({ stick }) => stick.mark))
  const risers = risersOf(frame).filter((riser) => members.includes(riser))
  return {
    widthMm: fit.endMm,
    heightMm: fit.heightMm,
    placeOf: (spot) => onSheet(laid, { x: spot.v, y: spot.z }),
    behind: [
      ruled({ x: ROOM.upright - 2, y: laid.y }, { x: rightX + 2, y: laid.y }, 'wall'),
      ...plateMarks(frame, rack?.plate, stretch, FROM_START, laid),
    ],
    members: shapesOf(members, FROM_START, laid),
    over: [
      ...towerMarks(frame, stretch, FROM_START, laid),
      ...holeMarks(risers.slice(0, 2), FROM_START, laid),
      ...words.marks,
    ],
    pills: pillsOf({
      members,
      view: FROM_START,
      laid,
      isNamed: (mark) => named.has(mark),
      states: statesOf(strength),
      words: words.boxes,
      within: { x0: 0.5, x1: fit.endMm - 0.5, y0: laid.y - 3, y1: fit.heightMm - 0.5 },
      middle: 0,
    }),
  }
}
