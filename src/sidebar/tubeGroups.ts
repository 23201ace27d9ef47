import type { RackRow } from '../parts/rack-row/schema'

export type TubeGroups = RackRow['gradedTubes']
export type TubeGroup = TubeGroups[number]

/** Four colours on a row: a first group takes a quarter of its stations. Common practice, no source. */
const FIRST_SHARE = 1 / 4

/** Letter on the bundle, as on the tube card: A where the water enters. */
export const groupLetter = (group: number): string => String.fromCodePoint('A'.charCodeAt(0) + group)

/** A further group at the far end, like the last one; the first one is cut as all tubes of the row were. */
export const nextGroup = (row: RackRow): TubeGroup => {
  const last = row.gradedTubes.at(-1)
  if (last) return last
  const stations = Math.max(1, Math.round(row.racks * row.barsPerRack * FIRST_SHARE))
  return { stations, lengthMm: row.microtubeMm }
}

/** The groups with one of them changed. */
export const withGroup = (groups: TubeGroups, group: number, change: Partial<TubeGroup>): TubeGroups =>
  groups.map((each, index) => (index === group ? { ...each, ...change } : each))
