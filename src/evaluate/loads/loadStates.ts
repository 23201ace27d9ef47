import type { LoadState } from '../../model/strength'
import type { BeamLoad, PointLoad } from '../../solvers/beam/beam'
import type { Bent } from '../../solvers/beam/bent'
import type { Solved } from '../../solvers/beam/solve'
import type { CarryingBeam, HungPoint, SupportWorst, Worst } from './carrying'

const hungLoad = (points: readonly HungPoint[], weight: (point: HungPoint) => number): PointLoad[] =>
  points.map((point) => ({ atMm: point.atMm, downN: weight(point) }))

const allOf = ({ leftN, rightN, middleN }: HungPoint): number => leftN + rightN + middleN

const withDead = (dead: BeamLoad, points: readonly PointLoad[]): BeamLoad => ({
  points: [...dead.points, ...points],
  lines: dead.lines,
})

/** The beam bent by each state of load, and by each group alone. */
export interface BentStates {
  readonly full: Bent
  readonly empty: Bent
  readonly proof: Bent
  readonly sides: readonly Bent[]
  readonly groups: readonly Bent[]
}

export const bentStates = (solved: Solved, { dead, groups, proofTimes }: CarryingBeam): BentStates => {
  const points = groups.flat()
  const under = (weight: (point: HungPoint) => number): Bent =>
    solved.bend(withDead(dead, hungLoad(points, weight)))
  return {
    full: under(allOf),
    empty: under(() => 0),
    proof: under((point) => proofTimes * allOf(point)),
    sides: [under(({ leftN }) => leftN), under(({ rightN }) => rightN)],
    groups: groups.map((group) => solved.bend({ points: hungLoad(group, allOf), lines: [] })),
  }
}

type Reading = (bent: Bent) => number

/** What a harvest changes by less than this share is told as if everything hung. */
const SAME_SHARE = 1e-6

/** Most and least of a reading over every set of groups that hang, N or mm as read. */
const harvested = ({ empty, groups }: BentStates, reading: Reading): readonly [number, number] => {
  const always = reading(empty)
  let [most, least] = [always, always]
  for (const group of groups) {
    const value = reading(group)
    if (value > 0) most += value
    else least += value
  }
  return [most, least]
}

interface Place {
  readonly atMm: number
  readonly value: number
}

/** How a stretch of a beam is read. */
export interface StretchReading {
  /** Where it is worst under one load, exactly. */
  readonly worst: (bent: Bent) => Place
  readonly at: (bent: Bent, mm: number) => number
  /** Places where it is read for what a harvest changes. */
  readonly places: readonly number[]
  /** Bad below nothing as well: a moment is, a beam bent upward is not. */
  readonly isBadBelow: boolean
}

/**
 * The worst of a stretch over all states but the proof load. Full, one-sided and empty are exact; the harvested one is read at
 * places: every load, support and middle, between which an even weight of conduit alone bends it.
 */
export const worstOf = (states: BentStates, { worst, at, places, isBadBelow }: StretchReading): Worst => {
  let found: Worst = { ...worst(states.full), under: 'full' }
  const badOf = ({ value }: Place): number => (isBadBelow ? Math.abs(value) : value)
  const hold = (place: Place, under: LoadState): void => {
    if (badOf(place) > badOf(found) * (1 + SAME_SHARE)) found = { ...place, under }
  }
  for (const side of states.sides) hold(worst(side), 'one-side')
  hold(worst(states.empty), 'empty')
  for (const atMm of places) {
    const [most, least] = harvested(states, (bent) => at(bent, atMm))
    hold({ atMm, value: isBadBelow && -least > most ? least : most }, 'harvested')
  }
  return found
}

/** What a support carries in every state but the proof load. */
export const supportWorst = (states: BentStates, atMm: number, index: number): SupportWorst => {
  const reading: Reading = (bent) => bent.reactionsN[index] ?? 0
  const [most, least] = harvested(states, reading)
  const fullN = reading(states.full)
  const sides = states.sides.map(reading)
  let [leastN, leastUnder]: [number, LoadState] = [fullN, 'full']
  const lower = (valueN: number, under: LoadState): void => {
    if (valueN < leastN - SAME_SHARE * Math.abs(fullN)) [leastN, leastUnder] = [valueN, under]
  }
  for (const side of sides) lower(side, 'one-side')
  lower(reading(states.empty), 'empty')
  lower(least, 'harvested')
  return {
    atMm,
    fullN,
    mostN: Math.max(most, ...sides),
    leastN,
    leastUnder,
    leastHungN: Math.min(fullN, ...sides),
  }
}
