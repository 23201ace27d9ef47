import { fittingOf } from '../catalogue/fittings'
import { shimStack } from '../catalogue/shims'
import type { Built } from '../model/built'
import type { CountLine } from '../model/countLine'
import type { Foot, Join, Levels } from '../model/levels'
import { rememberEach } from '../model/remember'

type Tally = ReadonlyMap<string, number>

const countIn = (tally: Map<string, number>, item: string, count: number): void => {
  tally.set(item, (tally.get(item) ?? 0) + count)
}

const tallyOf = rememberEach<Built, null, Tally>((built) => {
  const tally = new Map<string, number>()
  for (const { item } of built.fittings) countIn(tally, item, 1)
  return tally
})

/** What is bought or drilled where water passes from one part into another. A row brings its own tee for the main. */
const atJoin: Readonly<Record<Join['kind'], readonly string[]>> = {
  'outlet-to-drain': ['drop', 'drain-hole'],
  'drain-to-drain': ['drain-wye'],
  'drain-to-pit': [],
  'zone-to-main': [],
  'zone-to-zone': [],
  'main-to-main': [],
  'pump-to-main': [],
  'box-to-main': [],
}

const jointTally = (joins: readonly Join[]): Tally => {
  const tally = new Map<string, number>()
  for (const { kind, to } of joins)
    if (to !== undefined) for (const item of atJoin[kind]) countIn(tally, item, 1)
  return tally
}

/** Feet that stand as high as the highest, to the thinnest shim, have nothing under them. */
const shimmedFeet = rememberEach<readonly Foot[], null, number>(
  (feet) => feet.filter(({ shimMm }) => shimStack(shimMm).length > 0).length,
)

const footShims = ({ feet }: Levels): Tally => {
  let shimmed = 0
  for (const under of feet.values()) shimmed += shimmedFeet(under, null)
  return new Map(shimmed > 0 ? [['foot-shim', shimmed]] : [])
}

const total = (tallies: readonly Tally[]): Tally => {
  const sum = new Map<string, number>()
  for (const tally of tallies) for (const [item, count] of tally) countIn(sum, item, count)
  return sum
}

/** Step 7: how many of each counted thing the bay holds: what its parts bring, what joins them and what levels them. */
export const takeOff = (
  built: readonly Built[],
  joins: readonly Join[],
  levels: Levels,
): readonly CountLine[] => {
  const ofParts = built.map((b) => tallyOf(b, null))
  return [...total([...ofParts, jointTally(joins), footShims(levels)])]
    .map(([item, count]) => ({ item, title: fittingOf(item).title, count }))
    .sort((a, b) => (a.title < b.title ? -1 : 1))
}
