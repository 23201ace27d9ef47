import type { Join } from '../model/levels'
import type { Finding, Mend } from '../model/finding'
import type { Bay, BayRule } from './context'
import { found, lengthOf, term } from './found'
import { boxOf } from '../geometry/box'

const RULE = 'outlet-drain-reach'

/** A drain past the outermost outlets by this much, so that the last drop is clear of the end. */
const PAST_OUTLET_MM = 150

/** Outlets of one row with no drain in reach, as one finding. */
const orphansByRow = (joins: readonly Join[]): Map<string, Join[]> => {
  const rows = new Map<string, Join[]>()
  for (const join of joins) {
    if (join.kind !== 'outlet-to-drain' || join.to !== undefined) continue
    rows.set(join.from, [...(rows.get(join.from) ?? []), join])
  }
  return rows
}

/** A drain under all the row's outlets, on to the nearest pit. */
const layDrain = (outlets: readonly Join[], bay: Bay): Mend | undefined => {
  const pits = bay.built.flatMap((b) =>
    b.bodies.filter(({ role }) => role === 'pit').map(({ outline }) => boxOf(outline)),
  )
  const box = boxOf(outlets.map(({ at }) => at))
  const isAcross = box.x1 - box.x0 >= box.y1 - box.y0
  const aside = isAcross ? (box.y0 + box.y1) / 2 : (box.x0 + box.x1) / 2
  const reachOf = (pit: (typeof pits)[number]) =>
    isAcross
      ? pit.y0 <= aside && aside <= pit.y1
        ? pit
        : undefined
      : pit.x0 <= aside && aside <= pit.x1
        ? pit
        : undefined
  const pit = pits.find(reachOf)
  if (!pit) return undefined
  const [low, high, near, far] = isAcross
    ? [box.x0, box.x1, pit.x0, pit.x1]
    : [box.y0, box.y1, pit.y0, pit.y1]
  const isPitAhead = near >= high
  const start = isPitAhead ? low - PAST_OUTLET_MM : high + PAST_OUTLET_MM
  const end = isPitAhead ? near : far
  const point = (along: number) => (isAcross ? { x: along, y: aside } : { x: aside, y: along })
  return { kind: 'add-drain', points: [point(start), point(end)] }
}

const findingOf = (row: string, outlets: readonly Join[], bay: Bay): Finding => {
  const nearest = Math.min(...outlets.map(({ gapMm }) => gapMm))
  const [first] = outlets
  const mend = layDrain(outlets, bay)
  return found({
    rule: RULE,
    subject: 'drain',
    state: 'Backs up',
    parts: [row],
    at: first?.at ?? { x: 0, y: 0 },
    measured: lengthOf(Number.isFinite(nearest) ? nearest : 0),
    limit: lengthOf(bay.settings.outletReachMm),
    facts: { outlets: outlets.length, none: Number.isFinite(nearest) ? '' : 'none' },
    terms: [term('Furthest that a drop tube leans', lengthOf(bay.settings.outletReachMm))],
    ...(mend && { mend }),
  })
}

/** Every trough's outlet must have a drain line under it. */
export const outletDrainReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drain under each outlet',
  limit: 'A drain line within 6 in of each trough outlet, on the floor',
  source: 'Common practice, no source',
  mending: 'Lay a drain line under the outlets, or move the row over the line.',
  check: (bay) => [...orphansByRow(bay.joins)].map(([row, outlets]) => findingOf(row, outlets, bay)),
  say: ({ parts, measured, limit, facts }, { length, name }) =>
    facts['none'] === 'none'
      ? `${name(parts[0] ?? '')}: ${facts['outlets']} trough outlets have no drain line to fall into.`
      : `${name(parts[0] ?? '')}: ${facts['outlets']} trough outlets miss the drain line; the nearest is ${length(measured.value)} off, a drop tube reaches ${length(limit.value)}.`,
}
