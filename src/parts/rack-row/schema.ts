import * as z from 'zod/mini'
import { polyOf } from '../../catalogue/pipe'
import {
  choice,
  count,
  fall,
  fields,
  heading,
  length,
  mass,
  point,
  tickMm,
  toggle,
  turns,
} from '../../model/fields'
import { inches } from '../../units/length'
import { pounds } from '../../units/mass'
import { inchesPerFoot } from '../../units/slope'
import { baseFields } from '../base'
import { outletBore } from '../outletBore'
import { frameFields, railFields } from './frameFields'

/** What a lateral can be made of, each family from its smallest up. */
export const LATERALS = ['pe-1/2', 'pe-3/4', 'pe-1', 'drip-1/2', 'drip-3/4', 'drip-1'] as const
const HEADERS = [
  'pe-1/2',
  'pe-3/4',
  'pe-1',
  'pe-1-1/4',
  'pe-1-1/2',
  'pe-2',
  'drip-1/2',
  'drip-3/4',
  'drip-1',
] as const

/** What the catalogue calls each pipe. */
const wordsOf = (pipes: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(pipes.map((key) => [key, polyOf(key).title]))

/** A lateral that is further out of level is laid anew, not reckoned with. */
const MOST_RISE_MM = inches(24)

/** No trim valve takes more turns from shut to open. */
const MOST_TURNS = 20

/** Less than this much of a turn and the valve is next to shut: what it lets through is anybody’s guess. */
export const LEAST_TURNS = 1 / 4

/** More bundles than colours of tape are mixed up on the floor. */
export const MOST_TUBE_GROUPS = 8

/** So many stations in a row take tubes of one length. */
const tubeGroup = z.object({
  stations: z
    .int()
    .check(z.gte(1), z.lte(240))
    .register(fields, { label: 'Stations', group: 'Tubes', unit: 'count' }),
  lengthMm: tickMm(inches(6), inches(240)).register(fields, {
    label: 'Tube length',
    group: 'Tubes',
    unit: 'length',
  }),
})

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
  lines: count(4, { label: 'Lines', group: 'Row' }, 1, 5),
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
  weighedKg: z._default(
    z.nullable(
      mass(
        pounds(25),
        {
          label: 'Tower, weighed planted and flooded',
          group: 'Tower',
          whenNull: 'As the bay assumes',
        },
        pounds(2),
        pounds(200),
      ),
    ),
    null,
  ),
  sites: count(9, { label: 'Plant sites a tower', group: 'Tower' }, 1, 60),

  ...frameFields,
  ...railFields,

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
  outletBore,

  feed: choice(['straight', 'centre-split', 'double-split', 'ring'], 'straight', {
    label: 'Feed',
    group: 'Feed',
    choices: {
      straight: 'Straight, in at one end',
      'centre-split': 'Split once, in at the middle',
      'double-split': 'Split twice, in at the quarter points',
      ring: 'Ring, both ends of the laterals joined',
    },
  }),
  laterals: count(
    2,
    {
      label: 'Laterals',
      group: 'Feed',
    },
    1,
    5,
  ),
  lateral: choice(LATERALS, 'pe-3/4', {
    label: 'Lateral pipe',
    group: 'Feed',
    choices: wordsOf(LATERALS),
  }),
  header: choice(['next-up', ...HEADERS], 'next-up', {
    label: 'Header and riser pipe',
    group: 'Feed',
    choices: { 'next-up': 'One size over the lateral', ...wordsOf(HEADERS) },
  }),
  lateralAt: choice(['above-bars', 'under-rail'], 'above-bars', {
    label: 'Laterals lie',
    group: 'Feed',
    choices: { 'above-bars': 'Above the hanger bars', 'under-rail': 'Along the underside of the rails' },
  }),
  lateralSagMm: length(
    inches(1 / 8),
    { label: 'Lateral sags between its ties', group: 'Feed' },
    0,
    inches(12),
  ),
  lateralRiseMm: z._default(tickMm(-MOST_RISE_MM, MOST_RISE_MM), 0).register(fields, {
    label: 'Far end of the laterals over their inlet',
    group: 'Feed',
    unit: 'length',
  }),
  microtube: choice(['tube-1/8', 'tube-1/4'], 'tube-1/8', {
    label: 'Microtube',
    group: 'Tubes',
    choices: { 'tube-1/8': '1/8 in microtube', 'tube-1/4': '1/4 in microtube' },
  }),
  microtubeMm: length(inches(36), { label: 'Microtube length', group: 'Tubes' }, inches(6), inches(120)),
  /** Half a turn of the tower takes up as much. Common practice, no source. */
  tubeSlackMm: length(
    inches(6),
    {
      label: 'Slack of a microtube, least',
      group: 'Tubes',
    },
    0,
    inches(24),
  ),
  /**
   * Colour groups of tubes, from where the water enters along each branch; the last takes all stations that are left.
   * None: all tubes are cut alike.
   */
  gradedTubes: z
    ._default(z.array(tubeGroup).check(z.maxLength(MOST_TUBE_GROUPS)), [])
    .register(fields, { label: 'Tubes cut by station', group: 'Tubes', unit: 'list' }),
  flushEnd: choice(['cap', 'valve', 'none'], 'cap', {
    label: 'Ends of the laterals',
    group: 'Feed',
    choices: { cap: 'Flush cap', valve: 'Flush valve', none: 'Plugged' },
  }),
  sightTube: toggle(true, {
    label: 'Sight tube at each end',
    group: 'Feed',
  }),
  inlet: choice(['start', 'end'], 'start', {
    label: 'Water enters at',
    group: 'Feed',
    choices: { start: 'Start of row', end: 'End of row' },
  }),
  riserAt: choice(['middle', 'inlet-end'], 'middle', {
    label: 'Riser pipe of a split feed',
    group: 'Feed',
    choices: { middle: 'In the middle of the row', 'inlet-end': 'Where a straight feed has it' },
  }),
  riserSide: choice(['left', 'right'], 'left', {
    label: 'Riser pipe on the',
    group: 'Feed',
    choices: { left: 'Left side of the row', right: 'Right side of the row' },
  }),
  valveSet: choice(['own', 'shared'], 'own', {
    label: 'Valves',
    group: 'Valves',
    choices: { own: 'A valve set of its own', shared: 'Behind another row’s valve' },
  }),
  /** Id of the main, or of the row with the valve, that the water is taken from; null for the nearest in reach. */
  waterFrom: z._default(z.nullable(baseFields.id), null).register(fields, {
    label: 'Water comes from',
    group: 'Valves',
    unit: 'text',
    whenNull: 'Nearest in reach',
  }),
  valve: choice(['open', 'shut'], 'open', {
    label: 'Ball valve',
    group: 'Valves',
    choices: { open: 'Open', shut: 'Shut' },
  }),
  /** How far the trim valve stands open, turns; null for wide open, as does more than it has. */
  trimTurns: z._default(
    z.nullable(
      turns(
        3,
        {
          label: 'Trim valve, turns open',
          group: 'Valves',
          whenNull: 'Wide open',
        },
        LEAST_TURNS,
        MOST_TURNS,
      ),
    ),
    null,
  ),
  trimTurnsAll: count(5, { label: 'Trim valve, turns from shut to open', group: 'Valves' }, 1, MOST_TURNS),
})

export type RackRow = z.infer<typeof rackRowSchema>
