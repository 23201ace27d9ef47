import type { Settings } from '../../layout/settings'
import type { RackFacts } from '../../model/rackFacts'
import type { RailLine, RowLoads } from '../../model/strength'
import type { Frame } from './frame'

/** All that the screens of a row's wood, ground and stance are told: its sticks, what it carries, what its rails hand down. */
export interface RowInput {
  readonly frame: Frame
  readonly facts: RackFacts
  readonly loads: RowLoads
  readonly rails: readonly RailLine[]
  readonly settings: Settings
}
