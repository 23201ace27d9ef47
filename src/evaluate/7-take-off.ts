import { fittingOf } from '../catalogue/fittings'
import type { Built } from '../model/built'
import type { CountLine } from '../model/countLine'
import type { PartId } from '../model/ids'
import type { Join, Levels } from '../model/levels'
import { feet } from '../units/length'
import type { CountUnit } from '../units/writeCount'
import { atJoin, type BuiltOf } from './takeOff/atJoins'
import { countIn, footShims, tallyOf } from './takeOff/tally'

/** What a part brings, or what joins it to another or levels it: items and how many. */
type Brought = readonly [part: PartId, items: Iterable<readonly [item: string, count: number]>]

/** The first of a part's built things is the part itself; the pipes between parts come after. */
const byPart = (built: readonly Built[]): BuiltOf => {
  const parts = new Map<PartId, Built>()
  for (const each of built) if (!parts.has(each.part)) parts.set(each.part, each)
  return parts
}

/** What is in one of a unit: pieces, mm, mm². */
const IN_ONE: Readonly<Record<CountUnit, number>> = { piece: 1, ft: feet(1), ft2: feet(1) ** 2 }

const perPart = (item: string, brought: readonly Brought[], inOne: number): Map<PartId, number> => {
  const counts = new Map<PartId, number>()
  for (const [part, items] of brought)
    for (const [key, count] of items)
      if (key === item) counts.set(part, (counts.get(part) ?? 0) + count / inOne)
  return counts
}

const lineOf = (item: string, sum: number, brought: readonly Brought[]): CountLine => {
  const { title, group, unit, isWork } = fittingOf(item)
  return {
    item,
    title,
    group,
    count: sum / IN_ONE[unit],
    unit,
    isWork,
    // Only who opens the line asks: a frame of a drag has no time for it.
    get perPart() {
      return perPart(item, brought, IN_ONE[unit])
    },
  }
}

const broughtBy = (built: readonly Built[], joins: readonly Join[], levels: Levels): Brought[] => {
  const builtOf = byPart(built)
  const brought: Brought[] = built.map((each) => [each.part, tallyOf(each, null)])
  for (const join of joins) {
    const items = atJoin(join, builtOf)
    if (items.length > 0) brought.push([join.from, items.map(({ item }) => [item, 1] as const)])
  }
  for (const [part, under] of levels.feet) brought.push([part, footShims(under, null)])
  for (const [part, { bellsMm }] of levels.drains)
    if (bellsMm.length > 0) brought.push([part, [['bell-joint', bellsMm.length]]])
  return brought
}

/** Step 7: how many of each counted thing the bay holds: what its parts bring, what joins them and what levels them. */
export const takeOff = (
  built: readonly Built[],
  joins: readonly Join[],
  levels: Levels,
): readonly CountLine[] => {
  const brought = broughtBy(built, joins, levels)
  const sums = new Map<string, number>()
  for (const [, items] of brought) for (const [item, count] of items) countIn(sums, item, count)
  return [...sums]
    .map(([item, sum]) => lineOf(item, sum, brought))
    .sort((a, b) => (a.title < b.title ? -1 : 1))
}
