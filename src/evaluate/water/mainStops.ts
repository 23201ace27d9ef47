import { lossKOf } from '../../catalogue/losses'
import { CLOSE_MM } from '../../checks/found'
import { length3, type Place } from '../../geometry/point'
import type { Met } from './reach'

/** Where a main is cut: an end, a bend, or where something joins it. */
export interface MainStop {
  readonly at: Place
  /** Along the pipe, rises and all, from the first point, mm. */
  readonly alongMm: number
  /** The join that is made here, if any is. */
  readonly by: Met | undefined
}

/** The piece of a main from one stop to the next. */
export interface Leg {
  readonly lengthMm: number
  /** Of the fittings at its ends. */
  readonly lossK: number
}

const shareOf = (a: Place, b: Place, t: number): Place => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  z: a.z + (b.z - a.z) * t,
})

const vertices = (path: readonly Place[]): MainStop[] => {
  let alongMm = 0
  return path.map((at, i) => {
    const before = path[i - 1]
    if (before) alongMm += length3(before, at)
    return { at, alongMm, by: undefined }
  })
}

/** The place so far along the pipe; past an end it is the end. */
const placeAt = (ends: readonly MainStop[], alongMm: number): Place => {
  const after = ends.findIndex((end) => end.alongMm >= alongMm)
  const [a, b] = [ends[after - 1], ends[after]]
  const last = ends.at(-1)
  if (!last) throw new RangeError('A main needs at least 2 points, and this one has 0')
  if (!b) return last.at
  return a ? shareOf(a.at, b.at, (alongMm - a.alongMm) / (b.alongMm - a.alongMm)) : b.at
}

/**
 * Every place where a main is cut, in order from its first point. Where something joins at a bend or an end, that stop is
 * the join; two things that join at one place are two stops with no way between them.
 */
export const mainStops = (path: readonly Place[], taps: readonly Met[]): readonly MainStop[] => {
  const ends = vertices(path)
  const joined = taps.map((by) => ({ at: placeAt(ends, by.alongMm), alongMm: by.alongMm, by }))
  const free = ends.filter((end) => !taps.some((tap) => Math.abs(tap.alongMm - end.alongMm) <= CLOSE_MM))
  return [...free, ...joined].sort((a, b) => a.alongMm - b.alongMm)
}

const isBend = (ends: readonly MainStop[], alongMm: number): boolean =>
  ends.slice(1, -1).some((vertex) => Math.abs(vertex.alongMm - alongMm) <= CLOSE_MM)

/** What runs on along the main loses in the elbow or the tee of a row or another main; a supply's water turns in anyway. */
const fittingK = ({ by, alongMm }: MainStop, ends: readonly MainStop[]): number => {
  const isPassed = by !== undefined && by.kind !== 'pump-to-main' && by.kind !== 'box-to-main'
  return (isPassed ? lossKOf('tee-run') : 0) + (isBend(ends, alongMm) ? lossKOf('elbow') : 0)
}

/**
 * The pieces of pipe between the stops. Half of what a fitting loses is in the pipe on either side, since water may come
 * from either; nothing runs on past an end, so that nothing is lost in the run of what stands there.
 */
export const mainLegs = (path: readonly Place[], stops: readonly MainStop[]): readonly Leg[] => {
  const ends = vertices(path)
  const last = stops.length - 1
  const losses = stops.map((stop, i) => (i === 0 || i === last ? 0 : fittingK(stop, ends)))
  return stops.slice(1).map((to, i) => ({
    lengthMm: length3((stops[i] ?? to).at, to.at),
    lossK: ((losses[i] ?? 0) + (losses[i + 1] ?? 0)) / 2,
  }))
}
