import { stockOf } from '../catalogue/stock'
import { inches } from '../units/length'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'hole-bit-min'

/** A bit is this much over the conduit: less and a burr or a bow stops the stick. Common practice, no source. */
const OVER_MM = inches(1 / 64)

/** A hole that its conduit does not go through is drilled two hundred times before anybody slides a stick in. */
export const holeBitMin: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Bit and conduit',
  limit: 'Each bit 1/64 in over the conduit that goes through its hole',
  source: 'common practice, no source',
  mending: 'Measure one stick with a caliper; take the next bigger bit.',
  check: overRack(RULE, ({ drilledFor }) => {
    const [first, ...others] = drilledFor
    if (!first) return undefined
    const { stock, bitMm, odMm } = others.reduce(
      (least, each) => (each.bitMm - each.odMm < least.bitMm - least.odMm ? each : least),
      first,
    )
    const overMm = bitMm - odMm
    if (overMm >= OVER_MM - CLOSE_MM) return undefined
    return {
      state: stateFor('fit', overMm, OVER_MM, 0),
      measured: lengthOf(overMm),
      limit: lengthOf(OVER_MM),
      facts: { conduit: stockOf(stock).title, bitMm, odMm },
      terms: [term('Bit', lengthOf(bitMm)), term('Outside of the conduit', lengthOf(odMm))],
    }
  }),
  say: ({ parts, measured, facts }, { bore, name }) => {
    const bit = `The bit of ${bore(Number(facts['bitMm']))} that ${name(parts[0] ?? '')} is drilled with`
    const conduit = `its ${facts['conduit']} of ${bore(Number(facts['odMm']))} outside`
    return measured.value >= 0
      ? `${bit} leaves ${conduit} no more than ${bore(measured.value)} of room.`
      : `${bit} is smaller than ${conduit}: no stick goes through.`
  },
}
