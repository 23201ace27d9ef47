import { inches } from '../units/length'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, term } from './found'
import { overRack } from './rackRule'

const RULE = 'outlet-tower-gap'

/** Beside a tower's body: room to reach the outlet and clear it. Common practice, no source. */
const ROOM_MM = inches(1)

/** A trough's outlet lies between two towers, where roots do not hang into it and a hand can clear it. */
export const outletTowerGap: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Outlet between two towers',
  limit: 'Half a tower body and 1 in from a station to the outlet’s middle',
  source: 'Common practice, no source: the outlet is set in the middle of the last riser bay',
  mending: 'Take an even number of hanger bars to each riser bay.',
  check: overRack(RULE, ({ outletToStationMm, bodyMm, pitchMm }) => {
    const needMm = bodyMm / 2 + ROOM_MM
    if (outletToStationMm >= needMm - CLOSE_MM) return undefined
    return {
      state: 'Tight',
      measured: lengthOf(outletToStationMm),
      limit: lengthOf(needMm),
      terms: [term('Pitch of the bars', lengthOf(pitchMm)), term('Tower body', lengthOf(bodyMm))],
    }
  }),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value > CLOSE_MM
      ? `The trough outlets of ${name(parts[0] ?? '')} lie ${onTape(measured.value)} from the middle of a tower; they want ${onTape(limit.value)}.`
      : `The trough outlets of ${name(parts[0] ?? '')} lie right under a tower.`,
}
