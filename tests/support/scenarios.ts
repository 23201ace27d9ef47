import type { Layout } from '../../src/layout/schema'
import { kestrelBend } from './scenarios/kestrelBend'
import { kestrelBendNear } from './scenarios/kestrelBendNear'
import { lintelLane } from './scenarios/lintelLane'
import { oldDairy } from './scenarios/oldDairy'
import { sallowFlats } from './scenarios/sallowFlats'

/** The five sample bays, all invented, by the name of their file under public/bays. */
export const scenarios: Readonly<Record<string, () => Layout>> = {
  'kestrel-bend-house-2': () => kestrelBend().layout(),
  'lintel-lane-lean-to': () => lintelLane().layout(),
  'old-dairy-corner': () => oldDairy().layout(),
  'sallow-flats-one-acre': () => sallowFlats().layout(),
  'kestrel-bend-near-miss': () => kestrelBendNear().layout(),
}
