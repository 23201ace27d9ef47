import { cartsOf } from './carts'
import type { BayRule } from './context'
import { doorsOf } from './doors'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'cart-reach-min'

/** The cart that the crew has must come alongside each row from a door, on one side at least. */
export const cartReachMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Cart to each row',
  limit: 'The bay’s cart comes alongside one long side of every row from a door',
  source: 'Geometry: free floor eroded by half the cart’s width',
  mending: 'Widen the narrowest place on the way, or take a narrower cart.',
  check: (bay) =>
    (doorsOf(bay.built).length > 0 ? [...cartsOf(bay)] : []).flatMap(([part, cart]) => {
      const widest = Math.max(cart.leftMm, cart.rightMm)
      const rack = bay.builtOf.get(part)?.rack
      if (!rack || widest >= bay.settings.cartMm - CLOSE_MM) return []
      return [
        found({
          rule: RULE,
          subject: 'fit',
          state: 'Tight',
          parts: [part],
          at: rowPlace(rack),
          measured: lengthOf(widest),
          limit: lengthOf(bay.settings.cartMm),
          terms: [
            term('Widest cart at the left side', lengthOf(cart.leftMm)),
            term('Widest cart at the right side', lengthOf(cart.rightMm)),
          ],
        }),
      ]
    }),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value > 0
      ? `The widest cart that comes alongside ${name(parts[0] ?? '')} from a door is ${onTape(measured.value)}; yours is ${onTape(limit.value)}.`
      : `No cart comes alongside ${name(parts[0] ?? '')} from a door; yours is ${onTape(limit.value)} wide.`,
}
