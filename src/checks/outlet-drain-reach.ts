import { type Box, boxOf, middle } from '../geometry/box'
import { across, type Axis, high, low, pointOn } from '../geometry/facing'
import { distance, type Point } from '../geometry/point'
import type { Join } from '../model/levels'
import type { Finding, Mend } from '../model/finding'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, term } from './found'

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

/** A straight drain from past the furthest outlet to the pit's near side; none where the pit does not lie ahead on that axis. */
const lineAlong = (axis: Axis, outlets: Box, pit: Box): readonly [Point, Point] | undefined => {
  const side = across(axis)
  const aside = (low(outlets, side) + high(outlets, side)) / 2
  if (aside < low(pit, side) - CLOSE_MM || aside > high(pit, side) + CLOSE_MM) return undefined
  const line = (fromMm: number, toMm: number) =>
    [pointOn(axis, fromMm, aside), pointOn(axis, toMm, aside)] as const
  if (low(pit, axis) >= high(outlets, axis) - CLOSE_MM)
    return line(low(outlets, axis) - PAST_OUTLET_MM, low(pit, axis))
  if (high(pit, axis) <= low(outlets, axis) + CLOSE_MM)
    return line(high(outlets, axis) + PAST_OUTLET_MM, high(pit, axis))
  return undefined
}

/** The shortest straight drain to a pit that all the outlets reach. */
const layDrain = (outlets: readonly Join[], { built, settings }: Bay): Mend | undefined => {
  const box = boxOf(outlets.map(({ at }) => at))
  const axes = (['x', 'y'] as const).filter(
    (axis) => high(box, across(axis)) - low(box, across(axis)) <= 2 * settings.outletReachMm,
  )
  const pits = built.flatMap(({ bodies }) => bodies.filter(({ role }) => role === 'pit'))
  const [shortest] = pits
    .flatMap(({ outline }) => axes.map((axis) => lineAlong(axis, box, boxOf(outline))))
    .filter((line) => line !== undefined)
    .sort((a, b) => distance(...a) - distance(...b))
  return shortest && { kind: 'lay', what: 'drain-line', points: shortest }
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
      ? `${name(parts[0] ?? '')}: ${facts['outlets']} trough outlets have no drain line to fall into.`
      : `${name(parts[0] ?? '')}: ${facts['outlets']} trough outlets miss the drain line; the nearest is ${onTape(measured.value)} off, a drop tube reaches ${onTape(limit.value)}.`,
}
