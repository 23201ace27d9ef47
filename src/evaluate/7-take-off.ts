import { fittingOf } from '../catalogue/fittings'
import type { Built } from '../model/built'
import type { CountLine } from '../model/countLine'
import { rememberEach, rememberLast, steadyList } from '../model/remember'

type Tally = ReadonlyMap<string, number>

const tallyOf = rememberEach<Built, null, Tally>((built) => {
  const tally = new Map<string, number>()
  for (const { item } of built.fittings) tally.set(item, (tally.get(item) ?? 0) + 1)
  return tally
})

const steady = steadyList<Tally>()

const sum = rememberLast((tallies: readonly Tally[]): readonly CountLine[] => {
  const total = new Map<string, number>()
  for (const tally of tallies)
    for (const [item, count] of tally) total.set(item, (total.get(item) ?? 0) + count)
  return [...total]
    .map(([item, count]) => ({ item, title: fittingOf(item).title, count }))
    .sort((a, b) => (a.title < b.title ? -1 : 1))
})

/** Step 7: how many of each counted thing the bay holds. */
export const takeOff = (built: readonly Built[]): readonly CountLine[] =>
  sum(steady(built.map((b) => tallyOf(b, null))))
