import type { Place } from '../../geometry/point'
import { placeAt } from './frame'
import { towerTopOf } from './levels'
import type { RackPlan } from './plan'

/** A tower that hangs. */
export interface HungTower {
  /** 1-based, from the high end. */
  readonly station: number
  /** 1-based, from the left looking downhill. */
  readonly line: number
  readonly u: number
  /** Its top: the hook ring. */
  readonly head: Place
}

/** Every tower that is not taken out, station by station. */
export const hungTowers = ({ part, frame, positions, levels }: RackPlan): HungTower[] => {
  const takenOut = new Set(part.takenOut)
  const towers: HungTower[] = []
  positions.barU.forEach((u, bar) => {
    const z = towerTopOf(part, levels, Math.floor(bar / part.barsPerRack))
    positions.lineV.forEach((v, line) => {
      if (takenOut.has(bar * part.lines + line)) return
      towers.push({ station: bar + 1, line: line + 1, u, head: placeAt(frame, u, v, z) })
    })
  })
  return towers
}
