import { boxOf } from '../../src/geometry/box'
import type { Body, BodyRole, Built } from '../../src/model/built'
import { inchesOf } from './site'

export const bodiesOf = (built: Built, role: BodyRole): readonly Body[] =>
  built.bodies.filter((body) => body.role === role)

/** Where a body lies and how high, in inches to 1/1000: west, south, east, north, bottom, top. */
export const extentOf = ({ outline, fromMm, toMm }: Body): number[] => {
  const { x0, y0, x1, y1 } = boxOf(outline)
  return [x0, y0, x1, y1, fromMm, toMm].map(inchesOf)
}
