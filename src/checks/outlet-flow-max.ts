import { outlets, type Outlet } from '../catalogue/outlet'
import type { Finding, Mend } from '../model/finding'
import type { TroughReturn } from '../model/returns'
import { ventedLph } from '../solvers/gravity/outlet'
import type { Bay, BayRule } from './context'
import { flowOf, flowTotalOf, found, inFeet, lengthOf, term } from './found'
import { outletAt, troughsOf, type WetTrough } from './troughs'

const RULE = 'outlet-flow-max'

/** The next bore that swallows its own air at the flow. */
const bigEnough = (flowLph: number): Outlet | undefined =>
  outlets.find(({ boreMm }) => ventedLph(boreMm) >= flowLph)

const mendFor = ({ part, flowLph }: TroughReturn): Mend | undefined => {
  const outlet = bigEnough(flowLph)
  return outlet && { kind: 'set', part, field: 'outletBore', value: outlet.key }
}

const findingOf = ({ built, facts, trough }: WetTrough): Finding => {
  const { part, flowLph, towers } = trough
  const mend = mendFor(trough)
  const towerLph = towers > 0 ? flowLph / towers : flowLph
  return found({
    rule: RULE,
    subject: 'fit',
    state: trough.freeboardMm < 0 ? 'Clash' : 'Tight',
    parts: [part],
    at: outletAt(built, trough.line),
    measured: flowTotalOf(flowLph),
    limit: flowTotalOf(trough.ventedLph),
    facts: { towers, vents: Math.floor(trough.ventedLph / towerLph), isWanted: trough.isWanted ? 1 : 0 },
    terms: [
      term('What one tower gives', flowOf(towerLph)),
      term('Bore', lengthOf(facts.outletBoreMm)),
      term('Water over the outlet', lengthOf(trough.outletDepthMm)),
      term('Length of the trough', inFeet(facts.runMm)),
    ],
    ...(mend && { mend }),
  })
}

const check = (bay: Bay): Finding[] =>
  troughsOf(bay).flatMap((wet) => (wet.trough.flowLph > wet.trough.ventedLph ? [findingOf(wet)] : []))

/** The outlet, not the trough, limits what comes home: over this flow an open drop gulps air, and the water behind it surges. */
export const outletFlowMax: BayRule = {
  over: 'bay',
  isOfRacks: true,
  id: RULE,
  title: 'Outlet big enough for its towers',
  limit:
    'V / √(g D) at most 0.3 on the full bore: 0.2 gpm through 1/2 in, 0.6 through 3/4, 1.2 through 1, 6.8 through 2',
  source:
    'P. D. Hills, Designing piping for gravity flow, Chemical Engineering (1983); for outlets as small as these it is common practice',
  mending: 'Take the next bore, or let fewer towers drip into one trough.',
  check,
  say: ({ parts, state, measured, limit, facts }, { flowTotal, name }) => {
    const part = name(parts[0] ?? '')
    const runsOver = state === 'Clash' ? ', and the trough runs over' : ''
    const brings = facts['isWanted'] === 1 ? 'would bring' : 'brings'
    return `A trough of ${part} ${brings} ${flowTotal(measured.value)} from ${facts['towers'] ?? 0} towers to its outlet, which gulps air over ${flowTotal(limit.value)}${runsOver}: it vents ${facts['vents'] ?? 0} of them.`
  },
}
