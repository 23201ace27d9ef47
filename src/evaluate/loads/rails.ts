import type { RailLine, RailSpan } from '../../model/strength'
import { isWorse, judgeSag, judgeStress, type ConduitSettings } from './allowed'
import type { Carried, StretchWorst, SupportWorst } from './carrying'
import type { ConduitsUsed } from './conduitUsed'
import type { Hung } from './hung'
import { hingesOf, SAME_PLACE_MM, type RailChain } from './railChain'
import { carriedPart, fullOf, hangerOf, partsOf, type Hanger, type Part } from './railParts'

/** A rail line with what comes of each stretch of it. */
export interface CarriedRail {
  readonly chain: RailChain
  readonly line: RailLine
  readonly stretches: readonly StretchWorst[]
  readonly supports: readonly SupportWorst[]
  readonly hangers: readonly Hanger[]
  /** Parts of the line that rest on too little to stay where they are. */
  readonly loose: readonly { readonly fromU: number; readonly toU: number }[]
}

/** Two parts that meet over a riser both press on it. */
const joined = (supports: readonly SupportWorst[]): SupportWorst[] => {
  const all: SupportWorst[] = []
  for (const support of supports) {
    const last = all.at(-1)
    if (!last || support.atMm - last.atMm > 2 * SAME_PLACE_MM) {
      all.push(support)
      continue
    }
    all[all.length - 1] = {
      atMm: last.atMm,
      fullN: last.fullN + support.fullN,
      mostN: last.mostN + support.mostN,
      leastN: last.leastN + support.leastN,
      leastUnder: last.leastN < support.leastN ? last.leastUnder : support.leastUnder,
      leastHungN: last.leastHungN + support.leastHungN,
    }
  }
  return all
}

/** A span as a rail line tells it: by what uses most of its limit. */
export const railSpan = (stretch: StretchWorst, settings: ConduitSettings): RailSpan => {
  const { fromMm, toMm, isOverhang, conduit, moment, sag, stressMpa } = stretch
  const [stress, sagging] = [judgeStress(stretch, settings), judgeSag(stretch, settings)]
  const isBySag = isWorse(sagging, stress)
  return {
    fromU: fromMm,
    toU: toMm,
    isOverhang,
    stock: conduit.stock,
    momentNmm: moment.value,
    stressMpa,
    sagMm: sag.value,
    state: (isBySag ? sagging : stress).state,
    used: Math.max(stress.used, sagging.used),
    under: (isBySag ? sag : moment).under,
  }
}

/** What rests on too little is refused whatever hangs on it. */
const looseSpan = ({ fromU, toU, pieces }: Part): RailSpan => ({
  fromU,
  toU,
  isOverhang: true,
  stock: pieces[0]?.stick.stock ?? '',
  momentNmm: 0,
  stressMpa: Infinity,
  sagMm: Infinity,
  state: 'Too long',
  used: Infinity,
  under: 'empty',
})

const curveOf = (carried: readonly Carried[]): RailLine['curve'] => ({
  u: carried.flatMap(({ curve }) => curve.atMm),
  sagMm: carried.flatMap(({ curve }) => curve.sagMm),
  momentNmm: carried.flatMap(({ curve }) => curve.momentNmm),
})

const railLine = (
  chain: RailChain,
  hangers: readonly Hanger[],
  spans: readonly RailSpan[],
  supports: readonly SupportWorst[],
  curve: RailLine['curve'],
): RailLine => ({
  v: chain.v,
  z: chain.z,
  sticks: chain.sticks.map(({ fromU, toU, stock }) => ({ fromU, toU, stock })),
  hingesU: hingesOf(chain),
  hangers: hangers.map((hanger) => ({ u: hanger.atMm, fullN: fullOf(hanger) })),
  spans,
  reactions: supports.map(({ atMm, fullN, mostN, leastN }) => ({ u: atMm, fullN, mostN, leastN })),
  curve,
})

/** One rail line of a row under all that hangs on it; `otherV` is where the other rail lies. */
export const carriedRail = (
  chain: RailChain,
  otherV: number,
  hung: Hung,
  conduits: ConduitsUsed,
  settings: ConduitSettings,
): CarriedRail => {
  const parts = partsOf(chain)
  const laid = { chain, parts, conduits }
  const hangers = hung.bars.map((bar) => hangerOf(bar, chain.v, otherV))
  const each = parts.map((part) => ({
    part,
    carried: carriedPart(part, laid, hung, hangers, otherV, settings.proofTimes),
  }))
  const carried = each.flatMap((one) => one.carried ?? [])
  const spans = each.flatMap((one) =>
    one.carried ? one.carried.stretches.map((stretch) => railSpan(stretch, settings)) : [looseSpan(one.part)],
  )
  const supports = joined(carried.flatMap((one) => one.supports))
  return {
    chain,
    line: railLine(chain, hangers, spans, supports, curveOf(carried)),
    stretches: carried.flatMap(({ stretches }) => stretches),
    supports,
    hangers,
    loose: each.flatMap((one) => (one.carried ? [] : [one.part])),
  }
}
