import { done, refusal } from '../layout/edited'
import { toggleTower } from '../layout/edits'
import { takeOutFault, type TowerPlace } from '../layout/takenOut'
import type { RackRow } from '../parts/rack-row/schema'
import type { Planner } from '../store/planner'
import { commitEdited } from './commitEdited'
import { readCount } from './fieldText'
import { nameOf } from '../store/partNames'

/** `station 5, line 2` */
export const towerPlaceWords = ({ station, line }: TowerPlace): string => `station ${station}, line ${line}`

/** Takes out the tower at a station and a line as typed; a refusal comes back as its sentence. */
export const takeOutNow = (
  planner: Planner,
  row: RackRow,
  stationText: string,
  lineText: string,
): string | undefined => {
  const station = readCount(stationText)
  if (!station.ok) return station.sentence
  const line = readCount(lineText)
  if (!line.ok) return line.sentence
  const place = { station: Number(station.value), line: Number(line.value) }
  return commitEdited(planner, `Take out a tower of ${nameOf(row)}`, (layout) => {
    const fault = takeOutFault(row, place)
    return fault ? refusal(fault) : done(toggleTower(layout, row.id, place.station, place.line))
  })
}

/** Hangs a tower in an empty place again. */
export const putBackNow = (planner: Planner, row: RackRow, { station, line }: TowerPlace): void =>
  planner.commit(`Put back a tower of ${nameOf(row)}`, (layout) => toggleTower(layout, row.id, station, line))
