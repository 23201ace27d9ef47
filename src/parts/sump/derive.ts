import type { Place } from '../../geometry/point'
import type { Body, Built, Mouth } from '../../model/built'
import type { Site } from '../../model/site'
import { pitFactsOf } from './pitFacts'
import { pumpFactsOf } from './pumpFacts'
import { pitFittings } from './pitTakeOff'
import { dischargePlace, pumpSetFittings, pumpSetTubes } from './pumpSet'
import type { Sump } from './schema'
import { outlineOf } from './shape'

/** The pit below the floor, as deep as it is under its highest edge. */
const pitOf = (part: Sump, site: Site): Body => {
  const outline = outlineOf(part)
  const highestMm = Math.max(...outline.map(({ x, y }) => site.groundAt(x, y)))
  return { part: part.id, role: 'pit', outline, fromMm: Math.min(part.bottomMm - highestMm, 0), toMm: 0 }
}

const mouthsOf = (part: Sump): Mouth[] => [
  { role: 'pit-inlet', at: { ...part.at, z: part.overflowMm }, line: 0, station: 0 },
  ...(part.pumps > 0
    ? [{ role: 'pump' as const, at: { ...dischargePlace(part), z: part.pumpOffMm }, line: 0, station: 0 }]
    : []),
]

/** A pit, where drains come in at the overflow's height and pumps stand at the pump-off level; they give water at the rim. */
export const deriveSump = (part: Sump, site: Site): Built => {
  const discharge: Place = { ...dischargePlace(part), z: part.rimMm }
  const pump = pumpFactsOf(part, discharge)
  return {
    part: part.id,
    zFrom: 'benchmark',
    sticks: [],
    tubes: pumpSetTubes(part, discharge),
    fittings: [...pumpSetFittings(part, discharge), ...pitFittings(part)],
    bodies: [pitOf(part, site)],
    mouths: mouthsOf(part),
    supports: [],
    pit: pitFactsOf(part),
    ...(pump && { pump }),
  }
}
