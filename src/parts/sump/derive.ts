import { offset } from '../../geometry/motion'
import type { Place, Point } from '../../geometry/point'
import type { Body, Built } from '../../model/built'
import type { Site } from '../../model/site'
import { footprintOutline } from '../footprint'
import type { Sump } from './schema'

/** The pit below the floor, as deep as it is under its highest edge. */
const pitOf = (part: Sump, site: Site): Body => {
  const outline = footprintOutline(part)
  const highestMm = Math.max(...outline.map(({ x, y }) => site.groundAt(x, y)))
  return { part: part.id, role: 'pit', outline, fromMm: Math.min(part.bottomMm - highestMm, 0), toMm: 0 }
}

/** The pump stands at the end that the heading points to, as far from that wall as from the two beside it. */
const pumpPlace = ({ at, heading, lengthMm, widthMm }: Sump): Point =>
  offset(at, heading, Math.max(0, (lengthMm - widthMm) / 2), 0)

/** A pit, where drains come in at the overflow's height and one pump stands at the pump-off level. */
export const deriveSump = (part: Sump, site: Site): Built => {
  const pump: Place = { ...pumpPlace(part), z: part.pumpOffMm }
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks: [],
    tubes: [],
    fittings: [{ item: 'pump', at: pump }],
    bodies: [pitOf(part, site)],
    mouths: [
      { role: 'pit-inlet', at: { ...part.at, z: part.overflowMm }, line: 0, station: 0 },
      { role: 'pump', at: pump, line: 0, station: 0 },
    ],
    supports: [],
    pit: part,
  }
}
