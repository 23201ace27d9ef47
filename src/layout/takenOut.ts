import type { RackRow } from '../parts/rack-row/schema'

/** Towers taken out are counted as the schema says: station by station from the start of the row, line by line from its left. */

const ascending = (towers: readonly number[]): number[] => [...new Set(towers)].sort((a, b) => a - b)

const hasPlace = ({ racks, barsPerRack, lines }: RackRow, station: number, line: number): boolean =>
  Number.isInteger(station) &&
  Number.isInteger(line) &&
  station >= 1 &&
  station <= racks * barsPerRack &&
  line >= 1 &&
  line <= lines

/** The row with the tower at a station and a line, both from 1, taken out or put back; the same row where it has no such place. */
export const withTowerToggled = (row: RackRow, station: number, line: number): RackRow => {
  if (!hasPlace(row, station, line)) return row
  const tower = (station - 1) * row.lines + line - 1
  const others = row.takenOut.filter((other) => other !== tower)
  const isOut = others.length < row.takenOut.length
  return { ...row, takenOut: isOut ? others : ascending([...others, tower]) }
}

/** A hanging place by what it hangs on, all from 0. */
interface HangingPlace {
  readonly rack: number
  readonly bar: number
  readonly line: number
}

const placeOf = ({ barsPerRack, lines }: RackRow, tower: number): HangingPlace => {
  const station = Math.floor(tower / lines)
  return { rack: Math.floor(station / barsPerRack), bar: station % barsPerRack, line: tower % lines }
}

const isOnRow = (row: RackRow, { rack, bar, line }: HangingPlace): boolean =>
  rack < row.racks && bar < row.barsPerRack && line < row.lines

const towerAt = ({ barsPerRack, lines }: RackRow, { rack, bar, line }: HangingPlace): number =>
  (rack * barsPerRack + bar) * lines + line

/**
 * `after` with the same places empty as `before`: same rack, same bar, same line. Places that it no longer has are
 * forgotten. Without this a row of fewer lines would have its gaps elsewhere.
 */
export const withGapsOf = (before: RackRow, after: RackRow): RackRow => {
  const places = before.takenOut.map((tower) => placeOf(before, tower))
  const kept = places.filter((place) => isOnRow(after, place))
  return { ...after, takenOut: ascending(kept.map((place) => towerAt(after, place))) }
}
