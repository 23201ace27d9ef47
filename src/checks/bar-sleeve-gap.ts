import { inches } from '../units/length'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'bar-sleeve-gap'

/** Set-out of bars is good to 1/8 in; twice that keeps a bar off the sleeve. Common practice, no source. */
const GAP_MM = inches(0.25)

/** A bar on a sleeve hangs higher than its neighbours by the sleeve's wall. */
export const barSleeveGap: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Hanger bar clear of sleeves',
  limit: '1/4 in between a bar and the end of a rail sleeve',
  source: 'Geometry: P/2 - half a sleeve - half a bar; 1/4 in is common practice, no source',
  mending: 'Take fewer bars a rack, or a shorter insertion.',
  check: overRack(RULE, ({ barToSleeveMm, pitchMm }) =>
    barToSleeveMm >= GAP_MM - CLOSE_MM
      ? undefined
      : {
          state: stateFor('fit', barToSleeveMm, GAP_MM, 0),
          measured: lengthOf(barToSleeveMm),
          limit: lengthOf(GAP_MM),
          terms: [term('Half the pitch', lengthOf(pitchMm / 2))],
        },
  ),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value > 0
      ? `A hanger bar of ${name(parts[0] ?? '')} lies ${onTape(measured.value)} from a sleeve; it wants ${onTape(limit.value)}.`
      : `A hanger bar of ${name(parts[0] ?? '')} sits on a sleeve and hangs higher than its neighbours.`,
}
