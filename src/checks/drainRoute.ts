import { type Box, boxOf } from '../geometry/box'
import { across, type Axis, high, low, pointOn } from '../geometry/facing'
import type { Point } from '../geometry/point'
import { isInside } from '../geometry/polygon'
import { polylineLength } from '../geometry/polyline'
import type { Built } from '../model/built'
import { inches } from '../units/length'
import type { Bay } from './context'

/** Where a drain could run from under trough outlets to a pit, or to where a pit could be dug. */

/** A drain past the outermost outlets by this much, so that the last drop is clear of the end. */
const PAST_OUTLET_MM = 150

/** A usual pit across the end of a drain, and a hand's room between it and the wall. Common practice, no source. */
const PIT_AND_ROOM_MM = inches(36 + 6)

/** Which way along an axis the drain leaves the outlets. */
type Sign = 1 | -1

const middleOf = (box: Box, axis: Axis): number => (low(box, axis) + high(box, axis)) / 2

/** The end of a box that one comes to first, or leaves last, on the way along an axis. */
const near = (box: Box, axis: Axis, sign: Sign): number => (sign > 0 ? low(box, axis) : high(box, axis))
const far = (box: Box, axis: Axis, sign: Sign): number => (sign > 0 ? high(box, axis) : low(box, axis))

/** Start of a drain that passes under all the outlets and then goes on. */
const startOf = (outlets: Box, axis: Axis, sign: Sign): Point =>
  pointOn(axis, near(outlets, axis, sign) - sign * PAST_OUTLET_MM, middleOf(outlets, across(axis)))

const isPast = (alongMm: number, outlets: Box, axis: Axis, sign: Sign): boolean =>
  sign * (alongMm - far(outlets, axis, sign)) >= 0

/** Straight on into the side of a pit that lies ahead. */
const straightTo = (pit: Box, outlets: Box, axis: Axis, sign: Sign): readonly Point[] | undefined => {
  const side = across(axis)
  const aside = middleOf(outlets, side)
  const endMm = near(pit, axis, sign)
  const isAhead = aside >= low(pit, side) && aside <= high(pit, side) && isPast(endMm, outlets, axis, sign)
  return isAhead ? [startOf(outlets, axis, sign), pointOn(axis, endMm, aside)] : undefined
}

/** On until the pit lies square to the side, and then round one corner into it. */
const roundTo = (pit: Box, outlets: Box, axis: Axis, sign: Sign): readonly Point[] | undefined => {
  const side = across(axis)
  const aside = middleOf(outlets, side)
  const turnMm = middleOf(pit, axis)
  const isAside = aside < low(pit, side) || aside > high(pit, side)
  if (!isAside || !isPast(turnMm, outlets, axis, sign)) return undefined
  const endMm = near(pit, side, aside < low(pit, side) ? 1 : -1)
  return [startOf(outlets, axis, sign), pointOn(axis, turnMm, aside), pointOn(axis, turnMm, endMm)]
}

/** To where a pit has room at the wall, in a bay that has none. */
const towardsWall = (outline: readonly Point[], outlets: Box, axis: Axis, sign: Sign) => {
  const wallMm = far(boxOf(outline), axis, sign)
  const endMm = wallMm - sign * PIT_AND_ROOM_MM
  const end = pointOn(axis, endMm, middleOf(outlets, across(axis)))
  const isRoom =
    isPast(endMm, outlets, axis, sign) && isInside(outline, pointOn(axis, wallMm - sign, end[across(axis)]))
  return isRoom ? [startOf(outlets, axis, sign), end] : undefined
}

const SIGNS: readonly Sign[] = [1, -1]

const byLength = (a: readonly Point[], b: readonly Point[]): number => polylineLength(a) - polylineLength(b)

const hasDrain = (built: readonly Built[]): boolean =>
  built.some(({ tubes }) => tubes.some(({ role }) => role === 'drain'))

const pitsOf = (built: readonly Built[]): readonly Box[] =>
  built.flatMap(({ bodies }) =>
    bodies.filter(({ role }) => role === 'pit').map(({ outline }) => boxOf(outline)),
  )

/**
 * The shortest drain to a pit that all the outlets reach. The first drain of a bay without a pit goes the longest way
 * to a wall, since the rows still to come will lie over it. Undefined where no drain with one corner at most would do.
 */
export const drainRoute = (outlets: Box, { built, house, settings }: Bay): readonly Point[] | undefined => {
  const axes = (['x', 'y'] as const).filter(
    (axis) => high(outlets, across(axis)) - low(outlets, across(axis)) <= 2 * settings.outletReachMm,
  )
  const ways = axes.flatMap((axis) => SIGNS.map((sign) => [axis, sign] as const))
  const pits = pitsOf(built)
  const [shortest] = pits
    .flatMap((pit) => ways.map((way) => straightTo(pit, outlets, ...way) ?? roundTo(pit, outlets, ...way)))
    .filter((route) => route !== undefined)
    .toSorted(byLength)
  if (pits.length > 0 || hasDrain(built)) return shortest
  return ways
    .map((way) => towardsWall(house.outline, outlets, ...way))
    .filter((route) => route !== undefined)
    .toSorted(byLength)
    .at(-1)
}
