import type { CountUnit } from '../units/writeCount'
import type { PartId } from './ids'

/** Heading of the take-off under which a counted thing stands; of `lumber` there are only pieces that are cut. */
export type CountGroup =
  'growing' | 'feet' | 'lumber' | 'conduit' | 'gutter' | 'drain' | 'water' | 'pit' | 'fasteners'

/** How many of one counted thing. How it is counted, in words, says `countRule` of the catalogue. */
export interface CountLine {
  /** Catalogue key of the fitting; of pieces that are cut, stock and mark: `lumber-2x4#RS-p`, `pe-3/4#lateral`. */
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
