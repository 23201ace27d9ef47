import type { Settings } from '../../layout/settings'
import type { PartId } from '../../model/ids'
import { levelAt, litresAt } from '../../model/pitFacts'
import { crestLph } from '../../solvers/gravity/orifice'
import { overflowLph } from '../../solvers/gravity/overflow'
import type { Cascade, LetGo, Lift, Outlet, Store } from '../../solvers/gravity/storage'
import { emptiesIn, emptyingPower, filling, perSecond, powerLaw } from '../../solvers/gravity/storageLaws'
import { toSeconds } from '../../units/time'
import { rimAroundMm } from './pitRim'
import type { StopDrain, StopPit, StopRow, StopSources } from './stopSources'

/** Where everything stands among the stores of the cascade. */
export interface Placed {
  readonly cascade: Cascade
  readonly pipes: ReadonlyMap<PartId, number>
  readonly mains: ReadonlyMap<PartId, number>
  readonly towers: ReadonlyMap<PartId, number>
  readonly troughs: ReadonlyMap<PartId, number>
  readonly drains: ReadonlyMap<PartId, number>
  readonly pits: ReadonlyMap<PartId, number>
  readonly overflows: ReadonlyMap<PartId, number>
  readonly rims: ReadonlyMap<PartId, number>
  readonly floor: number
}

/** A tower has dripped out when all but so much has come: what the setting of its time means. */
export const TOWER_LEFT = 0.05

/** Water that falls through something which holds none takes so long, s. */
const PASS_S = 2

/** Mains run back as a tank does through a hole: flow as the root of what is left, from the pump's own flow on. */
const ROOT = 0.5

/** Both states have the same stores: running and then stopped, or stopped and then started. */
export type StopState = 'stopped' | 'started'

const passing = (fullL: number, lps: number, power: number): LetGo =>
  powerLaw(Math.max(fullL, lps * PASS_S), lps, power)

const troughLaw = ({ channel, flowLph, lines, troughsL }: StopRow): LetGo => {
  const power = channel ? emptyingPower(channel.section, flowLph / lines, channel.slopeMmPerM, channel.n) : 1
  return passing(troughsL, perSecond(flowLph), power)
}

const drainLaw = ({ boreMm, flowLph, slopeMmPerM, standingL }: StopDrain, n: number): LetGo => {
  const section = { shape: 'circle', diameterMm: boreMm } as const
  return passing(standingL, perSecond(flowLph), emptyingPower(section, flowLph, slopeMmPerM, n))
}

const towerLaw = ({ towersL, flowLph }: StopRow, towerDripMin: number): LetGo =>
  towersL > 0
    ? emptiesIn(towersL, perSecond(flowLph), TOWER_LEFT, toSeconds(towerDripMin))
    : passing(0, perSecond(flowLph), 1)

/** The stores in order, each known by its number once it is there. */
interface Numbers {
  readonly of: (kind: string, part: PartId) => number
}

const numbered = (names: readonly string[]): Numbers => {
  const at = new Map(names.map((name, i) => [name, i]))
  return { of: (kind, part) => at.get(`${kind} ${part}`) ?? names.length - 1 }
}

const sumOf = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((sum, one) => sum + of(one), 0)

/** The pits whose pumps feed a group, each with its share of what they give; none where they give nothing. */
const feeding = (pits: readonly StopPit[], group: PartId): readonly { part: PartId; share: number }[] => {
  const own = pits.filter((pit) => pit.group === group && pit.pumpedLph > 0)
  const allLph = sumOf(own, ({ pumpedLph }) => pumpedLph)
  return own.map(({ part, pumpedLph }) => ({ part, share: pumpedLph / allLph }))
}

interface Made {
  readonly sources: StopSources
  readonly settings: Settings
  readonly number: Numbers
  readonly state: StopState
  readonly hasCheckValve: boolean
}

/** Behind a check valve pipes drain through their tubes into the towers; without one they run back to the pits. */
const pipeStore = (row: StopRow, { sources, number, state, hasCheckValve }: Made): Store => {
  const lps = perSecond(row.flowLph)
  const towers = number.of('towers', row.part)
  if (state === 'started') {
    const fullL = fillL(row, sources)
    const share = row.lastS > 0 ? row.firstS / row.lastS : 1
    return { litres: 0, outlets: [{ to: towers, letGo: filling(share * fullL, fullL, lps) }] }
  }
  const back = hasCheckValve ? [] : feeding(sources.pits, row.group)
  const letGo = powerLaw(row.pipesL, lps, ROOT)
  const outlets =
    back.length === 0
      ? [{ to: towers, letGo }]
      : back.map(({ part, share }): Outlet => ({
          to: number.of('pit', part),
          letGo: (litres) => share * letGo(litres),
        }))
  return { litres: row.pipesL, outlets }
}

/** What must be filled before a row runs, L: its own pipes, and of the mains as much as it takes of the flow. */
const fillL = ({ pipesL, flowLph }: StopRow, { rows, mainsL }: StopSources): number =>
  pipesL +
  (mainsL * flowLph) /
    Math.max(
      1,
      sumOf(rows, (row) => row.flowLph),
    )

const mainStore = (pit: StopPit, { sources, number, state }: Made): Store => {
  const allLph = sumOf(sources.pits, ({ pumpedLph }) => pumpedLph)
  const litres = state === 'stopped' && allLph > 0 ? (sources.mainsL * pit.pumpedLph) / allLph : 0
  const letGo = powerLaw(litres, perSecond(pit.pumpedLph), ROOT)
  return { litres, outlets: [{ to: number.of('pit', pit.part), letGo }] }
}

