import { rankOf } from '../../model/finding'
import type { RowStrength, Screen, ScreenId, Stance } from '../../model/strength'

/** What ails a row, or does not: one sort of screen at its worst, or how the row stands. */
export interface Ailment {
  /** 0 within, or stands; 1 to be looked at; 2 must be mended. */
  readonly rank: number
  /** Share of the limit that is used; Infinity where it is refused whatever it carries. */
  readonly used: number
}

export type AilmentId = ScreenId | 'stance'

/** By what is screened, at its worst place. */
export type Ailments = ReadonlyMap<AilmentId, Ailment>

export const strengthRank = ({ state }: Pick<Screen, 'state'>): number =>
  rankOf({ subject: 'strength', state })

export const stanceRank = ({ state }: Pick<Stance, 'state'>): number => rankOf({ subject: 'stance', state })

/** 0 for a row that is within and stands, 2 for one that must be mended. */
export const rowRank = (row: Pick<RowStrength, 'state' | 'stance'>): number =>
  Math.max(strengthRank(row), stanceRank(row.stance))

export const isSound = (row: RowStrength): boolean => rowRank(row) === 0

const isWorse = (a: Ailment, b: Ailment): boolean => a.rank > b.rank || (a.rank === b.rank && a.used > b.used)

/** A row that tips at half the push of another is half as safe; one that is held has what holds it. */
const ofStance = (stance: Stance): Ailment => {
  const tipped = stance.tips.map(({ safety }) => 1 / safety)
  const toSide = stance.oneSideLimitMm > 0 ? stance.oneSideMm / stance.oneSideLimitMm : 0
  return { rank: stanceRank(stance), used: stance.heldBy ? 0 : Math.max(0, toSide, ...tipped) }
}

/** Everything that a row is screened for, each at its worst. */
export const ailmentsOf = ({ screens, stance }: RowStrength): Ailments => {
  const all = new Map<AilmentId, Ailment>([['stance', ofStance(stance)]])
  for (const screen of screens) {
    const now = { rank: strengthRank(screen), used: screen.used }
    const worst = all.get(screen.id)
    if (!worst || isWorse(now, worst)) all.set(screen.id, now)
  }
  return all
}

/** What is not within, or does not stand. */
export const ailing = (ailments: Ailments): AilmentId[] =>
  [...ailments].filter(([, { rank }]) => rank > 0).map(([id]) => id)

/** A gain or a loss of less than this share of what is used is none to speak of. */
const LEAST_GAIN = 0.05

const isBetter = (now: Ailment, was: Ailment): boolean =>
  now.rank !== was.rank ? now.rank < was.rank : now.used < was.used * (1 - LEAST_GAIN)

const NONE: Ailment = { rank: 0, used: 0 }

/** Whether something that ailed is better by a step or by much. */
export const isEased = (now: Ailments, was: Ailments): boolean =>
  ailing(was).some((id) => isBetter(now.get(id) ?? NONE, was.get(id) ?? NONE))

const isHarm = (now: Ailment, was: Ailment): boolean =>
  now.rank !== was.rank ? now.rank > was.rank : now.used > was.used * (1 + LEAST_GAIN)

/** Whether something that ails is worse by a step or by much: a heavier bar may weigh on its rails a little. */
export const isHarmed = (now: Ailments, was: Ailments): boolean =>
  ailing(now).some((id) => isHarm(now.get(id) ?? NONE, was.get(id) ?? NONE))

/** Over so many times its limit one thing is as bad as another. */
const MOST_USED = 10

/** How ill a row is, to tell the better of two: steps first, then how much is used of the limits of all that carries. */
export const illness = (ailments: Ailments): readonly [steps: number, used: number] => {
  let [steps, sum] = [0, 0]
  for (const [id, { rank, used }] of ailments) {
    steps += rank
    if (id !== 'stance') sum += Math.min(used, MOST_USED)
  }
  return [steps, sum]
}
