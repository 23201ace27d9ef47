import type { Bay } from '../checks/context'
import type { Layout } from '../layout/schema'
import type { CountLine } from '../model/countLine'
import type { CutList } from '../model/cutList'
import type { Mark } from '../model/drawing'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'

/**
 * What the program knows of a layout; every screen, sheet and file reads this and nothing else. What the rules find is asked
 * for apart, by `findingsOf(bay)`: that is a tenth of the program, and the first bay is drawn before it has come.
 */
export interface Evaluation {
  readonly layout: Layout
  readonly bay: Bay
  readonly cuts: readonly CutList[]
  readonly counts: readonly CountLine[]
  readonly towers: number
  readonly sites: number
  readonly marksOf: ReadonlyMap<PartId, readonly Mark[]>
}

/** An evaluation with what the rules find in its bay. */
export interface Judged extends Evaluation {
  /** What must be mended comes first. */
  readonly findings: readonly Finding[]
}
