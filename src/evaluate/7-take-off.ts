import { fittingOf } from '../catalogue/fittings'
import type { Built } from '../model/built'
import type { CountLine } from '../model/countLine'
import type { PartId } from '../model/ids'
import type { Join, Levels } from '../model/levels'
import { feet } from '../units/length'
import type { CountUnit } from '../units/writeCount'
import { atJoin, type BuiltOf } from './takeOff/atJoins'
import { footShims, type Tally, tallyOf } from './takeOff/tally'

/** Counts of each item, part by part. */
type PerPart = Map<string, Map<PartId, number>>

const add = (sums: PerPart, part: PartId, item: string, count: number): void => {
  const sum = sums.get(item)
  if (sum) sum.set(part, (sum.get(part) ?? 0) + count)
  else sums.set(item, new Map([[part, count]]))
}

const addAll = (sums: PerPart, part: PartId, tally: Tally): void => {
  for (const [item, count] of tally) add(sums, part, item, count)
}

/** The first of a part's built things is the part itself; the pipes between parts come after. */
const byPart = (built: readonly Built[]): BuiltOf => {
  const parts = new Map<PartId, Built>()
  for (const each of built) if (!parts.has(each.part)) parts.set(each.part, each)
  return parts
}

/** What is in one of a unit: pieces, mm, mm². */
const IN_ONE: Readonly<Record<CountUnit, number>> = { piece: 1, ft: feet(1), ft2: feet(1) ** 2 }

const lineOf = (item: string, counts: Map<PartId, number>): CountLine => {
  const { title, group, unit, isWork } = fittingOf(item)
  let count = 0
  for (const [part, each] of counts) {
    if (unit !== 'piece') counts.set(part, each / IN_ONE[unit])
    count += each
  }
  return { item, title, group, count: count / IN_ONE[unit], unit, isWork, perPart: counts }
}

/** Step 7: how many of each counted thing the bay holds: what its parts bring, what joins them and what levels them. */
export const takeOff = (
  built: readonly Built[],
  joins: readonly Join[],
  levels: Levels,
): readonly CountLine[] => {
  const sums: PerPart = new Map()
  const builtOf = byPart(built)
  for (const each of built) addAll(sums, each.part, tallyOf(each, null))
  for (const join of joins) for (const { item } of atJoin(join, builtOf)) add(sums, join.from, item, 1)
  for (const [part, under] of levels.feet) addAll(sums, part, footShims(under, null))
  for (const [part, { bellsMm }] of levels.drains)
    if (bellsMm.length > 0) add(sums, part, 'bell-joint', bellsMm.length)
  return [...sums].map(([item, counts]) => lineOf(item, counts)).sort((a, b) => (a.title < b.title ? -1 : 1))
}
