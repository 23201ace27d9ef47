import { inches } from '../units/length'
import type { Units } from '../units/length'

/** From here on a dig is a hole that someone can fall into and be hurt, and is fenced. Common practice, no source. */
export const FALL_DEPTH_MM = inches(24)

/** From here on a trench wants a ladder within 25 ft of whoever is in it: 29 CFR 1926.651(c)(2), from memory. */
export const LADDER_DEPTH_MM = inches(48)

/** From here on a dig wants its sides held or sloped, whatever the ground: 29 CFR 1926.652(a)(1), from memory. */
export const SHORING_DEPTH_MM = inches(60)

/** How far spoil stays from an edge: 29 CFR 1926.651(j)(2), 2 ft (0.61 m). How near a ladder stands: 1926.651(c)(2), 25 ft. */
const SPOIL_BACK: Readonly<Record<Units, string>> = { 'feet-inches': '2 ft', metric: '610 mm' }
const LADDER_WITHIN: Readonly<Record<Units, string>> = { 'feet-inches': '25 ft', metric: '7.6 m' }

/**
 * What whoever digs so deep must be told, one sentence group a hazard, the least depth first: nothing for what is not dug. The
 * depth is from the floor to the bottom of the bed or lining, mm.
 */
export const digCautions = (depthMm: number, units: Units): readonly string[] => {
  if (depthMm <= 0) return []
  const fenced = depthMm >= FALL_DEPTH_MM ? '; fence it' : ''
  const words = [
    `Digging: call before you dig; dig by hand near marks; keep spoil ${SPOIL_BACK[units]} back from the edge${fenced}.`,
  ]
  if (depthMm >= LADDER_DEPTH_MM)
    words.push(
      `Ladder: one stands within ${LADDER_WITHIN[units]} of whoever is down there; a competent person looks at the sides daily and after rain, and at the air before anyone goes in.`,
    )
  if (depthMm >= SHORING_DEPTH_MM)
    words.push(
      'Sides: sloped back or shored as a competent person says before anyone goes in. Local rules have the last word.',
    )
  return words
}
