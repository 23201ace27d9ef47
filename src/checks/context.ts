import type { House } from '../layout/house'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Join, Levels } from '../model/levels'
import type { Site } from '../model/site'

/** What is known of the whole bay when the checks run. Checks read built things; which kind they came from they never ask. */
export interface Bay {
  readonly house: House
  readonly settings: Settings
  readonly site: Site
  readonly built: readonly Built[]
  readonly builtOf: ReadonlyMap<PartId, Built>
  readonly nameOf: (part: PartId) => string
  readonly joins: readonly Join[]
  readonly levels: Levels
  /** Clear height above the floor at a place, mm. */
  readonly headroomAt: (x: number, y: number) => number
  /** Widest cart, mm, that comes alongside each row from a door that carts use. */
  readonly carts: ReadonlyMap<PartId, CartReach>
}

/** The widest cart that can come alongside each long face of a row, mm; 0 where none of 10 in or more can. */
export interface CartReach {
  readonly leftMm: number
  readonly rightMm: number
}

interface RuleBase {
  /** Thing-what-limit, such as `aisle-width-min`. */
  readonly id: string
  readonly title: string
  /** Where the limit comes from: publication with table, or `common practice, no source`. */
  readonly limit: string
  readonly source: string
  /** One sentence: how such a finding is usually mended. */
  readonly mending: string
  /** The words of a finding, without its mend. `length` writes a length in the reader's units. */
  readonly say: (finding: Finding, write: Writer) => string
}

export interface Writer {
  readonly length: (mm: number) => string
  readonly fall: (mmPerM: number) => string
}

/** A rule that looks at one part alone: remembered for as long as the part's built things are the same. */
export interface PartRule extends RuleBase {
  readonly over: 'part'
  readonly check: (built: Built, bay: Pick<Bay, 'nameOf' | 'settings' | 'house'>) => readonly Finding[]
}

/** A rule over the whole bay. */
export interface BayRule extends RuleBase {
  readonly over: 'bay'
  readonly check: (bay: Bay) => readonly Finding[]
}

export type Rule = PartRule | BayRule
