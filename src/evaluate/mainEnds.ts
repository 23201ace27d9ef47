import { placeAlong, pathLength, turnAt } from '../geometry/path'
import { length3, type Place } from '../geometry/point'
import type { Built, Fitting, Tube } from '../model/built'
import type { Join } from '../model/levels'
import { capOn, onPipe, reducerOn } from '../parts/onPipe'
import { TURN_RADIANS } from '../parts/points'
import { isSameList } from '../model/remember'
import { isUnderFloor, mainOf, nextFrom } from './supplyRuns'

/** What is joined to a main where it ends, and what it is itself joined to there. */
export interface MainMeetings {
  /** `main-to-main` of its own ends, with the mains that they come to in the same order. */
  readonly own: readonly Join[]
  readonly onto: readonly Built[]
  /** Of other mains, pumps and head boxes that come to it. */
  readonly others: readonly Join[]
}

export const isSameMeetings = (a: MainMeetings, b: MainMeetings): boolean =>
  isSameList(a.own, b.own) && isSameList(a.onto, b.onto) && isSameList(a.others, b.others)

/** Ends that come this near to each other are one place: the last fitting reaches over. */
const END_REACH_MM = 50

/** The place that the pipe comes from, and the main's next place where it is met at its very end. */
interface Beside {
  readonly before: Place | undefined
  readonly after: Place | undefined
}

/** Two pipes end to end: an elbow where the water turns, else a coupling, which brings two sizes together as well. */
const endToEnd = (
  at: Place,
  { before, after }: Beside,
  pipe: string,
  onto: string,
  isBuried: boolean,
): Fitting[] => {
  const reducer = reducerOn(pipe, onto, at, isBuried)
  if (before && after && turnAt(before, at, after) >= TURN_RADIANS)
    return [...onPipe('elbow', onto, at, isBuried), ...reducer]
  return reducer.length > 0 ? reducer : onPipe('coupling', onto, at, isBuried)
}

/**
 * Where pipe comes to a main: a tee, and a reducer for another size; at the main's very end the two meet end to end. Under
 * the floor each end has two clamps.
 */
export const meetingFittings = (
  at: Place,
  beside: Beside,
  pipe: string,
  onto: string,
  isBuried: boolean,
): Fitting[] =>
  beside.before && beside.after
    ? endToEnd(at, beside, pipe, onto, isBuried)
    : [...onPipe('tee', onto, at, isBuried), ...reducerOn(pipe, onto, at, isBuried)]

/** An end of its own that meets another main. */
const meetingOf = ({ at, alongMm }: Join, tube: Tube, onto: Tube, isBuried: boolean): Fitting[] => {
  const met = placeAlong(onto.path, alongMm)
  const ends = [onto.path[0], onto.path.at(-1)]
  const end = ends.find((place) => place && length3(place, met) <= END_REACH_MM)
  const beside = { before: nextFrom(tube.path, at), after: end && nextFrom(onto.path, end) }
  return meetingFittings(at, beside, tube.stock, onto.stock, isBuried)
}

const isMet = (end: Place, alongMm: number, { own, others }: MainMeetings): boolean =>
  own.some(({ at }) => length3(at, end) <= END_REACH_MM) ||
  others.some((other) => Math.abs(other.alongMm - alongMm) <= END_REACH_MM)

/** A ring is closed by what joins it there, or by a coupling where it runs on straight. */
const ringFittings = (main: Built, { path, stock }: Tube, meetings: MainMeetings): Fitting[] => {
  const [at, after] = path
  const before = path.at(-2)
  if (!at || !after || !before || isMet(at, 0, meetings)) return []
  return turnAt(before, at, after) >= TURN_RADIANS
    ? []
    : onPipe('coupling', stock, at, isUnderFloor(main, at))
}

/** A cap at each end that nothing joins, so that the next zone can be added there. */
const capFittings = (main: Built, { path, stock }: Tube, meetings: MainMeetings): Fitting[] =>
  [
    { at: path[0], alongMm: 0 },
    { at: path.at(-1), alongMm: pathLength(path) },
  ].flatMap(({ at, alongMm }) =>
    at && !isMet(at, alongMm, meetings) ? capOn(stock, at, isUnderFloor(main, at)) : [],
  )

/** What stands at the ends of a main, by what is joined to it there. */
export const mainEndFittings = (main: Built, meetings: MainMeetings): readonly Fitting[] => {
  const tube = mainOf(main)
  if (!tube) return []
  const isRing = tube.path[0] === tube.path.at(-1)
  const meetingsOfOwn = meetings.own.flatMap((join, index) => {
    const onto = meetings.onto[index]
    const other = onto && mainOf(onto)
    return other ? meetingOf(join, tube, other, isUnderFloor(main, join.at)) : []
  })
  return [
    ...meetingsOfOwn,
    ...(isRing ? ringFittings(main, tube, meetings) : capFittings(main, tube, meetings)),
  ]
}
