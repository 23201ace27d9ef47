import { boxOf, middle } from '../geometry/box'
import type { Join } from '../model/levels'
import type { Finding, Mend } from '../model/finding'
import type { Bay, BayRule } from './context'
import { drainRoute } from './drainRoute'
import { found, lengthOf, term } from './found'

const RULE = 'outlet-drain-reach'

/** Outlets of one row with no drain in reach, as one finding. */
const orphansByRow = (joins: readonly Join[]): Map<string, Join[]> => {
  const rows = new Map<string, Join[]>()
  for (const join of joins) {
    if (join.kind !== 'outlet-to-drain' || join.to !== undefined) continue
    rows.set(join.from, [...(rows.get(join.from) ?? []), join])
  }
  return rows
}

const layDrain = (outlets: readonly Join[], bay: Bay): Mend | undefined => {
  const points = drainRoute(boxOf(outlets.map(({ at }) => at)), bay)
  return points && { kind: 'lay', what: 'drain-line', points }
}

const findingOf = (row: string, outlets: readonly Join[], bay: Bay): Finding => {
  const nearest = Math.min(...outlets.map(({ gapMm }) => gapMm))
  const mend = layDrain(outlets, bay)
  return found({
    rule: RULE,
    subject: 'drain',
    state: 'Backs up',
    parts: [row],
    at: middle(boxOf(outlets.map(({ at }) => at))),
    measured: lengthOf(Number.isFinite(nearest) ? nearest : 0),
    limit: lengthOf(bay.settings.outletReachMm),
    facts: { outlets: outlets.length, none: Number.isFinite(nearest) ? '' : 'none' },
    terms: [term('Furthest that a drop tube leans', lengthOf(bay.settings.outletReachMm))],
    ...(mend && { mend }),
  })
}

/** `1 trough outlet misses`, `4 trough outlets miss`. */
const outletsWords = (facts: Finding['facts'], one: string, many: string): string =>
  facts['outlets'] === 1 ? `1 trough outlet ${one}` : `${facts['outlets']} trough outlets ${many}`

/** Every trough's outlet must have a drain line under it. */
export const outletDrainReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drain under each outlet',
  limit: 'A drain line within 6 in of each trough outlet, on the floor',
  source: 'Common practice, no source',
  mending: 'Lay a drain line under the outlets, or move the row over the line.',
  check: (bay) => [...orphansByRow(bay.joins)].map(([row, outlets]) => findingOf(row, outlets, bay)),
  say: ({ parts, measured, limit, facts }, { onTape, name }) =>
    facts['none'] === 'none'
      ? `${name(parts[0] ?? '')}: ${outletsWords(facts, 'has', 'have')} no drain line to fall into.`
      : `${name(parts[0] ?? '')}: ${outletsWords(facts, 'misses', 'miss')} the drain line; the nearest is ${onTape(measured.value)} off, a drop tube reaches ${onTape(limit.value)}.`,
}
