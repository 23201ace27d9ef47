import type { HoleAt } from '../../layout/bench'
import type { Built } from '../../model/built'
import { rememberEach } from '../../model/remember'
import { fromTicks, toTicks } from '../../units/length'

/** Heights of holes in ticks, by stock, mark and length of the members that have them. */
type Heights = ReadonlyMap<string, ReadonlySet<number>>

const keyOf = (stock: string, mark: string, lengthTicks: number): string => `${stock} ${mark} ${lengthTicks}`

const heightsOf = rememberEach<Built, null, Heights>(({ sticks }) => {
  const heights = new Map<string, Set<number>>()
  for (const { stock, mark, lengthMm, holes } of sticks) {
    if (holes.length === 0) continue
    const key = keyOf(stock, mark, toTicks(lengthMm))
    const known = heights.get(key) ?? new Set()
    for (const { centreMm } of holes) known.add(toTicks(centreMm))
    heights.set(key, known)
  }
  return heights
})

/** Where the holes of members stand that are of one stock and one length, by their marks, lowest first. */
export type HolesOf = (stock: string, marks: readonly string[], lengthMm: number) => readonly HoleAt[]

/** Hole heights of a bay's members, from their feet. A part that has not changed is not looked at again. */
export const holeHeights = (built: readonly Built[]): HolesOf => {
  const all = built.map((each) => heightsOf(each, null))
  const known = new Map<string, readonly number[]>()
  const ticksOf = (key: string): readonly number[] => {
    const found =
      known.get(key) ??
      [...new Set(all.flatMap((heights) => [...(heights.get(key) ?? [])]))].sort((a, b) => a - b)
    known.set(key, found)
    return found
  }
  return (stock, marks, lengthMm) =>
    marks.flatMap((mark) =>
      ticksOf(keyOf(stock, mark, toTicks(lengthMm))).map((ticks) => ({ mark, centreMm: fromTicks(ticks) })),
    )
}
