import { cartsOf } from './carts'
import type { BayRule } from './context'
import { doorsOf } from './doors'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { EXIT_ACCESS_MM } from './exitAccess'
import { rowPlace } from './rowPlace'

const RULE = 'exit-access-min'

/** From at least one side of every row a person must be able to walk out of a door. */
export const exitAccessMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Way out',
  limit: '28 in clear from a side of each row to a door',
  source:
    '29 CFR 1910.36(g)(2): good practice on a farm, binding in a school, shop or laboratory (29 CFR 1928.21(b))',
  mending: 'Open an aisle to the row, or take away what stands in it.',
  check: (bay) =>
    (doorsOf(bay.built).length > 0 ? [...cartsOf(bay)] : []).flatMap(([part, cart]) => {
      const widest = cart.outMm
      const rack = bay.builtOf.get(part)?.rack
      if (!rack || widest >= EXIT_ACCESS_MM - CLOSE_MM) return []
      return [
        found({
          rule: RULE,
          subject: 'fit',
          state: 'Clash',
          parts: [part],
          at: rowPlace(rack),
          measured: lengthOf(widest),
          limit: lengthOf(EXIT_ACCESS_MM),
          terms: [
            term('Widest way to the left side', lengthOf(cart.leftMm)),
            term('Widest way to the right side', lengthOf(cart.rightMm)),
          ],
        }),
      ]
    }),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value > 0
      ? `The way from ${name(parts[0] ?? '')} to a door narrows to ${onTape(measured.value)}; a way out wants ${onTape(limit.value)}.`
      : `No way from ${name(parts[0] ?? '')} to a door: a way out wants ${onTape(limit.value)}.`,
}
