import type { Bay } from '../checks/context'
import type { Layout } from '../layout/schema'
import type { CountLine } from '../model/countLine'
import type { CutList } from '../model/cutList'
import type { Mark } from '../model/drawing'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'

/** Everything the program knows of a layout; every screen, sheet and file reads this and nothing else. */
export interface Evaluation {
  readonly layout: Layout
  readonly bay: Bay
  readonly cuts: readonly CutList[]
  readonly counts: readonly CountLine[]
  readonly towers: number
  readonly sites: number
  readonly findings: readonly Finding[]
  readonly marksOf: ReadonlyMap<PartId, readonly Mark[]>
}
