import { mirrorPoint, movePoint, type Mirror, type Motion } from '../../src/geometry/motion'
import type { Point } from '../../src/geometry/point'
import type { House } from '../../src/layout/house'
import { layoutSchema, type Layout } from '../../src/layout/schema'
import { kindOf } from '../../src/parts'

type Carry = (p: Point) => Point

const carriedHouse = (house: House, carry: Carry): House => ({
  ...house,
  outline: house.outline.map(carry),
  spotLevels: house.spotLevels.map((spot) => ({ ...spot, at: carry(spot.at) })),
  benchmark: { ...house.benchmark, at: carry(house.benchmark.at) },
  services: house.services.map((service) => ({ ...service, points: service.points.map(carry) })),
})

/** The whole bay, house and floor and all that stands in it, taken to another place on the map. */
export const movedBay = (layout: Layout, motion: Motion): Layout =>
  layoutSchema.parse({
    ...layout,
    house: carriedHouse(layout.house, (p) => movePoint(p, motion)),
    parts: layout.parts.map((part) => kindOf(part).move(part, motion)),
  })

/** Seen in a mirror an outline runs clockwise: it is listed the other way round, and its edges are counted anew. */
const mirroredHouse = (house: House, mirror: Mirror): House => {
  const seen = carriedHouse(house, (p) => mirrorPoint(p, mirror))
  const corners = house.outline.length
  return {
    ...seen,
    outline: seen.outline.toReversed(),
    curvedWalls: house.curvedWalls.map((wall) => ({
      ...wall,
      edge: (2 * corners - 2 - wall.edge) % corners,
    })),
  }
}

/** The whole bay as a mirror shows it. */
export const mirroredBay = (layout: Layout, mirror: Mirror): Layout =>
  layoutSchema.parse({
    ...layout,
    house: mirroredHouse(layout.house, mirror),
    parts: layout.parts.map((part) => kindOf(part).mirror(part, mirror)),
  })
