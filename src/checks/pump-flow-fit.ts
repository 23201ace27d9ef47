import type { Finding, Mend } from '../model/finding'
import type { PumpWater } from '../model/water'
import type { Bay, BayRule } from './context'
import { flowOf, flowTotalOf, found, inFeet, term } from './found'
import { pumpBetween } from './pumpFit'
import {
  isOverSupplied,
  isShortSupplied,
  OVER_SHARE,
  SUPPLY_SHARE,
  type WaterSystem,
  waterSystems,
} from './waterSystems'

const RULE = 'pump-flow-fit'

/** Under this share of the flow wanted on the mean, towers starve. */
const STARVED_SHARE = 0.75

/** Shares of the flow wanted between which another pump must promise to come out. */
const PROMISED = { least: 0.97, most: 1.4 }

/** The pumps of a system that no head box feeds with them. */
const pumpsOf = ({ supplies }: WaterSystem, { water }: Bay): readonly PumpWater[] => {
  const pumps = supplies.flatMap((part) => water.pumps.get(part) ?? [])
  return pumps.length === supplies.length ? pumps : []
}

const mendFor = (pumps: readonly PumpWater[], system: WaterSystem, bay: Bay): Mend | undefined => {
  const [pump, ...others] = pumps
  const facts = pump && bay.builtOf.get(pump.part)?.pump
  if (!pump || !facts || others.length > 0) return undefined
  const times = (share: number) => (share * bay.settings.targetLph) / system.meanLph
  const key = pumpBetween(pump, facts.pumps, times(PROMISED.least), times(PROMISED.most))
  return key && { kind: 'set', part: pump.part, field: 'pump', value: key }
}

const findingOf = (pumps: readonly PumpWater[], system: WaterSystem, isShort: boolean, bay: Bay): Finding => {
  const { targetLph } = bay.settings
  const facts = bay.builtOf.get(pumps[0]?.part ?? '')?.pump
  const mend = mendFor(pumps, system, bay)
  return found({
    rule: RULE,
    subject: 'flow',
    state: system.meanLph < STARVED_SHARE * targetLph ? 'Starved' : 'Drifting',
    parts: pumps.map(({ part }) => part),
    at: { x: facts?.at.x ?? 0, y: facts?.at.y ?? 0 },
    measured: flowOf(system.meanLph),
    limit: flowOf((isShort ? SUPPLY_SHARE : OVER_SHARE) * targetLph),
    facts: { isShort: isShort ? 'short' : '', targetLph, ofWanted: system.meanLph / targetLph },
    terms: [
      term('Flow wanted at each tower', flowOf(targetLph)),
      term('Flow wanted of all', flowTotalOf(targetLph * system.towers)),
      ...pumps.flatMap(({ flowLph, headMm, staticMm }) => [
        term('Flow of the pump', flowTotalOf(flowLph)),
        term('Its head at that flow', inFeet(headMm)),
        term('Of it lift', inFeet(staticMm)),
      ]),
    ],
    ...(mend && { mend }),
  })
}

const check = (bay: Bay): Finding[] =>
  waterSystems(bay).flatMap((system) => {
    const pumps = pumpsOf(system, bay)
    if (pumps.length === 0) return []
    const isShort = isShortSupplied(system, bay)
    // A pump that gives nothing at all does not lift, which is told of by itself.
    if (system.meanLph === 0 || (!isShort && !isOverSupplied(system, bay))) return []
    return [findingOf(pumps, system, isShort, bay)]
  })

/** The pump gives about what the towers want, with all trim valves open. */
export const pumpFlowFit: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Pump that fits its towers',
  limit: 'With every trim valve open the towers get between 90 and 150 % of the flow wanted, on the mean',
  source: 'Common practice, no source',
  mending: 'Take the next pump up or down, or bigger mains where most of its head is lost in them.',
  check,
  say: ({ parts, measured, facts }, { flow, share, name }) => {
    const gets = `With every trim valve open ${parts.length > 1 ? 'the pumps' : `the pump of ${name(parts[0] ?? '')}`} ${parts.length > 1 ? 'give' : 'gives'} the towers ${flow(measured.value)} on the mean`
    const wanted = `${share(Number(facts['ofWanted']))} of the ${flow(Number(facts['targetLph']))} wanted`
    return facts['isShort'] === 'short'
      ? `${gets}, only ${wanted}.`
      : `${gets}, ${wanted}: the rest must be burnt in valves.`
  },
}
