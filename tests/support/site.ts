import type { Site } from '../../src/model/site'
import { inches, toInches } from '../../src/units/length'

/** A site with a floor of its own; no row asks for a tip. */
export const siteOn = (groundAt: Site['groundAt']): Site => ({
  groundAt,
  leafReachMm: inches(6),
  tipMm: 0,
  kerfMm: inches(1 / 8),
  lumberMm: [inches(120), inches(144)],
  measured: [],
})

/** A floor at one level, inches. */
export const flatSite = (levelIn = 0): Site => siteOn(() => inches(levelIn))

/**
 * The sample bay's floor: a plane over 352 x 856 in with NW 0, NE -1, SW -2 and SE -3 in. The house is invented; its
 * levels come from the worked example of the trade notes.
 */
export const sampleFloor: Site['groundAt'] = (x, y) =>
  inches(-toInches(x) / 352 - (2 * (856 - toInches(y))) / 856)

/** A place in inches, as a builder would say it. */
export const at = (x: number, y: number) => ({ x: inches(x), y: inches(y) })

/** A length in mm as a builder would read it: inches to 1/1000. */
export const inchesOf = (mm: number): number => Math.round(toInches(mm) * 1000) / 1000 + 0
