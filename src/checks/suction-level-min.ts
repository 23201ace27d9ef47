import type { Built } from '../model/built'
import type { Finding, Mend } from '../model/finding'
import { INTAKE_OVER_BOTTOM_MM, type PitFacts } from '../model/pitFacts'
import type { PumpWater } from '../model/water'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, flowTotalOf, found, lengthOf, levelOf, term } from './found'
import { submergenceMm } from './pitAsks'

const RULE = 'suction-level-min'

/** At the moment of stopping a little air does no harm: so much over the intake is enough. Common practice, no source. */
const AT_PUMP_OFF_MM = inches(6)

/** A level of the pit at which the pump draws. */
interface Drawing {
  readonly title: 'running level' | 'pump-off level'
  readonly levelMm: number
  readonly needMm: number
}

const drawings = (pit: PitFacts, needMm: number): readonly Drawing[] => [
  { title: 'pump-off level', levelMm: pit.pumpOffMm, needMm: Math.min(needMm, AT_PUMP_OFF_MM) },
  { title: 'running level', levelMm: pit.runningMm, needMm },
]

const overIntake = ({ levelMm }: Drawing, { intakeMm }: PitFacts): number => levelMm - intakeMm

/**
 * Up with the pump-off level while it stays under the low alarm; else down with an intake of the builder's while it stays
 * clear of sludge, or with the bottom, where the intake goes with it.
 */
const mendFor = (part: string, pit: PitFacts, short: readonly Drawing[]): Mend | undefined => {
  const [first] = short
  const pumpOffMm = pit.intakeMm + (first?.needMm ?? 0)
  const isPumpOff = short.length === 1 && first?.title === 'pump-off level'
  if (isPumpOff && pumpOffMm <= pit.lowAlarmMm)
    return { kind: 'set', part, field: 'pumpOffMm', value: pumpOffMm }
  const intakeMm = Math.min(...short.map(({ levelMm, needMm }) => levelMm - needMm))
  if (!pit.hasOwnIntake)
    return { kind: 'set', part, field: 'bottomMm', value: pit.bottomMm + intakeMm - pit.intakeMm }
  return intakeMm >= pit.bottomMm + INTAKE_OVER_BOTTOM_MM
    ? { kind: 'set', part, field: 'intakeMm', value: intakeMm }
    : undefined
}

const findingOf = (part: string, pump: PumpWater, { pit, pump: facts }: Built): Finding[] => {
  if (!pit || !facts) return []
  const eachLph = pump.flowLph / facts.pumps
  const needMm = submergenceMm(eachLph, facts.stock)
  const short = drawings(pit, needMm).filter((at) => overIntake(at, pit) < at.needMm - CLOSE_MM)
  const [first] = short
  if (!first) return []
  const overMm = overIntake(first, pit)
  const mend = mendFor(part, pit, short)
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: overMm > 0 ? 'Drifting' : 'Starved',
      parts: [part],
      at: { x: facts.at.x, y: facts.at.y },
      measured: lengthOf(overMm),
      limit: lengthOf(first.needMm),
      facts: { level: first.title },
      terms: [
        term(`The ${first.title}`, levelOf(first.levelMm)),
        term('Intake of the pump', levelOf(pit.intakeMm)),
        term('Flow of one pump', flowTotalOf(eachLph)),
        term('Water over an intake of that bore at that flow', lengthOf(needMm)),
      ],
      ...(mend && { mend }),
    }),
  ]
}

const check = ({ water, builtOf }: Bay): Finding[] =>
  [...water.pumps.values()].flatMap((pump) => {
    const built = builtOf.get(pump.part)
    return built ? findingOf(pump.part, pump, built) : []
  })

/** Water stands over the pump's intake, so that it draws no air. */
export const suctionLevelMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Water over the pump’s intake',
  limit:
    'D (1 + 2.3 v / sqrt(g D)) over the intake while it runs, and 6 in or that, whichever is less, when it stops',
  source:
    'ANSI/HI 9.8, from memory, made for much larger intakes: for small ones the least; 6 in when it stops, and an intake 2 in over the bottom where none is given, are common practice, no source',
  mending: 'Set the pump off at a higher level, or dig the pit deeper.',
  check,
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const what = `At the ${facts['level']} of ${name(parts[0] ?? '')}`
    return measured.value > 0
      ? `${what} only ${onTape(measured.value)} of water stand over the pump’s intake; with less than ${onTape(limit.value)} it draws air.`
      : `${what} the water is ${onTape(-measured.value)} under the pump’s intake, and ${onTape(limit.value)} should stand over it.`
  },
}
