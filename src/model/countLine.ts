import type { PartId } from './ids'

/** Heading of the take-off under which a counted thing stands. */
export type CountGroup =
  'growing' | 'feet' | 'conduit' | 'gutter' | 'drain' | 'water' | 'pit' | 'fasteners'

/** How a thing is counted: by the piece, by the foot of a run, by the square foot. */
export type CountUnit = 'piece' | 'ft' | 'ft2'

/** How many of one counted thing. How it is counted, in words, says `countRule` of the catalogue. */
export interface CountLine {
  /** Catalogue key of the fitting. */
  readonly item: string
  readonly title: string
  readonly group: CountGroup
  /** Pieces; feet or square feet, with their decimals, where the unit is such. */
  readonly count: number
  readonly unit: CountUnit
  /** Work that the crew does, such as a hole: counted, never bought. */
  readonly isWork: boolean
  /** What of the count each part brings; no part stands with nothing. */
  readonly perPart: ReadonlyMap<PartId, number>
}
