import type { Point } from '../../geometry/point'
import { regular } from '../../geometry/polygon'
import type { Body, Built } from '../../model/built'
import { footprintOutline, outlineAround, reachOf, type Footprint } from '../footprint'
import type { Obstacle } from './schema'

/** Sides of the polygon about a circle: it is never wider than the circle by more than 1 % of the radius. */
const ROUND_SIDES = 24

/** The rectangle that holds the thing: of a round one, the square about its circle. */
export const boxOfObstacle = ({ at, heading, shape, lengthMm, widthMm }: Obstacle): Footprint => ({
  at,
  heading,
  lengthMm,
  widthMm: shape === 'round' ? lengthMm : widthMm,
})

const outlineOf = (part: Obstacle): Point[] =>
  part.shape === 'round'
    ? regular(part.at, part.lengthMm / 2, ROUND_SIDES)
    : footprintOutline(boxOfObstacle(part))

/** The thing itself. What hangs leaves the floor below its underside free. */
const bodyOf = (part: Obstacle): Body => ({
  part: part.id,
  role: part.what === 'post' ? 'post' : 'equipment',
  outline: outlineOf(part),
  fromMm: part.undersideMm,
  toMm: Math.max(part.undersideMm, part.topMm),
})

/** The footprint grown to each side, between two heights; none where no side asks for room. */
const keepClearOf = (part: Obstacle): Body[] => {
  const { clearBackMm, clearFrontMm, clearLeftMm, clearRightMm, clearFromMm, clearToMm } = part
  const asks = Math.max(clearBackMm, clearFrontMm, clearLeftMm, clearRightMm) > 0
  if (!asks || clearToMm <= clearFromMm) return []
  const box = boxOfObstacle(part)
  const own = reachOf(box)
  const outline = outlineAround(box, {
    backMm: own.backMm + clearBackMm,
    frontMm: own.frontMm + clearFrontMm,
    leftMm: own.leftMm + clearLeftMm,
    rightMm: own.rightMm + clearRightMm,
  })
  return [{ part: part.id, role: 'keep-clear', outline, fromMm: clearFromMm, toMm: clearToMm }]
}

const footingOf = ({ id, at, footingMm, footingDeepMm }: Obstacle): Body[] =>
  footingMm > 0 && footingDeepMm > 0
    ? [
        {
          part: id,
          role: 'footing',
          outline: regular(at, footingMm / 2, ROUND_SIDES),
          fromMm: -footingDeepMm,
          toMm: 0,
        },
      ]
    : []

/** Bodies alone: nothing of what stands in the house already is cut or bought. */
export const deriveObstacle = (part: Obstacle): Built => ({
  part: part.id,
  zFrom: 'benchmark',
  sticks: [],
  tubes: [],
  fittings: [],
  bodies: [bodyOf(part), ...keepClearOf(part), ...footingOf(part)],
  mouths: [],
  supports: [],
})
