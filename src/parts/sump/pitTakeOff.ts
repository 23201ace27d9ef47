import { offset } from '../../geometry/motion'
import type { Place } from '../../geometry/point'
import type { Fitting } from '../../model/built'
import { inches } from '../../units/length'
import type { Sump } from './schema'
import { bottomOf, rimOf } from './shape'

/** A lining lies this far over the rim all round, to be held down by the curb. Common practice, no source. */
const LINING_OVER_RIM_MM = inches(12)

/** A lid lies this far past the rim all round. Common practice, no source. */
const LID_PAST_RIM_MM = inches(4)

/** Across the floor of the pit and up both walls: as long a sheet as lies in it one way, mm. */
const acrossMm = (bottomMm: number, rimMm: number, depthMm: number): number =>
  bottomMm + 2 * Math.hypot(depthMm, (rimMm - bottomMm) / 2)

/** One sheet, folded into the corners, since a seam under water leaks; mm². */
export const liningArea = (part: Sump): number => {
  const [rim, bottom] = [rimOf(part), bottomOf(part)]
  const depthMm = part.rimMm - part.bottomMm
  const longMm = acrossMm(bottom.lengthMm, rim.lengthMm, depthMm)
  const wideMm = acrossMm(bottom.widthMm, rim.widthMm, depthMm)
  return (longMm + 2 * LINING_OVER_RIM_MM) * (wideMm + 2 * LINING_OVER_RIM_MM)
}

/** The rectangle over the rim, of a round pit as well, for which boards are cut; mm². */
export const lidArea = (part: Sump): number => {
  const { lengthMm, widthMm } = rimOf(part)
  return (lengthMm + 2 * LID_PAST_RIM_MM) * (widthMm + 2 * LID_PAST_RIM_MM)
}

/** The overflow leaves at the end away from the pumps; a boot shuts the wall about it. */
const overflowFittings = (part: Sump): Fitting[] => {
  const { at, heading, lengthMm } = rimOf(part)
  const wall: Place = { ...offset(at, heading, -lengthMm / 2, 0), z: part.overflowMm }
  return [`overflow-pipe-${part.overflowBore}`, `overflow-screen-${part.overflowBore}`, 'pit-boot'].map(
    (item) => ({ item, at: wall }),
  )
}

/** What fills it up again, what stops the pump before it sucks air, and what calls when it stands too low or too high. */
const floatFittings = (part: Sump): Fitting[] => [
  ...(part.makeUpLph > 0 ? [{ item: 'make-up-valve', at: { ...part.at, z: part.makeUpMm } }] : []),
  ...(part.pumps > 0 ? [{ item: 'pump-float', at: { ...part.at, z: part.pumpOffMm } }] : []),
  { item: 'alarm-float', at: { ...part.at, z: part.lowAlarmMm } },
  { item: 'alarm-float', at: { ...part.at, z: part.overflowMm } },
]

/** The pit itself: lining, lid, overflow, floats. */
export const pitFittings = (part: Sump): Fitting[] => [
  ...(part.lining === 'sheet'
    ? [{ item: 'pit-lining', at: { ...part.at, z: part.bottomMm }, amount: liningArea(part) }]
    : []),
  { item: 'pit-lid', at: { ...part.at, z: part.rimMm }, amount: lidArea(part) },
  ...overflowFittings(part),
  ...floatFittings(part),
]
