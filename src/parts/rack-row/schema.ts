import * as z from 'zod/mini'
import { choice, count, fall, heading, length, point, toggle } from '../../model/fields'
import { inches } from '../../units/length'
import { inchesPerFoot } from '../../units/slope'
import { baseFields } from '../base'

const conduits = ['1/2', '3/4', '1', '1-1/4'] as const

/** A rail needs a next bigger conduit to be sleeved or taken up in, so the biggest of the catalogue is not offered. */
const rails = ['1/2', '3/4', '1'] as const

/**
 * One or more racks chained end to end. `at` is the start of the centreline; the row runs from it along `heading`.
 * Gutters fall to the end or to the start.
 */
export const rackRowSchema = z.object({
  ...baseFields,
  kind: z.literal('rack-row'),
  at: point,
  heading: z._default(heading, 90),
  racks: count(3, { label: 'Racks chained', group: 'Row' }, 1, 20),
  rackLengthMm: length(inches(120), { label: 'Rack length', group: 'Row' }, inches(48), inches(120)),
  barsPerRack: count(8, { label: 'Hanger bars a rack', group: 'Row' }, 4, 12),
  lines: count(4, { label: 'Lines', group: 'Row', help: 'Towers on one hanger bar.' }, 1, 5),
  lineSpacingMm: length(inches(18), { label: 'Line spacing', group: 'Row' }, inches(5), inches(30)),
  /**
   * Towers taken out, as (station - 1) * lines + (line - 1), ascending. Stations count from the start of the row, lines
   * from its left looking along its heading.
   */
  takenOut: z._default(z.array(z.int().check(z.gte(0), z.lte(1199))).check(z.maxLength(1200)), []),

  towerMm: length(inches(60), { label: 'Tower, hook ring to tip', group: 'Tower' }, inches(24), inches(96)),
  bodyMm: length(inches(4), { label: 'Tower body width', group: 'Tower' }, inches(1), inches(12)),
  tipMm: length(inches(2), { label: 'Tip width', group: 'Tower' }, inches(0.5), inches(12)),
  hookMm: length(inches(2.5), { label: 'Hook ring to top of bar', group: 'Tower' }, inches(1.5), inches(6)),
  sites: count(9, { label: 'Plant sites a tower', group: 'Tower' }, 1, 60),

  railSpacingMm: length(
    inches(40),
    { label: 'Rail spacing, centres', group: 'Frame' },
    inches(12),
    inches(54),
  ),
  midPairs: count(3, { label: 'Riser pairs between rack ends', group: 'Frame' }, 0, 4),
  base: choice(['long-runners', 'short-runners'], 'long-runners', {
    label: 'Base',
    group: 'Frame',
    choices: {
      'long-runners': 'Runners along the whole row',
      'short-runners': 'Two halved runners a riser pair',
    },
  }),
  footPlateMm: length(inches(2), { label: 'Foot plate thickness', group: 'Frame' }, 0, inches(4)),
  riserMm: z._default(
    z.nullable(
      length(
        inches(66),
        { label: 'Riser length', group: 'Frame', whenNull: 'As long as the levels ask' },
        inches(24),
        inches(120),
      ),
    ),
    null,
  ),
  topMarginMm: length(
    inches(2.5),
    { label: 'Hole centre to riser top, least', group: 'Frame' },
    inches(1),
    inches(12),
  ),
  bearerEndMm: length(inches(15 / 32), { label: 'Bearer past the trough', group: 'Frame' }, 0, inches(6)),

  joint: choice(['J1', 'J3'], 'J1', {
    label: 'Rail joint',
    group: 'Rails',
    choices: { J1: 'J1 sleeve in a shared riser', J3: 'J3 big stick takes small stick' },
  }),
  rail: choice(rails, '3/4', {
    label: 'Rail',
    group: 'Rails',
    help: 'With J3 this is the small stick; the big one is the next size.',
  }),
  bar: choice(conduits, '3/4', { label: 'Hanger bar', group: 'Rails' }),
  railBitMm: length(inches(15 / 16), { label: 'Bit for the rail', group: 'Rails' }, inches(0.5), inches(2)),
  sleeveBitMm: length(
    inches(1 + 3 / 16),
    { label: 'Bit for the sleeve or big stick', group: 'Rails' },
    inches(0.5),
    inches(2),
  ),
  oneBit: toggle(false, {
    label: 'Drill all holes with the big bit',
    group: 'Rails',
    help: 'Rails then rise at each sleeve.',
  }),
  insertionMm: length(
    inches(4),
    { label: 'Rail in sleeve, each side', group: 'Rails' },
    inches(3),
    inches(8),
  ),
  railGapMm: length(
    inches(0.25),
    { label: 'Gap between rail ends', group: 'Rails' },
    inches(0.125),
    inches(0.5),
  ),
  railEndMm: length(
    inches(2.25),
    { label: 'Rail past the end riser', group: 'Rails' },
    inches(1.5),
    inches(12),
  ),
  overlapMm: length(
    inches(6),
    {
      label: 'J3 overlap',
      group: 'Rails',
      help: 'Never less than what puts the double wall over the shared riser.',
    },
    inches(2),
    inches(24),
  ),
  pastRiserMm: length(
    inches(3),
    { label: 'J3 big stick past the shared riser', group: 'Rails' },
    inches(1),
    inches(12),
  ),

  gutter: choice(['gutter-5in', 'gutter-4in'], 'gutter-5in', {
    label: 'Gutter',
    group: 'Trough',
    choices: { 'gutter-5in': '5 in roof gutter', 'gutter-4in': '4 in gutter' },
  }),
  gutterFall: fall(
    inchesPerFoot(1 / 16),
    { label: 'Gutter fall', group: 'Trough' },
    inchesPerFoot(1 / 32),
    inchesPerFoot(1 / 2),
  ),
  fallsTo: choice(['start', 'end'], 'end', {
    label: 'Gutters fall to',
    group: 'Trough',
    choices: { start: 'Start of row', end: 'End of row' },
  }),
  leastShimMm: length(inches(0.25), { label: 'Least gutter shim', group: 'Trough' }, 0, inches(6)),
  tipBelowLipMm: length(inches(2.25), { label: 'Tip below lip, high end', group: 'Trough' }, 0, inches(6)),
  bearerTopMm: z._default(
    z.nullable(
      length(
        inches(7),
        { label: 'Bearer top above foot', group: 'Trough', whenNull: 'On the base runners' },
        0,
        inches(60),
      ),
    ),
    null,
  ),
  outletBore: choice(['1/2', '3/4', '1', '2'], '2', { label: 'Outlet bore', group: 'Trough' }),

  laterals: count(2, { label: 'Laterals', group: 'Feed' }, 1, 5),
  lateral: choice(['pe-1/2', 'pe-3/4', 'pe-1'], 'pe-3/4', {
    label: 'Lateral pipe',
    group: 'Feed',
    choices: { 'pe-1/2': '1/2 in poly pipe', 'pe-3/4': '3/4 in poly pipe', 'pe-1': '1 in poly pipe' },
  }),
  microtubeMm: length(inches(36), { label: 'Microtube length', group: 'Feed' }, inches(6), inches(120)),
  inlet: choice(['start', 'end'], 'start', {
    label: 'Water enters at',
    group: 'Feed',
    choices: { start: 'Start of row', end: 'End of row' },
  }),
})

export type RackRow = z.infer<typeof rackRowSchema>
