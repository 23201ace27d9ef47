import { boxOf, joined, type Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Part } from '../layout/schema'
import type { BodyRole, Built } from '../model/built'
import { rememberEach } from '../model/remember'

/** What may lie over, in or under other things without standing there. */
const EMPTY_ROLES: ReadonlySet<BodyRole> = new Set(['keep-clear', 'door-swing', 'footing'])

/**
 * The box of what stands on the floor: of a row its widest parts, leaves included, so that distances are leaf to leaf.
 * Of a thing that is nothing but cleared floor, that floor; undefined for a part without bodies.
 */
export const standBoxOf = rememberEach<Built, null, Box | undefined>(({ bodies }) => {
  const standing = bodies.filter(({ role }) => !EMPTY_ROLES.has(role))
  const boxes = (standing.length > 0 ? standing : bodies).map(({ outline }) => boxOf(outline))
  return boxes.length > 0 ? boxes.reduce(joined) : undefined
})

/** Aisles are measured from rows, and from what stands in the way of a person. */
export const isAlongAisles = ({ rack, bodies }: Built): boolean =>
  rack !== undefined || bodies.some(({ role }) => role === 'post' || role === 'equipment')

/** Where the crew measures a part from: its own place, or the first point of a line. */
export const anchorOf = (part: Part): Point | undefined => ('points' in part ? part.points[0] : part.at)
