import type { RackFacts } from '../model/rackFacts'
import type { Finding, Mend } from '../model/finding'
import { outlets } from '../catalogue/outlet'
import type { TroughReturn } from '../model/returns'
import { outletDepthMm, ventedLph } from '../solvers/gravity/outlet'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, flowTotalOf, found, lengthOf, stateFor, term } from './found'
import { outletAt, troughsOf, type WetTrough } from './troughs'

const RULE = 'tip-air-min'

/** Between tip and water: roots that hang out of the tip, and what splashes. Common practice, no source. */
const AIR_MM = inches(3 / 4)

/** A tip that hangs too low over its trough, or in one whose run has no window, is told of by other rules. */
const isSaidElsewhere = ({ tipMm, tipLowestMm, runMm, longestRunMm }: RackFacts): boolean =>
  tipMm < tipLowestMm - CLOSE_MM || runMm > longestRunMm + CLOSE_MM

/** An outlet that backs up less by what is missing lets the pool under the tips down by as much. */
const mendFor = (
  { part, flowLph, outletDepthMm: nowMm }: TroughReturn,
  shortMm: number,
): Mend | undefined => {
  const low = outlets.filter(({ boreMm }) => outletDepthMm(boreMm, flowLph).depthMm <= nowMm - shortMm)
  const outlet = low.find(({ boreMm }) => ventedLph(boreMm) >= flowLph) ?? low[0]
  return outlet && { kind: 'set', part, field: 'outletBore', value: outlet.key }
}

const findingOf = ({ built, facts, trough }: WetTrough, airMm: number): Finding => {
  const mend = mendFor(trough, AIR_MM - airMm)
  return found({
    rule: RULE,
    subject: 'fit',
    state: stateFor('fit', airMm, AIR_MM, 0),
    parts: [trough.part],
    at: outletAt(built, trough.line),
    measured: lengthOf(airMm),
    limit: lengthOf(AIR_MM),
    terms: [
      term('Flow of the trough', flowTotalOf(trough.flowLph)),
      term('Water over the outlet', lengthOf(trough.outletDepthMm)),
      term('Tip over the invert, high end', lengthOf(facts.tipOverHighInvertMm ?? 0)),
    ],
    ...(mend && { mend }),
  })
}

const check = (bay: Bay): Finding[] =>
  troughsOf(bay).flatMap((wet) => {
    const { rack } = wet.built
    const { tipAirMm } = wet.trough
    if (!rack || tipAirMm === undefined || tipAirMm >= AIR_MM - CLOSE_MM) return []
    return isSaidElsewhere(rack) ? [] : [findingOf(wet, tipAirMm)]
  })

/** Tips hang over the water as deep as it runs under each of them, not only over the trough. */
export const tipAirMin: BayRule = {
  over: 'bay',
  isOfRacks: true,
  id: RULE,
  title: 'Tips over the water',
  limit: '3/4 in of air from every tip to the water that runs under it',
  source:
    'Common practice, no source; the depth of the water by the momentum equation, Manning and the outlet',
  mending: 'Take a bigger outlet, let the gutters fall more, or hang the tips higher.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) =>
    measured.value < 0
      ? `Tips of ${name(parts[0] ?? '')} hang ${onTape(-measured.value)} deep in the water of their trough; they want ${onTape(limit.value)} of air over it.`
      : `The water in the troughs of ${name(parts[0] ?? '')} comes up to ${onTape(measured.value)} under a tip; it should leave ${onTape(limit.value)} of air.`,
}
