import type { Place } from '../../geometry/point'
import { numberOf, placeAt } from './frame'
import { towerTopOf } from './levels'
import type { RackPlan } from './plan'

/** A tower that hangs. */
export interface HungTower {
  /** 1-based, from the start of the row. */
  readonly station: number
  /** 1-based, from the left looking along the row's heading. */
  readonly line: number
  readonly u: number
  /** Index of its line by v. */
  readonly lineIndex: number
  /** Its top: the hook ring. */
  readonly head: Place
}

/** Every tower that is not taken out, station by station from the high end. */
export const hungTowers = ({ part, frame, positions, levels }: RackPlan): HungTower[] => {
  const takenOut = new Set(part.takenOut)
  const stations = positions.barU.length
  const towers: HungTower[] = []
  positions.barU.forEach((u, bar) => {
    const z = towerTopOf(part, levels, Math.floor(bar / part.barsPerRack))
    const station = numberOf(frame.isFromStart, bar, stations)
    positions.lineV.forEach((v, lineIndex) => {
      const line = numberOf(frame.isFromStart, lineIndex, part.lines)
      if (takenOut.has(station * part.lines + line)) return
      towers.push({ station: station + 1, line: line + 1, u, lineIndex, head: placeAt(frame, u, v, z) })
    })
  })
  return towers
}
