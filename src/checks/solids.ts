import { type Box, boxOf, joined } from '../geometry/box'
import type { Body, BodyRole, Built } from '../model/built'
import { rememberEach } from '../model/remember'

/** A body with its box, for quick looks. */
export interface Solid {
  readonly body: Body
  readonly box: Box
}

export interface Solids {
  readonly box: Box
  readonly all: readonly Solid[]
}

/** The bodies of some roles, with their boxes; undefined where there are none. */
export const solidsOf = (built: Built, roles: readonly BodyRole[]): Solids | undefined => {
  const all = built.bodies
    .filter(({ role }) => roles.includes(role))
    .map((body) => ({ body, box: boxOf(body.outline) }))
  return all.length > 0 ? { box: all.map(({ box }) => box).reduce(joined), all } : undefined
}

const STANDING: readonly BodyRole[] = ['canopy', 'frame', 'foot', 'trough', 'post', 'equipment']
const BURIED: readonly BodyRole[] = ['footing', 'pit', 'trench']
const KEPT_CLEAR: readonly BodyRole[] = ['keep-clear', 'door-swing']

/** What stands on or hangs over the floor. */
export const standingOf = rememberEach<Built, null, Solids | undefined>((built) => solidsOf(built, STANDING))

/** What is dug into the floor. */
export const buriedOf = rememberEach<Built, null, Solids | undefined>((built) => solidsOf(built, BURIED))

/** Where nothing may stand. */
export const keptClearOf = rememberEach<Built, null, Solids | undefined>((built) =>
  solidsOf(built, KEPT_CLEAR),
)

/** Whether two bodies share height; touching bands share none. */
export const shareHeight = (a: Body, b: Body): boolean => a.fromMm < b.toMm && b.fromMm < a.toMm
