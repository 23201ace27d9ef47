import { inches } from '../units/length'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'tower-withdrawal-min'

/** Room round a tower body that is lifted, tilted and passed out. Common practice, no source. */
const ROOM_MM = inches(4)

/** An inner tower comes out between two bars, past the outer towers. */
export const towerWithdrawalMin: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Taking a tower out',
  limit: 'Pitch at least a tower body and 4 in',
  source: 'Common practice, no source',
  mending: 'Take fewer bars a rack.',
  check: overRack(RULE, ({ pitchMm, bodyMm }) =>
    pitchMm >= bodyMm + ROOM_MM + CLOSE_MM
      ? undefined
      : {
          state: stateFor('fit', pitchMm, bodyMm + ROOM_MM + 2 * CLOSE_MM, bodyMm),
          measured: lengthOf(pitchMm - bodyMm),
          limit: lengthOf(ROOM_MM),
          terms: [term('Pitch of the bars', lengthOf(pitchMm)), term('Tower body', lengthOf(bodyMm))],
        },
  ),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `Between two bars of ${name(parts[0] ?? '')} a tower has ${onTape(measured.value)} to pass; lifted and tilted it wants more than ${onTape(limit.value)}.`,
}
