import { textWidth } from '../../../../drawing/lettering'
import type { Point } from '../../../../geometry/point'
import type { Mark } from '../../../../model/drawing'
import type { RailSpan } from '../../../../model/strength'
import { ladder } from '../../../../sheets/assembly/ladder'
import type { Member } from '../../../../sheets/assembly/members'
import { FROM_SIDE, type Laid, onSheet } from '../../../../sheets/assembly/shapes'
import { ruled } from '../../../../sheets/ink'
import { together, type Worded, wordsAt } from '../../../../sheets/paperDimensions'
import { extentOf, type Fit, ladderTexts, ROOM } from './fit'
import { type BenchGiven, statesOf } from './given'
import { LADDER_OFF_MM, LETTER_MM, LINE_MM } from './glass'
import { holeMarks } from './holes'
import { breakMarks, plateMarks, towerMarks } from './light'
import { footOf, levelsOf } from './levels'
import { alongDimensions } from './measures'
import { pillsOf } from './pills'
import { sagging, type SagLine, sagLine, type Strip, stripsOf } from './sagLine'
import { type Drawing, type Pill, shapesOf } from './shape'
import { breaksOf, drawnIn, risersOf, runsAcross, type Stretch } from './stretch'
import { fallSign } from './benchWords'

/** The drawing along the row, with the sag of its rails. */
export interface Elevation extends Drawing {
  readonly sag: SagLine | undefined
  readonly strips: readonly Strip[]
}

const alongLaid = (given: BenchGiven, members: readonly Member[], { scale, leftMm }: Fit): Laid => {
  const { x0 } = extentOf(members, FROM_SIDE)
  const fromU = given.stretch.rack === undefined ? x0 : Math.min(x0, ...breaksOf(given.frame, given.stretch))
  return { scale, x: leftMm - fromU * scale, y: ROOM.foot }
}

/** Levels across the whole drawing, as thin as a line may be. */
const levelLines = (given: BenchGiven, fit: Fit, laid: Laid): readonly Mark[] =>
  levelsOf(given.frame, given.stretch)
    .filter(({ words }) => words !== 'lip' && words !== 'invert')
    .map(({ mm }) => {
      const y = laid.y + (mm + footOf(given.frame)) * laid.scale
      return ruled({ x: fit.leftMm - 2, y }, { x: fit.longMm - 1, y }, 'grid')
    })

const levelLadder = (given: BenchGiven, fit: Fit, laid: Laid): Worded => {
  const footMm = footOf(given.frame)
  return ladder(
    ladderTexts(given).levels.map(({ mm, text }) => ({ y: laid.y + (mm + footMm) * laid.scale, text })),
    fit.leftMm - LADDER_OFF_MM,
    { letterMm: LETTER_MM, lineMm: LINE_MM, side: 'left' },
  )
}

/** How far under a rail the words of its sag stand, mm of glass. */
const UNDER_RAIL_MM = 2.8

/** Words under a rail, within the drawing. */
const underRail = ({ x, y }: Point, text: string, { leftMm, longMm }: Fit): Worded => {
  const half = textWidth(text, LETTER_MM) / 2 + 1
  const inside = Math.max(leftMm + half, Math.min(longMm - half, x))
  return wordsAt(text, { x: inside, y: y - UNDER_RAIL_MM }, LETTER_MM, 'middle')
}

const timesWords = (times: number): string => (times === 1 ? 'as it is' : `drawn ${times} times`)

const sagWords = (
  sag: SagLine,
  railMm: number,
  { stretch, write }: BenchGiven,
  laid: Laid,
  fit: Fit,
): Worded => {
  const { deepest, times, bent } = sag
  const middle = ({ fromU, toU }: RailSpan) =>
    (Math.max(fromU, stretch.fromU) + Math.min(toU, stretch.toU)) / 2
  return together([
    ...bent.map((span) =>
      underRail(onSheet(laid, { x: middle(span), y: railMm }), 'folds or stays bent', fit),
    ),
    ...(deepest
      ? [underRail(deepest.at, `sag ${write.exact().onTape(deepest.sagMm)}, ${timesWords(times)}`, fit)]
      : []),
  ])
}

/** Marks of what is seen in its length from the side; in a long row once in each part of it that is seen at once. */
const pillsAlong = (
  given: BenchGiven,
  members: readonly Member[],
  fit: Fit,
  laid: Laid,
  words: Worded,
): readonly Pill[] => {
  const across = new Set(members.filter(runsAcross).map(({ stick }) => stick.mark))
  const parts = Math.max(1, Math.ceil(fit.longMm / fit.seenMm - 0.2))
  const eachMm = fit.longMm / parts
  return Array.from({ length: parts }).flatMap((_, part) => {
    const [x0, x1] = [part * eachMm + 0.5, (part + 1) * eachMm - 0.5]
    const uAt = (x: number) => (x - laid.x) / laid.scale
    const isHere = ({ from, to }: Member) =>
      Math.min(from.u, to.u) < uAt(x1) && Math.max(from.u, to.u) > uAt(x0)
    return pillsOf({
      members: members.filter(isHere),
      view: FROM_SIDE,
      laid,
      isNamed: (mark) => !across.has(mark),
      states: statesOf(given.strength),
      words: words.boxes.filter((box) => box.x1 > x0 && box.x0 < x1),
      within: { x0, x1, y0: laid.y - 3, y1: fit.heightMm - 0.5 },
      middle: uAt((x0 + x1) / 2),
    })
  })
}

/** Rails that a rack's neighbours bring are not measured with it. */
const ownRails = (members: readonly Member[], { rack }: Stretch): readonly Member[] =>
  members.filter(({ stick }) => rack === undefined || stick.rack === rack - 1 || !stick.mark.startsWith('RL'))

/** A row, or a rack of it, from its right side: its start at the left. */
export const elevation = (given: BenchGiven, fit: Fit): Elevation => {
  const { frame, stretch, rack, write, strength, yieldMpa } = given
  const members = drawnIn(frame, stretch)
  const laid = alongLaid(given, members, fit)
  const topMm = extentOf(members, FROM_SIDE).y1
  const rail = sagging(strength?.rails ?? [])
  const sag = rail && sagLine(rail, stretch, laid, yieldMpa)
  const words = together([
    alongDimensions(ownRails(members, stretch), topMm, laid, write),
    levelLadder(given, fit, laid),
    wordsAt(fallSign(frame), { x: fit.longMm - 1, y: fit.heightMm - 1.8 }, LETTER_MM, 'end'),
    ...(sag && rail ? [sagWords(sag, rail.z, given, laid, fit)] : []),
  ])
  const risers = risersOf(frame).filter((riser) => members.includes(riser))
  return {
    widthMm: fit.longMm,
    heightMm: fit.heightMm,
    placeOf: (spot) => onSheet(laid, { x: spot.u, y: spot.z }),
    behind: [
      ...levelLines(given, fit, laid),
      ruled({ x: fit.leftMm - 2, y: laid.y }, { x: fit.longMm - 1, y: laid.y }, 'wall'),
      ...plateMarks(frame, rack?.plate, stretch, FROM_SIDE, laid),
    ],
    members: shapesOf(members, FROM_SIDE, laid),
    over: [
      ...towerMarks(frame, stretch, FROM_SIDE, laid),
      ...holeMarks(risers, FROM_SIDE, laid),
      ...breakMarks(breaksOf(frame, stretch), topMm, laid),
      ...words.marks,
    ],
    pills: pillsAlong(given, members, fit, laid, words),
    sag,
    strips: rail ? stripsOf(rail, stretch, laid) : [],
  }
}
