import type { Finding } from '../model/finding'
import type { Bay, BayRule } from './context'
import { flowOf, found, shareOf, term } from './found'
import { type WaterSystem, waterSystems } from './waterSystems'
import { BALANCED_SPREAD, zoneSpread } from './zoneMeans'

const RULE = 'zone-flow-balance'

const findingOf = (system: WaterSystem, bay: Bay): Finding[] => {
  const zones = zoneSpread(system, bay)
  const [first] = system.supplies
  const supply = first === undefined ? undefined : bay.builtOf.get(first)
  const at = supply?.pump?.at ?? supply?.headBox?.at
  if (!zones || !at || zones.spread <= BALANCED_SPREAD) return []
  const { least, most, spread } = zones
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: 'Drifting',
      // Not the zones: which gets least may change while a row is dragged, and an accepted finding stays accepted.
      parts: system.supplies,
      at: { x: at.x, y: at.y },
      measured: shareOf(spread),
      limit: shareOf(BALANCED_SPREAD),
      facts: { least: least.part, leastLph: least.meanLph, most: most.part, mostLph: most.meanLph },
      terms: [
        term('Flow wanted at each tower', flowOf(bay.settings.targetLph)),
        term('Mean of the zone that gets least', flowOf(least.meanLph)),
        term('Mean of the zone that gets most', flowOf(most.meanLph)),
      ],
    }),
  ]
}

/** The zones that one pump feeds get alike, once their valves are set. */
export const zoneFlowBalance: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Balance of the zones',
  limit: 'Zones of one pump differ by no more than 10 % in what their towers get on the mean',
  source: 'Common practice, no source: a hand sets a valve to 5 % either way',
  mending:
    'Set the trim valves by the valve card: the neediest zone stays open, the others burn what they have too much.',
  check: (bay) => waterSystems(bay).flatMap((system) => findingOf(system, bay)),
  say: ({ measured, limit, facts }, { flow, share, name }) =>
    `Zones differ by ${share(measured.value)}, where ${share(limit.value)} may be: towers of ${name(String(facts['most']))} get ${flow(Number(facts['mostLph']))}, those of ${name(String(facts['least']))} ${flow(Number(facts['leastLph']))}. Set the trim valves by the valve card.`,
}
