import type { Words } from '../../checks/context'
import type { Judged } from '../../evaluate/evaluation'
import type { ValveCard } from '../../evaluate/water/valveCard'
import { waterOf } from '../../evaluate/water/waterOf'
import type { TowerAt } from '../../model/water'
import { caughtMl } from '../../units/flow'
import type { Units } from '../../units/length'
import { thousands } from '../../units/thousands'
import { forReader, type Hazard } from '../hazard'
import { cautionInBrief } from '../hazards'
import type { StepsPiece } from '../piece'

/** The bay as whoever walks it needs it. */
export interface Round {
  readonly now: Judged
  readonly units: Units
  readonly write: Words
  readonly hazards: readonly Hazard[]
  /** The tower that gets least once the valves are set; undefined where no water runs. */
  readonly least: TowerAt | undefined
}

type Step = StepsPiece['steps'][number]

/** How long a cup is held under a tube, s. */
const CATCH_SECONDS = 30

/** The tower that gets least with every trim valve set by its card. */
export const leastTower = ({ bay }: Judged, card: ValveCard | undefined): TowerAt | undefined => {
  const trimTurns = new Map(card?.zones.map(({ part, trimTurns: turns }) => [part, turns]))
  return (card === undefined ? bay.water : waterOf(bay, { trimTurns })).bay?.least
}

const has = ({ now }: Round, item: RegExp): boolean =>
  now.counts.some((line) => line.count > 0 && item.test(line.item))

/** A step with the caution of a hazard beside it, where this plan has that hazard. */
const minding = (step: Step, { hazards }: Round, key: string): Step => {
  const hazard = hazards.find((each) => each.key === key)
  return hazard === undefined ? step : { ...step, caution: cautionInBrief(hazard) }
}

/** Hazards whose words stand at a step, or are its words. */
export const AT_STEPS: ReadonlySet<string> = new Set([
  'electricity',
  'ladders',
  'compressed-air',
  'chlorine',
  'overflow',
])

const when = (isSo: boolean, step: Step): readonly Step[] => (isSo ? [step] : [])

const leastWords = ({ least, write }: Round): string => {
  if (least === undefined) return ''
  const millilitres = Math.round(caughtMl(least.flowLph, CATCH_SECONDS))
  return `Look first at ${write.name(least.part)}, station ${least.station}, line ${least.line}: least by the plan, ${write.flow(least.flowLph)}, ${millilitres} mL in ${CATCH_SECONDS} s.`
}

/** Every day, on one walk. */
export const daily = (round: Round): readonly Step[] => {
  const hasPit = round.now.bay.built.some(({ pit }) => pit !== undefined)
  const hasTroughs = round.now.bay.built.some(({ trough }) => trough !== undefined)
  const lamp = has(round, /^alarm-float/) ? '; alarm lamp lights' : ''
  return [
    ...when(hasPit, {
      key: 'pit',
      text: `Lid locked; water at the running mark, temperature as written${lamp}.`,
    }),
    ...when(has(round, /^sight-tube$/), {
      key: 'sight-tubes',
      text: 'Sight tubes at the valves as written.',
    }),
    ...when(hasTroughs, {
      key: 'gutters',
      text: 'Every tower drips; no puddle in a gutter; every outlet runs free.',
    }),
    ...when(round.least !== undefined, { key: 'least', text: leastWords(round) }),
  ]
}

/** Every week. */
export const weekly = (round: Round): readonly Step[] => [
  ...when(has(round, /^filter/), {
    key: 'filter',
    text: 'Filter: clean it at the rise that is written, or sooner.',
  }),
  ...when(has(round, /^lateral-flush/), {
    key: 'flush-ends',
    text: 'Open the ends of the laterals one by one until they run clear.',
  }),
  ...when(round.least !== undefined, {
    key: 'spot-test',
    text: 'Cup and watch at six towers. One under 3/4 of its zone is cleared.',
  }).map((step) => minding(step, round, 'ladders')),
  ...when(has(round, /^overflow-screen/), {
    key: 'overflow',
    text: 'Overflow and screen clear, its end over an air gap.',
  }),
]

const drainSlug = ({ units }: Round): string => forReader(units, '20 gal', '75 L')

const homeWords = ({ now, write }: Round): string => {
  const litres = [...now.bay.returns.pits.values()].map(({ transit }) => transit.totalL)
  const most = Math.max(0, ...litres)
  const each = litres.length > 1 ? ' to a pit at most' : ''
  return `Stop the pump: ${write.volume(most)} come home${each}, and the water stays under its mark.`
}

/** Every month. */
export const monthly = (round: Round): readonly Step[] => {
  const hasPump = round.now.bay.water.pumps.size > 0
  return [
    ...when(hasPump, {
      key: 'ground-fault',
      text: 'Press the test of each GFCI/RCD; the pump stops; reset.',
    }).map((step) => minding(step, round, 'electricity')),
    ...when(has(round, /^alarm-float/), {
      key: 'floats',
      text: 'Lift and lower each float by hand: both alarms and pump-off work.',
    }),
    ...when(hasPump, { key: 'power-cut', text: homeWords(round) }),
    ...when(has(round, /^drain-cleanout/), {
      key: 'drains',
      text: `Drains: plug out at the high end, ${drainSlug(round)} at one go, brush if it comes slowly.`,
    }),
    ...when(has(round, /^barb/), { key: 'slow-tubes', text: 'Slow microtubes: rod or blow them clear.' }).map(
      (step) => minding(step, round, 'compressed-air'),
    ),
    ...when(has(round, /^make-up/), {
      key: 'make-up',
      text: 'Make-up valve shuts tight; its air gap is open.',
    }).map((step) => minding(step, round, 'chlorine')),
  ]
}

const clampsIn = ({ now }: Round): number =>
  now.counts.reduce((sum, { item, count }) => (item.startsWith('clamp-') ? sum + count : sum), 0)

/** After the first day, after the first hot week, and with the seasons. Drying lumber and new fill settle 1/8 to 1/4 in. */
export const seldom = (round: Round): readonly Step[] => {
  const clamps = clampsIn(round)
  const hasRacks = round.now.bay.built.some(({ rack }) => rack !== undefined)
  return [
    ...when(clamps > 0, {
      key: 'clamps',
      text: `24 h after the first fill, and after the first hot week: tighten all ${thousands(clamps)} clamps again.`,
    }),
    ...when(hasRacks, {
      key: 'shims',
      text: 'Then too: gutter shims and foot shims. Drying lumber and new fill settle by a shim.',
    }),
    ...when(round.least !== undefined, {
      key: 'evenness',
      text: 'Once a year at least: cup and watch as on the start-up sheet.',
    }),
    ...when(hasRacks, {
      key: 'bars',
      text: 'Twice a year: rails and bars straight, caps and ties on, screws tight.',
    }),
  ]
}
