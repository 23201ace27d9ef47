import type { PartId } from '../../model/ids'
import { LPH_PER_M3S, toMm } from './metres'
import type { WaterInputs } from './plan'
import { planOf } from './planOf'
import { AS_DRAWN, type WhatIf } from './whatIf'
import { benchOf, type Heads, headsAt, neediest, surplusM } from './zoneNeeds'

/** What the pumps of one pit are asked for and what they give, every tower at the flow wanted. Flows L/h, heads mm. */
export interface PumpSizing {
  /** The pit. */
  readonly part: PartId
  /** Through the pumps, bypass and all. */
  readonly flowLph: number
  /** What all towers want together. */
  readonly wantedLph: number
  /** Lift by which the neediest zone just gets its share with its valves wide open. */
  readonly needMm: number
  /** Lift of the pumps at that flow; what is over is burnt in valves, what is short is missing at the towers. */
  readonly giveMm: number
  /** `giveMm` less `needMm`. */
  readonly spareMm: number
  /** The zone that needs most. */
  readonly neediest: PartId | undefined
}

/** The pumps' sizing with the filter clean and with it due for cleaning: choose by the second. */
export interface Sizing {
  readonly clean: PumpSizing
  readonly dirty: PumpSizing
}

const sizingWith = (inputs: WaterInputs, whatIf: WhatIf): PumpSizing | undefined => {
  const plan = planOf(inputs)
  const [pump] = plan.pumps
  const bench = benchOf(plan, whatIf)
  if (!pump || !bench || plan.pumps.length > 1 || plan.boxes.length > 0) return undefined
  const heads: Heads | { readonly ok: false } = headsAt(bench, 1)
  if ('ok' in heads || !bench.previous) return undefined
  const least = neediest(heads)
  const giveMm = toMm(bench.previous.pumpHeadM[0] ?? 0)
  const spareMm = toMm(surplusM(heads, least))
  return {
    part: pump.part,
    flowLph: (bench.previous.pumpM3S[0] ?? 0) * LPH_PER_M3S,
    wantedLph: heads.flowM3S.reduce((sum, flow) => sum + flow, 0) * LPH_PER_M3S,
    needMm: giveMm - spareMm,
    giveMm,
    spareMm,
    neediest: bench.zones[least]?.built.part,
  }
}

/**
 * The duty that a bay asks of its pumps: flow wanted times towers, at the lift that its neediest zone needs. Undefined for a
 * bay of several pits or with a head box, where no single pump answers for it, and for one that can't be solved.
 */
export const pumpSizing = (inputs: WaterInputs, whatIf: WhatIf = AS_DRAWN): Sizing | undefined => {
  const clean = sizingWith(inputs, { ...whatIf, filter: 'clean' })
  const dirty = sizingWith(inputs, { ...whatIf, filter: 'dirty' })
  return clean && dirty && { clean, dirty }
}
