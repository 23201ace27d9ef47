import type { RackRow } from '../parts/rack-row/schema'

/** Towers taken out are counted as the schema says: station by station from the start of the row, line by line from its left. */

/** A place for a tower by its numbers, both from 1. */
export interface TowerPlace {
  readonly station: number
  readonly line: number
}

const ascending = (towers: readonly number[]): number[] => [...new Set(towers)].sort((a, b) => a - b)

const isNumbered = (number: number, last: number): boolean =>
  Number.isInteger(number) && number >= 1 && number <= last

const stationsOf = ({ racks, barsPerRack }: RackRow): number => racks * barsPerRack

const hasPlace = (row: RackRow, station: number, line: number): boolean =>
  isNumbered(station, stationsOf(row)) && isNumbered(line, row.lines)

/** The row with the tower at a station and a line, both from 1, taken out or put back; the same row where it has no such place. */
export const withTowerToggled = (row: RackRow, station: number, line: number): RackRow => {
  if (!hasPlace(row, station, line)) return row
  const tower = (station - 1) * row.lines + line - 1
  const others = row.takenOut.filter((other) => other !== tower)
  const isOut = others.length < row.takenOut.length
  return { ...row, takenOut: isOut ? others : ascending([...others, tower]) }
}

/** The empty places of a row, in order; none that the row does not have, which a file may hold. */
export const emptyPlaces = (row: RackRow): readonly TowerPlace[] =>
  row.takenOut
    .map((tower) => ({ station: Math.floor(tower / row.lines) + 1, line: (tower % row.lines) + 1 }))
    .filter(({ station, line }) => hasPlace(row, station, line))

const numberFault = (what: string, number: number, last: number): string | undefined =>
  isNumbered(number, last)
    ? undefined
    : `there is no ${what} ${number}: the last ${what} of this row is ${last}`

/** Why no tower can be taken out at a place, in words without a full stop; undefined where one hangs there. */
export const takeOutFault = (row: RackRow, { station, line }: TowerPlace): string | undefined => {
  const isOut = emptyPlaces(row).some((place) => place.station === station && place.line === line)
  return (
    numberFault('station', station, stationsOf(row)) ??
    numberFault('line', line, row.lines) ??
    (isOut ? `the tower at station ${station}, line ${line} is out already` : undefined)
  )
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
