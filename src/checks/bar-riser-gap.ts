import { inches } from '../units/length'
import type { PartRule } from './context'
import { lengthOf, stateFor, CLOSE_MM, term } from './found'
import { overRack } from './rackRule'

const RULE = 'bar-riser-gap'

/** A hook and fingers go round the bar. Common practice, no source. */
const GAP_MM = inches(0.5)

/** A hanger bar must lie clear of every riser. */
export const barRiserGap: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Hanger bar clear of risers',
  limit: '1/2 in between a bar and a riser',
  source: 'Common practice, no source',
  mending: 'Change the bars a rack or the riser pairs between rack ends.',
  check: overRack(RULE, ({ barToRiserMm, pitchMm }) =>
    barToRiserMm >= GAP_MM - CLOSE_MM
      ? undefined
      : {
          state: stateFor('fit', barToRiserMm, GAP_MM, 0),
          measured: lengthOf(barToRiserMm),
          limit: lengthOf(GAP_MM),
          terms: [term('Pitch of the bars', lengthOf(pitchMm))],
        },
  ),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value > 0
      ? `A hanger bar of ${name(parts[0] ?? '')} lies ${onTape(measured.value)} from a riser; it wants ${onTape(limit.value)}.`
      : `A hanger bar of ${name(parts[0] ?? '')} falls on a riser.`,
}
