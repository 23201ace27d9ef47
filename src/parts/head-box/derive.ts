import type { Place } from '../../geometry/point'
import type { Body, Built, Fitting, Mouth } from '../../model/built'
import type { Site } from '../../model/site'
import { inches } from '../../units/length'
import { footprintOutline } from '../footprint'
import type { HeadBox } from './schema'

/** Its rim stands so far over the overflow, so that a blocked screen shows before it spills. Common practice, no source. */
const FREEBOARD_MM = inches(3)

/** Box and stand together, from the floor to the rim. */
const bodyOf = (part: HeadBox): Body => ({
  part: part.id,
  role: 'equipment',
  outline: footprintOutline(part),
  fromMm: 0,
  toMm: part.waterAboveFloorMm + FREEBOARD_MM,
})

const fittingsAt = (at: Place): Fitting[] =>
  ['head-box', 'head-box-stand', 'overflow-tee'].map((item) => ({ item, at }))

/** A head box: mains meet it at its bottom, and its water stands at the overflow whatever is open. */
export const deriveHeadBox = (part: HeadBox, site: Site): Built => {
  const waterMm = site.groundAt(part.at.x, part.at.y) + part.waterAboveFloorMm
  const at: Place = { ...part.at, z: waterMm - part.depthMm }
  const mouth: Mouth = { role: 'head-box', at, line: 0, station: 0 }
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks: [],
    tubes: [],
    fittings: fittingsAt(at),
    bodies: [bodyOf(part)],
    mouths: [mouth],
    supports: [],
    headBox: { at, waterMm },
  }
}