const troughStore = (row: StopRow, { number, state }: Made): Store => {
  const letGo = troughLaw(row)
  const joined = sumOf([...row.drains.values()], (share) => share)
  const outlets = [...row.drains].map(([drain, share]): Outlet => ({
    to: number.of('drain', drain),
    letGo: (litres) => share * letGo(litres),
  }))
  const lost = { to: number.of('floor', ''), letGo: (litres: number) => (1 - joined) * letGo(litres) }
  return {
    litres: state === 'stopped' ? row.troughsL : 0,
    outlets: joined < 1 - 1e-9 ? [...outlets, lost] : outlets,
  }
}

/** Over the overflow's invert its pipe takes water, over the rim its whole edge does. */
const pitStore = ({ part, facts }: StopPit, { number }: Made, litres: number): Store => {
  const overL = litresAt(facts, facts.overflowMm)
  const rimL = litresAt(facts, facts.rimMm)
  const pipe: LetGo = (now) =>
    now <= overL ? 0 : perSecond(overflowLph(facts.overflowBoreMm, levelAt(facts, now) - facts.overflowMm))
  const edge: LetGo = (now) =>
    now <= rimL ? 0 : perSecond(crestLph(rimAroundMm(facts.basin), levelAt(facts, now) - facts.rimMm))
  return {
    litres,
    outlets: [
      { to: number.of('overflow', part), letGo: pipe },
      { to: number.of('rim', part), letGo: edge },
    ],
  }
}

const drainStore = (drain: StopDrain, { number, settings, state }: Made): Store => {
  const own = number.of('drain', drain.part)
  const onward =
    drain.to === undefined ? -1 : Math.max(...['drain', 'pit'].map((kind) => known(number, kind, drain.to)))
  // Lines that only lead to each other never come to a pit: what leaves them is lost.
  const to = onward > own ? onward : number.of('floor', '')
  return {
    litres: state === 'stopped' ? drain.standingL : 0,
    outlets: [{ to, letGo: drainLaw(drain, settings.manningN) }],
  }
}

/** -1 for what is not there: the floor stands for it elsewhere. */
const known = (number: Numbers, kind: string, part: PartId | undefined): number => {
  const at = part === undefined ? -1 : number.of(kind, part)
  return at === number.of('floor', '') ? -1 : at
}

const liftsOf = ({ sources, number }: Made): readonly Lift[] =>
  sources.rows.flatMap((row) =>
    feeding(sources.pits, row.group).map(({ part, share }) => {
      const facts = sources.pits.find((pit) => pit.part === part)?.facts
      return {
        from: number.of('pit', part),
        to: number.of('pipes', row.part),
        lps: share * perSecond(row.flowLph),
        keepsL: facts ? litresAt(facts, facts.pumpOffMm) : 0,
      }
    }),
  )

const sink: Store = { litres: 0, outlets: [] }

const namesOf = ({ rows, drains, pits }: StopSources): string[] => [
  ...rows.map(({ part }) => `pipes ${part}`),
  ...pits.map(({ part }) => `mains ${part}`),
  ...rows.map(({ part }) => `towers ${part}`),
  ...rows.map(({ part }) => `troughs ${part}`),
  ...drains.map(({ part }) => `drain ${part}`),
  ...pits.map(({ part }) => `pit ${part}`),
  ...pits.map(({ part }) => `overflow ${part}`),
  ...pits.map(({ part }) => `rim ${part}`),
  'floor ',
]

const placesOf = (made: Made, kind: string, parts: readonly { readonly part: PartId }[]) =>
  new Map(parts.map(({ part }) => [part, made.number.of(kind, part)]))

/** The bay as stores that run into each other. `pitStartL` says what stands in each pit at the start. */
export const stopCascade = (
  sources: StopSources,
  settings: Settings,
  state: StopState,
  hasCheckValve: boolean,
  pitStartL: (pit: StopPit) => number,
): Placed => {
  const { rows, drains, pits } = sources
  const made: Made = { sources, settings, number: numbered(namesOf(sources)), state, hasCheckValve }
  const towerStore = (row: StopRow): Store => ({
    litres: state === 'stopped' ? row.towersL : 0,
    outlets: [{ to: made.number.of('troughs', row.part), letGo: towerLaw(row, settings.towerDripMin) }],
  })
  const stores = [
    ...rows.map((row) => pipeStore(row, made)),
    ...pits.map((pit) => mainStore(pit, made)),
    ...rows.map(towerStore),
    ...rows.map((row) => troughStore(row, made)),
    ...drains.map((drain) => drainStore(drain, made)),
    ...pits.map((pit) => pitStore(pit, made, pitStartL(pit))),
    ...pits.map(() => sink),
    ...pits.map(() => sink),
    sink,
  ]
  const lifts = state === 'started' ? liftsOf(made) : []
  return {
    cascade: { stores, lifts },
    pipes: placesOf(made, 'pipes', rows),
    mains: placesOf(made, 'mains', pits),
    towers: placesOf(made, 'towers', rows),
    troughs: placesOf(made, 'troughs', rows),
    drains: placesOf(made, 'drain', drains),
    pits: placesOf(made, 'pit', pits),
    overflows: placesOf(made, 'overflow', pits),
    rims: placesOf(made, 'rim', pits),
    floor: made.number.of('floor', ''),
  }
}
