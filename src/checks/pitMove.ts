import { boxOf, grown, overlaps, type Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import { contains, gapBetween, isInside, outlineDistance } from '../geometry/polygon'
import { crossings } from '../geometry/polyline'
import type { Body } from '../model/built'
import type { Mend } from '../model/finding'
import { inches } from '../units/length'
import type { Bay } from './context'
import { CLOSE_MM } from './found'
import { buriedOf, keptClearOf, standingOf } from './solids'

/** A pit is shifted in whole steps that a tape shows. */
const STEP_MM = inches(1 / 4)

/** Undisturbed ground that a moved pit keeps from all else. Common practice, no source. */
const CLEAR_MM = inches(3)

/** No mend moves a pit further: it would be another plan. */
const FURTHEST_MM = inches(48)

const WAYS: readonly Point[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
]

const shifted = (body: Body, { x, y }: Point): Body => ({
  ...body,
  outline: body.outline.map((p) => ({ x: p.x + x, y: p.y + y })),
})

/** The least shift one way, in whole steps, that leaves so much ground to a footing. */
const shiftOut = (pit: Body, footing: Body, wantedMm: number, way: Point): Point | undefined => {
  for (let mm = STEP_MM; mm <= FURTHEST_MM; mm += STEP_MM) {
    const by = { x: way.x * mm, y: way.y * mm }
    if (gapBetween(shifted(pit, by).outline, footing.outline).gapMm >= wantedMm - CLOSE_MM) return by
  }
  return undefined
}

/** What a pit must not come near: all that stands, is buried or kept clear, but itself and the drains that come to it. Footings have a rule of their own, and must only not be cut. */
const othersOf = (pit: Body, { built, joins }: Bay): readonly Box[] => {
  const own = new Set([pit.part, ...joins.filter(({ to }) => to === pit.part).map(({ from }) => from)])
  return built
    .filter(({ part }) => !own.has(part))
    .flatMap((b) => [standingOf, buriedOf, keptClearOf].flatMap((solidsOf) => solidsOf(b, null)?.all ?? []))
    .map(({ body, box }) => (body.role === 'footing' ? box : grown(box, CLEAR_MM)))
}

const gapTo = ({ outline }: Body, at: Point): number =>
  isInside(outline, at) ? 0 : outlineDistance(outline, at).gapMm

/** Every drain that comes to the pit still ends as near to it. */
const keepsDrains = (pit: Body, moved: Body, { joins }: Bay): boolean =>
  joins
    .filter(({ kind, to }) => kind === 'drain-to-pit' && to === pit.part)
    .every(({ at }) => gapTo(moved, at) <= gapTo(pit, at) + CLOSE_MM)

const crosses = ({ outline }: Body, { house }: Bay): boolean =>
  house.services.some(({ points }) => crossings([...outline, ...outline.slice(0, 1)], points).length > 0)

const meets = ({ outline }: Body, others: readonly Box[]): boolean => {
  const zone = grown(boxOf(outline), -CLOSE_MM)
  return others.some((box) => overlaps(zone, box))
}

/** One move of a pit away from a footing, the shortest that brings it into nothing else; undefined where there is none. */
export const pitMove = (
  pit: Body,
  footing: Body,
  wantedMm: number,
  isClear: (moved: Body) => boolean,
  bay: Bay,
): Mend | undefined => {
  const others = othersOf(pit, bay)
  const by = WAYS.flatMap((way) => shiftOut(pit, footing, wantedMm, way) ?? [])
    .toSorted((a, b) => Math.abs(a.x + a.y) - Math.abs(b.x + b.y))
    .find((shift) => {
      const moved = shifted(pit, shift)
      return (
        contains(bay.house.outline, moved.outline) &&
        isClear(moved) &&
        keepsDrains(pit, moved, bay) &&
        !meets(moved, others) &&
        (crosses(pit, bay) || !crosses(moved, bay))
      )
    })
  return by && { kind: 'move', parts: [pit.part], dxMm: by.x, dyMm: by.y }
}
