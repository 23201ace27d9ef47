import { gutterOf } from '../catalogue/gutter'
import type { Finding } from '../model/finding'
import type { TroughReturn } from '../model/returns'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, flowTotalOf, found, inFeet, lengthOf, stateFor, term } from './found'
import { outletAt, troughsOf, type WetTrough } from './troughs'

const RULE = 'trough-freeboard-min'

/** A leaf over an outlet is seen and lifted within a minute; so much of the trough stays free. Common practice, no source. */
const LEAST_MM = inches(2)

const findingOf = ({ built, facts, trough }: WetTrough): Finding =>
  found({
    rule: RULE,
    subject: 'fit',
    state: stateFor('fit', trough.blockedFreeboardMm, LEAST_MM, 0),
    parts: [trough.part],
    at: outletAt(built, trough.line),
    measured: lengthOf(trough.blockedFreeboardMm),
    limit: lengthOf(LEAST_MM),
    terms: [
      term('Flow of the trough', flowTotalOf(trough.flowLph)),
      term('Depth of the gutter', lengthOf(gutterOf(facts.gutter).depthMm)),
      term('Free as it runs', lengthOf(trough.freeboardMm)),
      term('Length of the trough', inFeet(facts.runMm)),
    ],
  })

/** Of a trough that runs over as it is the outlet's own rule tells. */
const isShort = ({ flowLph, freeboardMm, blockedFreeboardMm }: TroughReturn): boolean =>
  flowLph > 0 && freeboardMm >= 0 && blockedFreeboardMm < LEAST_MM - CLOSE_MM

const check = (bay: Bay): Finding[] =>
  troughsOf(bay).flatMap((wet) => (isShort(wet.trough) ? [findingOf(wet)] : []))

/** One blocked outlet must not spill fish water on the floor before somebody comes. */
export const troughFreeboardMin: BayRule = {
  over: 'bay',
  isOfRacks: true,
  id: RULE,
  title: 'Trough with its outlet blocked',
  limit: '2 in from the water to the lip once one outlet has been blocked for a minute',
  source: 'Common practice, no source; what runs in piles up as a level pool at the low end',
  mending: 'Take a deeper gutter, a longer one, or let fewer towers drip into it; and screen the outlet.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value < 0
      ? `With its outlet blocked for a minute a trough of ${name(parts[0] ?? '')} runs over its lip at the low end; ${onTape(limit.value)} should stay free.`
      : `With its outlet blocked for a minute a trough of ${name(parts[0] ?? '')} fills to ${onTape(measured.value)} under its lip; ${onTape(limit.value)} should stay free.`,
}
