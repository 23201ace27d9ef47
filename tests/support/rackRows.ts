import type { Built, Stick } from '../../src/model/built'
import type { RackFacts } from '../../src/model/rackFacts'
import { rackRow } from '../../src/parts/rack-row/kind'
import { rackRowSchema, type RackRow } from '../../src/parts/rack-row/schema'
import { toInches } from '../../src/units/length'
import { at, flatSite } from './site'

/** A row of the schema's defaults, which runs north from (100, 50). */
export const row = (more: Partial<RackRow> = {}): RackRow =>
  rackRowSchema.parse({ kind: 'rack-row', id: 'rack-row-1', name: 'A', at: at(100, 50), ...more })

/** The shelf's own row of a preset, in the middle of nowhere. */
export const fromShelf = (preset: string): RackRow => {
  const found = rackRow.presets.find(({ id }) => id === preset)
  if (!found) throw new RangeError(`The shelf has no rack row "${preset}".`)
  return rackRow.create('rack-row-1', 'A', at(0, 0), found)
}

/** Built on a level floor where no other row asks for a tip, or in a bay whose tips hang at a level, mm. */
export const build = (part: RackRow, bayTipMm = 0): Built =>
  rackRow.derive(part, { ...flatSite(), tipMm: bayTipMm })

export const facts = (part: RackRow, bayTipMm = 0): RackFacts => build(part, bayTipMm).rack!

export const marked = (built: Built, ...marks: readonly string[]): readonly Stick[] =>
  built.sticks.filter(({ mark }) => marks.includes(mark))

/** How many pieces of each length of these marks, longest first: `6 x 119.0625`. */
export const pieces = (built: Built, ...marks: readonly string[]): string[] => {
  const counts = new Map<number, number>()
  for (const { lengthMm } of marked(built, ...marks)) {
    const length = Math.round(toInches(lengthMm) * 10_000) / 10_000
    counts.set(length, (counts.get(length) ?? 0) + 1)
  }
  return [...counts].sort(([a], [b]) => b - a).map(([length, count]) => `${count} x ${length}`)
}

export const countOf = (built: Built, item: string): number =>
  built.fittings.filter((fitting) => fitting.item === item).length

/** How many of a pipe fitting there are, whatever its size: `tee`, `elbow`, `reducing-coupling`, `clamp` ... */
export const joineryOf = (built: Built, noun: string): number =>
  built.fittings.filter(({ item }) => new RegExp(`^${noun}-(?:pe|drip)-`).test(item)).length
