import type { Preset } from '../../model/partKind'
import { inches } from '../../units/length'
import type { RackRow } from './schema'

/** Common practice, no source: 66 in risers drilled two conduits from the top, five lines on 2.5 ft of rails. */
const lowRack: Preset<RackRow>['values'] = {
  racks: 2,
  // Racks so long that big sticks and small sticks all stay whole: 114 + 3 + 3, and 114 - 3 + 6 + 3.
  rackLengthMm: inches(114),
  joint: 'J3',
  rail: '3/4',
  railEndMm: inches(3),
  bar: '1/2',
  lines: 5,
  lineSpacingMm: inches(12),
  railSpacingMm: inches(30),
  base: 'short-runners',
  footPlateMm: 0,
  riserMm: inches(66),
  topMarginMm: inches(2 + 5 / 16),
  hookMm: inches(2 + 3 / 8),
  gutter: 'gutter-4in',
  outletBore: '3/4',
}

export const rackRowPresets: readonly Preset<RackRow>[] = [
  { id: 'rack-row', title: 'Rack row', hint: 'Three racks chained, four lines of 5 ft towers', values: {} },
  {
    id: 'single-rack',
    title: 'Single rack',
    hint: 'One 10 ft rack, to chain or to stand alone',
    values: { racks: 1 },
  },
  {
    id: 'low-rack',
    title: 'Low rack',
    hint: '5-1/2 ft risers on halved runners; a full 5 ft tower hangs too low in it',
    values: lowRack,
  },
]
