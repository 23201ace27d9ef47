import type { House } from '../layout/house'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Join, Levels } from '../model/levels'
import type { Returns } from '../model/returns'
import type { Site } from '../model/site'
import type { RowStrength } from '../model/strength'
import type { Water } from '../model/water'
import type { Writer } from '../units/writer'
import type { Aisle } from './aisles'

/** What is known of the whole bay when the checks run. Checks read built things; which kind they came from they never ask. */
export interface Bay {
  readonly house: House
  readonly settings: Settings
  readonly site: Site
  readonly built: readonly Built[]
  readonly builtOf: ReadonlyMap<PartId, Built>
  readonly joins: readonly Join[]
  readonly levels: Levels
  /** The pipes that lie between parts and what stands at the ends of mains, each under the part that it belongs to. */
  readonly joinedPipes: readonly Built[]
  readonly water: Water
  /** The same water on its way home. */
  readonly returns: Returns
  /** Clear height above the floor at a place, mm. */
  readonly headroomAt: (x: number, y: number) => number
  readonly aisles: readonly Aisle[]
  /** The aisles at each row. */
  readonly aislesAt: ReadonlyMap<PartId, readonly Aisle[]>
}

/** The widest cart that can come alongside each long face of a row, mm; 0 where none of 10 in or more can. */
export interface CartReach {
  readonly leftMm: number
  readonly rightMm: number
  /** Clear width of the widest way on foot from the better of the two sides to any door. */
  readonly outMm: number
  /** Widest cart at the two ends of the row, room to turn round it; 0 where no wheelchair route is asked for. */
  readonly startMm: number
  readonly endMm: number
}

/** How a finding's numbers and things are written for one reader. */
export interface Words extends Writer {
  readonly name: (part: PartId) => string
}

interface RuleBase {
  /** Thing-what-limit, such as `aisle-width-min`. */
  readonly id: string
  readonly title: string
  /** The limit in one line, and where it comes from: publication with table, or `common practice, no source`. */
  readonly limit: string
  readonly source: string
  /** One sentence: how such a finding is usually mended. */
  readonly mending: string
  /** What is wrong and by how much, in one sentence or two. */
  readonly say: (finding: Finding, words: Words) => string
}

/** A rule that looks at one part alone: remembered for as long as the part's built things are the same. */
export interface PartRule extends RuleBase {
  readonly over: 'part'
  readonly check: (built: Built, settings: Settings) => readonly Finding[]
}

/** A rule over the whole bay. */
export interface BayRule extends RuleBase {
  readonly over: 'bay'
  /** Looks at racks and their troughs one by one, though it takes the bay's water to do so. */
  readonly isOfRacks?: true
  readonly check: (bay: Bay) => readonly Finding[]
}

/** A rule over one row's loads: what it carries, how its members are used, how it stands. */
export interface FrameRule extends RuleBase {
  readonly over: 'frame'
  readonly check: (strength: RowStrength, built: Built, settings: Settings) => readonly Finding[]
}

export type Rule = PartRule | BayRule | FrameRule
