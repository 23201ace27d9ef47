import { placeAlong, pathLength, turnAt } from '../geometry/path'
import { length3, type Place } from '../geometry/point'
import type { Built, Fitting, Tube } from '../model/built'
import type { Join } from '../model/levels'
import { capOn, onPipe, reducerOn } from '../parts/onPipe'
import { TURN_RADIANS } from '../parts/points'
import { isSameList } from '../model/remember'
import { mainOf, nextFrom } from './supplyRuns'

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

/** Two pipes end to end: an elbow where the water turns, else a coupling, which brings two sizes together as well. */
const endToEnd = (at: Place, before: Place, after: Place, pipe: string, onto: string): Fitting[] => {
  const reducer = reducerOn(pipe, onto, at)
  if (turnAt(before, at, after) >= TURN_RADIANS) return [...onPipe('elbow', onto, at), ...reducer]
  return reducer.length > 0 ? reducer : onPipe('coupling', onto, at)
}

/**
 * Where pipe comes to a main: a tee, and a reducer for another size; at the main's very end, `after` being its next place,
 * the two meet end to end. `before` is the place that the pipe comes from.
 */
export const meetingFittings = (
  at: Place,
  before: Place | undefined,
  after: Place | undefined,
  pipe: string,
  onto: string,
): Fitting[] =>
  before && after
    ? endToEnd(at, before, after, pipe, onto)
    : [...onPipe('tee', onto, at), ...reducerOn(pipe, onto, at)]

/** An end of its own that meets another main. */
const meetingOf = ({ at, alongMm }: Join, tube: Tube, onto: Tube): Fitting[] => {
  const met = placeAlong(onto.path, alongMm)
  const ends = [onto.path[0], onto.path.at(-1)]
  const end = ends.find((place) => place && length3(place, met) <= END_REACH_MM)
  return meetingFittings(at, nextFrom(tube.path, at), end && nextFrom(onto.path, end), tube.stock, onto.stock)
}

const isMet = (end: Place, alongMm: number, { own, others }: MainMeetings): boolean =>
  own.some(({ at }) => length3(at, end) <= END_REACH_MM) ||
  others.some((other) => Math.abs(other.alongMm - alongMm) <= END_REACH_MM)

/** A ring is closed by what joins it there, or by a coupling where it runs on straight. */
const ringFittings = ({ path, stock }: Tube, meetings: MainMeetings): Fitting[] => {
  const [at, after] = path
  const before = path.at(-2)
  if (!at || !after || !before || isMet(at, 0, meetings)) return []
  return turnAt(before, at, after) >= TURN_RADIANS ? [] : onPipe('coupling', stock, at)
}

/** A cap at each end that nothing joins, so that the next zone can be added there. */
const capFittings = ({ path, stock }: Tube, meetings: MainMeetings): Fitting[] =>
  [
    { at: path[0], alongMm: 0 },
    { at: path.at(-1), alongMm: pathLength(path) },
  ].flatMap(({ at, alongMm }) => (at && !isMet(at, alongMm, meetings) ? capOn(stock, at) : []))

/** What stands at the ends of a main, by what is joined to it there. */
export const mainEndFittings = (main: Built, meetings: MainMeetings): readonly Fitting[] => {
  const tube = mainOf(main)
  if (!tube) return []
  const isRing = tube.path[0] === tube.path.at(-1)
  const meetingsOfOwn = meetings.own.flatMap((join, index) => {
    const onto = meetings.onto[index]
    const other = onto && mainOf(onto)
    return other ? meetingOf(join, tube, other) : []
  })
  return [...meetingsOfOwn, ...(isRing ? ringFittings(tube, meetings) : capFittings(tube, meetings))]
}
