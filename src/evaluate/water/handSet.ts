import type { PartId } from '../../model/ids'
import { chanceFrom } from './chance'
import { LPH_PER_M3S } from './metres'
import type { WaterInputs } from './plan'
import { planOf } from './planOf'
import { solvedBay } from './solved'
import type { HandSet, ValveCard } from './valveCard'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** A hand sets a valve to about this share of its turns. Common practice, no source. */
export const HAND_OFF_BY = 0.05

const SCENARIOS = 16

interface Range {
  leastShare: number
  mostShare: number
}

const widen = (range: Range, share: number): void => {
  range.leastShare = Math.min(range.leastShare, share)
  range.mostShare = Math.max(range.mostShare, share)
}

const offBy = (card: ValveCard, chance: () => number): ReadonlyMap<PartId, number> =>
  new Map(
    card.zones.map(({ part, trimTurns, trimTurnsAll }) => {
      const turns = trimTurns * (chance() < 0.5 ? 1 - HAND_OFF_BY : 1 + HAND_OFF_BY)
      return [part, Math.min(turns, trimTurnsAll)]
    }),
  )

/**
 * The bay set by the card, with each valve off by 5 % of its turns to either side, in sixteen drawn scenarios that are the
 * same every time: what each zone then gives, as a share of what it was set for. A wide open valve can only be too far
 * shut. Undefined where the bay can't be solved.
 */
export const handSet = (
  inputs: WaterInputs,
  card: ValveCard,
  whatIf: WhatIf = AS_DRAWN,
): HandSet | undefined => {
  const plan = planOf(inputs)
  const chance = chanceFrom(1)
  const zones = new Map(card.zones.map(({ part }) => [part, { leastShare: Infinity, mostShare: 0 }]))
  const all = { leastShare: Infinity, mostShare: 0 }
  const valveOf = new Map(plan.rows.map(({ built, valve }) => [built.part, valve]))
  for (let scenario = 0; scenario < SCENARIOS; scenario += 1) {
    const solved = solvedBay(plan, { ...whatIf, trimTurns: offBy(card, chance) })
    if ('sentence' in solved) return undefined
    for (const { part, flowLph } of card.zones) {
      const flow = (solved.solution.valveM3S[valveOf.get(part) ?? 0] ?? 0) * LPH_PER_M3S
      const range = zones.get(part)
      if (range) widen(range, flow / flowLph)
      widen(all, flow / flowLph)
    }
  }
  return { offBy: HAND_OFF_BY, scenarios: SCENARIOS, zones, ...all }
}
