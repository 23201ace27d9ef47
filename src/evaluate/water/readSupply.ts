import type { HeadBoxWater, MainLeg, MainWater, PumpWater } from '../../model/water'
import { velocityMS } from '../../solvers/water/friction'
import { waterAt } from '../../solvers/water/properties'
import { hydraulicWatts } from '../../solvers/water/pumpCurve'
import { bypassValve } from './bayNetwork'
import { LPH_PER_M3S, toMm } from './metres'
import type { PlacedBox, PlacedMain, PlacedPump } from './plan'
import { meanOutletM } from './readRows'
import type { Solved } from './solved'

/** Heads along a main, and what runs from one stop to the next. */
export const readMain = ({ plan, solution }: Solved, main: PlacedMain): MainWater => {
  const legs = main.stops.slice(1).map((_, i): MainLeg => {
    const flowM3S = solution.pipeM3S[main.pipe + i] ?? 0
    return { flowLph: flowM3S * LPH_PER_M3S, velocityMS: velocityMS(Math.abs(flowM3S), main.boreM) }
  })
  return {
    part: main.part,
    points: main.stops.map(({ at, alongMm, by }, i) => ({
      at,
      alongMm,
      headMm: toMm(solution.headM[plan.levels + main.joint + i] ?? 0),
      meets: by?.from,
    })),
    legs,
    fastestMS: legs.reduce((most, leg) => Math.max(most, leg.velocityMS), 0),
  }
}

/** Less than a drop an hour: what a solver leaves where nothing moves, m3/s. */
const STILL_M3S = 1e-11

export const readPump = (solved: Solved, pump: PlacedPump, index: number): PumpWater => {
  const { solution, waterC } = solved
  const flowM3S = solution.pumpM3S[index] ?? 0
  const bypassM3S = solution.valveM3S[bypassValve(pump)] ?? 0
  const liftM = solution.pumpHeadM[index] ?? 0
  return {
    part: pump.part,
    flowLph: flowM3S * LPH_PER_M3S,
    headMm: toMm(liftM),
    staticMm: toMm(meanOutletM(solved, ({ group }) => group === pump.group)) - pump.facts.suctionMm,
    bypassLph: bypassM3S * LPH_PER_M3S,
    watts: hydraulicWatts(flowM3S, liftM, waterAt(waterC).densityKgM3),
    isLifting: flowM3S - bypassM3S > STILL_M3S,
  }
}

/** What runs into a head box and what it gives, over all pipes that meet it. */
export const readBox = ({ plan, solution }: Solved, { part, level }: PlacedBox): HeadBoxWater => {
  let [inM3S, outM3S] = [0, 0]
  plan.links.forEach(({ from, to }, i) => {
    const flow = solution.pipeM3S[i] ?? 0
    const out = (from === level ? flow : 0) - (to === level ? flow : 0)
    if (out > 0) outM3S += out
    else inM3S -= out
  })
  return { part, inLph: inM3S * LPH_PER_M3S, outLph: outM3S * LPH_PER_M3S }
}
