import { contains } from '../geometry/polygon'
import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import type { Bay, BayRule } from './context'
import { found, lengthOf } from './found'
import { boxOf, middle } from '../geometry/box'

const RULE = 'inside-house'

const LOOKED_AT = new Set(['frame', 'trough', 'pit', 'equipment'])

const check = ({ built, house }: Bay): Finding[] =>
  built.flatMap((b: Built) => {
    const outside = b.bodies.find(
      ({ role, outline }) => LOOKED_AT.has(role) && !contains(house.outline, outline),
    )
    return outside
      ? [
          found({
            rule: RULE,
            subject: 'fit',
            state: 'Clash',
            parts: [b.part],
            at: middle(boxOf(outside.outline)),
            measured: lengthOf(0),
            limit: lengthOf(0),
          }),
        ]
      : []
  })

/** What is built stands inside the walls. */
export const insideHouse: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Inside the walls',
  limit: 'Racks, troughs, pits and equipment stand wholly inside the house outline',
  source: 'Geometry',
  mending: 'Move the part inside, or correct the outline of the house.',
  check,
  say: ({ parts }, { name }) => `${name(parts[0] ?? '')} stands through a wall of the house.`,
}
