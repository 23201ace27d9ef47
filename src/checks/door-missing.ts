import { boxOf, middle } from '../geometry/box'
import type { BayRule } from './context'
import { doorsOf } from './doors'
import { found, lengthOf } from './found'

const RULE = 'door-missing'

/** Without a door nothing can be said of ways for people and carts, so that is said once, and of no row. */
export const doorMissing: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'A door',
  limit: 'At least one door in the house',
  source: 'Geometry: every way starts at a door',
  mending: 'Drag a door from the shelf on to a wall.',
  check: ({ built, house }) => {
    const hasRows = built.some(({ rack }) => rack !== undefined)
    if (!hasRows || doorsOf(built).length > 0) return []
    const none = lengthOf(0)
    const at = middle(boxOf(house.outline))
    return [found({ rule: RULE, subject: 'fit', state: 'Tight', parts: [], at, measured: none, limit: none })]
  },
  say: () =>
    'The house has no door yet, so ways for people and carts are not looked at. Drag a door from the shelf on to a wall.',
}
