import { polyOf } from '../catalogue/pipe'
import type { Built } from '../model/built'
import type { Finding, Mend } from '../model/finding'
import type { PumpFacts } from '../model/supplyFacts'
import type { PumpWater } from '../model/water'
import { waterAt } from '../solvers/water/properties'
import { TUBE_LOSS_K, tubeHeadM } from '../solvers/water/tube'
import { toM3PerS } from '../units/flow'
import { headM, toHeadM } from '../units/head'
import type { Bay, BayRule } from './context'
import { flowTotalOf, found, inFeet, term } from './found'
import { pumpLifting } from './pumpFit'
import { systemOf, type WaterSystem } from './waterSystems'

const RULE = 'pump-lift-min'

/** Pipes, valves and a filter take so much of the head on top of lift and tubes, before anything is solved. Common practice, no source. */
const WITH_LOSSES = 1.3

/** Less is nothing: a tower would drip. */
const STILL_LPH = 0.01

/** Head that the tubes of a row take at the flow wanted, mm. */
const tubeHeadMm = ({ rows }: WaterSystem, { builtOf, settings }: Bay): number => {
  const tube = builtOf.get(rows[0]?.part ?? '')?.feed?.tubes[0]
  if (!tube) return 0
  const pipe = {
    lengthM: toHeadM(tube.lengthMm),
    boreM: toHeadM(polyOf(tube.stock).idMm),
    lossK: TUBE_LOSS_K,
  }
  return headM(tubeHeadM(toM3PerS(settings.targetLph), pipe, waterAt(settings.waterC).kinematicM2S))
}

const mendFor = (part: string, facts: PumpFacts, neededMm: number, wantedLph: number): Mend | undefined => {
  const pump = pumpLifting(wantedLph, facts.pumps, WITH_LOSSES * neededMm)
  return pump && { kind: 'set', part, field: 'pump', value: pump }
}

const isStill = ({ flowLph }: PumpWater): boolean => flowLph < STILL_LPH

const findingOf = (
  built: Built,
  facts: PumpFacts,
  pump: PumpWater,
  system: WaterSystem,
  bay: Bay,
): Finding => {
  const { part } = built
  const shutOffMm = facts.curve[0]?.headMm ?? 0
  const neededMm = pump.staticMm + tubeHeadMm(system, bay)
  const wantedLph = bay.settings.targetLph * system.towers
  // Another pump gives the bay its water, and more head than this one has.
  const isPushed = system.totalLph > STILL_LPH
  const mend = isPushed ? undefined : mendFor(part, facts, neededMm, wantedLph)
  return found({
    rule: RULE,
    subject: 'flow',
    state: isPushed ? 'Drifting' : 'Starved',
    parts: [part],
    at: { x: facts.at.x, y: facts.at.y },
    measured: inFeet(shutOffMm),
    limit: inFeet(isPushed ? Math.max(shutOffMm, pump.headMm) : neededMm),
    facts: { isPushed: isPushed ? 'pushed' : '' },
    terms: [
      term('From the water in the pit up to the open ends of the tubes', inFeet(pump.staticMm)),
      term('Head of the pump with nothing flowing', inFeet(shutOffMm)),
      term('Flow wanted of it', flowTotalOf(wantedLph)),
    ],
    ...(mend && { mend }),
  })
}

const check = (bay: Bay): Finding[] =>
  [...bay.water.pumps.values()].flatMap((pump) => {
    const built = bay.builtOf.get(pump.part)
    const system = systemOf(bay, pump.part)
    if (!built?.pump || !system || !isStill(pump)) return []
    return system.towers > 0 ? [findingOf(built, built.pump, pump, system, bay)] : []
  })

/** A pump lifts its water to the open ends of the tubes at least. */
export const pumpLiftMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Lift of the pump',
  limit:
    'With nothing flowing the pump has more head than from the water in the pit to the open ends of the tubes, and what these take',
  source: 'Geometry, and the pump’s own curve',
  mending: 'Take a pump with more head, or hang the towers lower.',
  check,
  say: ({ parts, measured, limit, facts }, { length, name }) =>
    facts['isPushed'] === 'pushed'
      ? `The pump of ${name(parts[0] ?? '')} gives nothing: it has ${length(measured.value)} of head, and the other pumps hold more against it.`
      : `The pump of ${name(parts[0] ?? '')} does not lift water to the towers: it has ${length(measured.value)} of head with nothing flowing, and ${length(limit.value)} is wanted before a drop comes as it should.`,
}
