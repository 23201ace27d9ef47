import * as z from 'zod/mini'
import { choice, count, length, toggle } from '../../model/fields'
import { inches } from '../../units/length'

const conduits = ['1/2', '3/4', '1', '1-1/4'] as const

/** A rail needs a next bigger conduit to be sleeved or taken up in, so the biggest of the catalogue is not offered. */
const rails = ['1/2', '3/4', '1'] as const

/** Of no row that the house carries. */
const standing = { field: 'carriedBy', values: ['floor'] }

/** Of these joints alone. */
const joined = (...values: readonly string[]) => ({ field: 'joint', values })

/** What a row stands on and how it is kept upright. */
export const frameFields = {
  railSpacingMm: length(
    inches(40),
    { label: 'Rail spacing, centres', group: 'Frame' },
    inches(12),
    inches(54),
  ),
  midPairs: count(3, { label: 'Riser pairs between rack ends', group: 'Frame' }, 0, 4),
  endInMm: length(
    0,
    {
      label: 'End riser pairs, moved in',
      group: 'Frame',
    },
    0,
    inches(36),
  ),
  bracing: choice(['both', 'along', 'across', 'none'], 'both', {
    label: 'Braces',
    group: 'Frame',
    appliesTo: standing,
    choices: {
      both: 'Along the row and across it',
      along: 'Along the row only',
      across: 'Across the row only',
      none: 'None',
    },
  }),
  hold: choice(['free', 'anchored', 'tied'], 'free', {
    label: 'Kept from tipping',
    group: 'Frame',
    appliesTo: standing,
    choices: {
      free: 'By its weight alone',
      anchored: 'Ground anchors at the braced pairs',
      tied: 'Tied to a wall post or to the next row',
    },
  }),
  carriedBy: choice(['floor', 'house'], 'floor', {
    label: 'Rails are carried by',
    group: 'Frame',
    choices: { floor: 'Risers on the floor', house: 'The house frame' },
  }),
  treated: choice(['none', 'base', 'all'], 'none', {
    label: 'Preserved lumber',
    group: 'Frame',
    choices: { none: 'None', base: 'Runners and base pieces', all: 'All of it' },
  }),
  drips: choice(['tied', 'painted', 'bare'], 'tied', {
    label: 'Drips off galvanised conduit',
    group: 'Rails',
    choices: {
      tied: 'Turned aside by drip ties, ends capped',
      painted: 'Conduit is painted or sleeved',
      bare: 'Fall where they fall',
    },
  }),
  base: choice(['long-runners', 'short-runners'], 'long-runners', {
    label: 'Base',
    group: 'Frame',
    appliesTo: standing,
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
        { label: 'Riser length', group: 'Frame', appliesTo: standing, whenNull: 'As long as the levels ask' },
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
}

/** Conduit: rails and how they meet, hanger bars. */
export const railFields = {
  joint: choice(['J1', 'J2', 'J3', 'J4', 'J5'], 'J1', {
    label: 'Rail joint',
    group: 'Rails',
    choices: {
      J1: 'J1 sleeve in a shared riser',
      J2: 'J2 sleeve in the gap between racks',
      J3: 'J3 big stick takes small stick',
      J4: 'J4 dowel inside the rails, a repair',
      J5: 'J5 lapped side by side',
    },
  }),
  rail: choice(rails, '3/4', {
    label: 'Rail',
    group: 'Rails',
  }),
  bar: choice(conduits, '3/4', { label: 'Hanger bar', group: 'Rails' }),
  barEndMm: length(
    inches(1.5),
    { label: 'Bar past the outer tower', group: 'Rails' },
    inches(1 / 2),
    inches(12),
  ),
  railBitMm: length(inches(15 / 16), { label: 'Bit for the rail', group: 'Rails' }, inches(0.5), inches(2)),
  sleeveBitMm: length(
    inches(1 + 3 / 16),
    { label: 'Bit for the sleeve or big stick', group: 'Rails', appliesTo: joined('J1', 'J3') },
    inches(0.5),
    inches(2),
  ),
  oneBit: toggle(false, {
    label: 'Drill all holes with the big bit',
    group: 'Rails',
    appliesTo: joined('J1', 'J3'),
  }),
  insertionMm: length(
    inches(4),
    { label: 'Rail in sleeve, each side', group: 'Rails', appliesTo: joined('J1', 'J2', 'J4') },
    inches(3),
    inches(8),
  ),
  railGapMm: length(
    inches(0.25),
    { label: 'Gap between rail ends', group: 'Rails', appliesTo: joined('J1', 'J2', 'J4') },
    inches(0.125),
    inches(0.5),
  ),
  railEndMm: length(
    inches(2.25),
    { label: 'Rail past the end riser', group: 'Rails' },
    inches(1.5),
    inches(12),
  ),
  rackGapMm: length(
    inches(11),
    {
      label: 'J2 gap between racks, riser centres',
      group: 'Rails',
      appliesTo: joined('J2'),
    },
    inches(4),
    inches(48),
  ),
  lapMm: length(
    inches(8),
    { label: 'J5 rails lap by', group: 'Rails', appliesTo: joined('J5') },
    inches(4),
    inches(24),
  ),
  overlapMm: length(
    inches(6),
    {
      label: 'J3 overlap',
      group: 'Rails',
      appliesTo: joined('J3'),
    },
    inches(2),
    inches(24),
  ),
  pastRiserMm: length(
    inches(3),
    { label: 'J3 big stick past the shared riser', group: 'Rails', appliesTo: joined('J3') },
    inches(1),
    inches(12),
  ),
}
