import type { Denominator } from './fraction'

/** The finest step that a reader can use: parts of an inch on the one tape, parts of a millimetre on the other. */
export interface Precision {
  readonly inchParts: Denominator
  readonly mmParts: 1 | 10
  /** Flows, temperatures and the like have a digit more than the crew can use, and another where there is one. */
  readonly hasMoreDigits?: true
}

/** At the saw and the bench: 1/16 in, or the whole millimetre of a metric tape. */
export const atSaw: Precision = { inchParts: 16, mmParts: 1 }

/** At the drill: 1/32 in, since the two hole heights of a row differ by less than a sixteenth at their bottoms. */
export const atDrill: Precision = { inchParts: 32, mmParts: 1 }

/** In the trench and on the floor: 1/8 in, or the whole millimetre. */
export const inTrench: Precision = { inchParts: 8, mmParts: 1 }

/** On a sight tube: 1/4 in of water, for water climbs the wall of a narrow tube by nearly as much. */
export const onSightTube: Precision = { inchParts: 4, mmParts: 1 }

/** As typed and kept: 1/64 in or 0.1 mm, for a field must give back what was put in it. */
export const asTyped: Precision = { inchParts: 64, mmParts: 10, hasMoreDigits: true }
