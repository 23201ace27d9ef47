import { inches } from '../units/length'
import type { Finding } from '../model/finding'
import { cartsOf } from './carts'
import type { Bay, BayRule, CartReach } from './context'
import { doorsOf } from './doors'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'wheelchair-route-min'

/** 2010 ADA Standards 403.5.1: clear width of a walking surface. */
const CLEAR_MM = inches(36)

/** 2010 ADA Standards 304.3.1: turning circle. */
const TURN_MM = inches(60)

const findingsOf = (part: string, reach: CartReach, bay: Bay): Finding[] => {
  const rack = bay.builtOf.get(part)?.rack
  if (!rack) return []
  const clearMm = Math.max(reach.leftMm, reach.rightMm)
  const turnMm = Math.max(reach.startMm, reach.endMm)
  const isClear = clearMm >= CLEAR_MM - CLOSE_MM
  if (isClear && turnMm >= TURN_MM - CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: isClear ? 'Tight' : 'Clash',
      parts: [part],
      at: rowPlace(rack),
      measured: lengthOf(isClear ? turnMm : clearMm),
      limit: lengthOf(isClear ? TURN_MM : CLEAR_MM),
      facts: { what: isClear ? 'turn' : 'route' },
      terms: [
        term('Widest way alongside', lengthOf(clearMm)),
        term('Widest square at an end of the row', lengthOf(turnMm)),
      ],
    }),
  ]
}

/** Where a wheelchair route is asked for: 36 in clear to a side of each row, and 60 in to turn at one of its ends. */
export const wheelchairRouteMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Wheelchair route',
  limit: '36 in clear to each row, 60 in to turn at an end of it',
  source: '2010 ADA Standards 403.5.1 and 304.3.1: a check value, not a permit',
  mending: 'Widen the aisle to 36 in, and leave 60 in square at a row end.',
  check: (bay) =>
    bay.settings.wheelchair && doorsOf(bay.built).length > 0
      ? [...cartsOf(bay)].flatMap(([part, reach]) => findingsOf(part, reach, bay))
      : [],
  say: ({ parts, measured, limit, facts }, { onTape, name }) =>
    facts['what'] === 'turn'
      ? `At the ends of ${name(parts[0] ?? '')} there is ${onTape(measured.value)} to turn a wheelchair; it wants ${onTape(limit.value)}.`
      : `The way to ${name(parts[0] ?? '')} is ${onTape(measured.value)} clear; a wheelchair wants ${onTape(limit.value)}.`,
}
