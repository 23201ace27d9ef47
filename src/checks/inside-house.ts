import { contains } from '../geometry/polygon'
import type { Point } from '../geometry/point'
import type { House } from '../layout/house'
import type { Body, Built } from '../model/built'
import { rememberEach } from '../model/remember'
import type { Finding } from '../model/finding'
import type { BayRule } from './context'
import { found, lengthOf } from './found'
import { boxOf, middle } from '../geometry/box'

const RULE = 'inside-house'

const LOOKED_AT = new Set(['frame', 'trough', 'pit', 'equipment'])

/** A body of the part that a wall runs through or that stands outside; remembered, since most parts stay where they are. */
const outsideOf = rememberEach<Built, readonly Point[], Body | undefined>((built, outline) =>
  built.bodies.find((body) => LOOKED_AT.has(body.role) && !contains(outline, body.outline)),
)

const findingsOf = (built: Built, house: House): Finding[] => {
  const outside = outsideOf(built, house.outline)
  if (!outside) return []
  const at = middle(boxOf(outside.outline))
  const none = lengthOf(0)
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: 'Clash',
      parts: [built.part],
      at,
      measured: none,
      limit: none,
    }),
  ]
}

/** What is built stands inside the walls. */
export const insideHouse: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Inside the walls',
  limit: 'Racks, troughs, pits and equipment stand wholly inside the house outline',
  source: 'Geometry',
  mending: 'Move the part inside, or correct the outline of the house.',
  check: ({ built, house }) => built.flatMap((b) => findingsOf(b, house)),
  say: ({ parts }, { name }) => `${name(parts[0] ?? '')} stands through a wall of the house.`,
}
