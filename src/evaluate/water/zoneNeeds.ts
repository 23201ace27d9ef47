import type { Fault, Network, Solution } from '../../solvers/water/network'
import { fittingLoss } from '../../solvers/water/friction'
import { solve } from '../../solvers/water/solve'
import { lossAtOpening } from '../../solvers/water/valve'
import { toM3PerS } from '../../units/flow'
import { cutAtValves, openZones, type Valved } from './cutAtValves'
import { toM } from './metres'
import type { Plan, PlacedRow } from './plan'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** A zone with what it wants: all its towers at the target, or at one common share of it. */
export interface Wanting extends Valved {
  readonly towers: number
  /** Mean open end of its towers, m. */
  readonly outletM: number
}

/** What each zone needs behind its valves and finds before them, m, when all towers get a share of their target. */
export interface Heads {
  readonly flowM3S: Float64Array
  readonly needM: Float64Array
  readonly givenM: Float64Array
  /** Lost in each zone's valves with the trim valve wide open, m. */
  readonly openM: Float64Array
}

export interface Bench {
  readonly network: Network
  readonly plan: Plan
  readonly zones: readonly Wanting[]
  readonly targetM3S: number
  readonly waterC: number
  previous: Solution | undefined
  /** The last head and flow of each zone, and how much head more flow takes there. */
  readonly trial: Trial
}

interface Trial {
  readonly headM: Float64Array
  readonly flowM3S: Float64Array
  readonly slope: Float64Array
}

/** The head that a zone is first tried at, over its open ends, m; and how near to its flow it must come, as a share. */
const FIRST_HEAD_M = 0.25
const CLOSE_SHARE = 1e-6
/** Two flows nearer to each other than this, as a share, tell no slope. */
const SLOPE_SHARE = 1e-5
const MOST_ROUNDS = 40

const wanting = (zone: Valved, rows: readonly PlacedRow[]): Wanting => {
  const own = rows.filter((row) => row.zone === zone.built.part)
  const towers = own.reduce((sum, { feed }) => sum + feed.tubes.length, 0)
  const level = own.reduce(
    (sum, { feed, piece, datumM }) => sum + feed.tubes.length * (piece.outletM + datumM),
    0,
  )
  return { ...zone, towers, outletM: towers > 0 ? level / towers : 0 }
}

/** What runs through each zone's valve as the network stands. */
const solvedOn = (bench: Bench): Solution | Fault => {
  const { network, waterC, previous } = bench
  const solution = solve(network, { temperatureC: waterC, toleranceM: 1e-8 }, previous)
  if (solution.ok) bench.previous = solution
  return solution
}

/**
 * The head to try next behind a zone's valve: along the slope that the last two trials showed, which one target's trials
 * leave to the next; in proportion while there is none. Never near to dry, where no slope tells anything.
 */
const nextHead = (
  { trial }: Bench,
  zone: Wanting,
  i: number,
  headM: number,
  flow: number,
  want: number,
): number => {
  const [headBefore, flowBefore] = [trial.headM[i] ?? 0, trial.flowM3S[i] ?? 0]
  if (flowBefore > 0 && Math.abs(flow - flowBefore) > SLOPE_SHARE * want)
    trial.slope[i] = (headM - headBefore) / (flow - flowBefore)
  trial.headM[i] = headM
  trial.flowM3S[i] = flow
  const slope = trial.slope[i] ?? 0
  const over = headM - zone.outletM
  const next =
    slope > 0 ? headM + slope * (want - flow) : zone.outletM + (over * want) / Math.max(flow, want / 4)
  return Math.max(next, zone.outletM + over / 4)
}

/** Sets the head behind each valve so that its zone takes its flow: all zones at once, since none feels another. */
const findNeeds = (bench: Bench, flowM3S: Float64Array): Solution | Fault => {
  const { network, plan, zones } = bench
  let solution = solvedOn(bench)
  for (let round = 0; solution.ok && round < MOST_ROUNDS; round += 1) {
    const flows = solution.valveM3S
    let isClose = true
    zones.forEach((zone, i) => {
      const [flow, want] = [flows[zone.valve] ?? 0, flowM3S[i] ?? 0]
      if (Math.abs(flow - want) <= CLOSE_SHARE * want) return
      isClose = false
      const headM = network.levels[plan.levels + i] ?? 0
      network.levels[plan.levels + i] = nextHead(bench, zone, i, headM, flow, want)
    })
    if (isClose) return solution
    solution = solvedOn(bench)
  }
  return solution
}

export const velocityHeadM = (zone: Valved, flowM3S: number): number =>
  fittingLoss(flowM3S, toM(zone.valves.boreMm), 1)

/** Main and zones when every tower gets `factor` of its target. */
export const headsAt = (bench: Bench, factor: number): Heads | Fault => {
  const { network, plan, zones, targetM3S } = bench
  const flowM3S = Float64Array.from(zones, ({ towers }) => towers * targetM3S * factor)
  zones.forEach((zone, i) => {
    network.joints[zone.joint + zone.valves.from] = flowM3S[i] ?? 0
  })
  const solution = findNeeds(bench, flowM3S)
  if (!solution.ok) return solution
  const firstNode = plan.levels + zones.length
  return {
    flowM3S,
    needM: Float64Array.from(zones, (_, i) => network.levels[plan.levels + i] ?? 0),
    givenM: Float64Array.from(
      zones,
      ({ joint, valves }) => solution.headM[firstNode + joint + valves.from] ?? 0,
    ),
    openM: Float64Array.from(
      zones,
      (zone, i) => (zone.valves.lossK + lossAtOpening(1)) * velocityHeadM(zone, flowM3S[i] ?? 0),
    ),
  }
}

/** What is left over at each zone with its valves wide open, m; below 0 where the pump gives too little. */
export const surplusM = ({ needM, givenM, openM }: Heads, zone: number): number =>
  (givenM[zone] ?? 0) - (openM[zone] ?? 0) - (needM[zone] ?? 0)

export const neediest = (heads: Heads): number => {
  let least = 0
  for (let i = 1; i < heads.needM.length; i += 1) if (surplusM(heads, i) < surplusM(heads, least)) least = i
  return least
}

/** The bay's network cut at its open valves, ready to be asked; undefined where no zone with towers stands open. */
export const benchOf = (plan: Plan, whatIf: WhatIf = AS_DRAWN): Bench | undefined => {
  const zones = openZones(plan)
    .map((zone) => wanting(zone, plan.rows))
    .filter(({ towers }) => towers > 0)
  if (zones.length === 0) return undefined
  const network = cutAtValves(plan, zones, whatIf)
  zones.forEach(({ outletM }, i) => {
    network.levels[plan.levels + i] = outletM + FIRST_HEAD_M
  })
  const none = () => new Float64Array(zones.length)
  return {
    network,
    plan,
    zones,
    targetM3S: toM3PerS(plan.settings.targetLph),
    waterC: whatIf.waterC ?? plan.settings.waterC,
    previous: undefined,
    trial: { headM: none(), flowM3S: none(), slope: none() },
  }
}
