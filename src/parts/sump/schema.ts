import * as z from 'zod/mini'
import { pumpCurveRowOf, pumpCurves } from '../../catalogue/pumpCurves'
import {
  choice,
  count,
  fields,
  flow,
  heading,
  length,
  level,
  measured,
  point,
  share,
  tickMm,
  toggle,
} from '../../model/fields'
import { gpm } from '../../units/flow'
import { feet, inches } from '../../units/length'
import { baseFields } from '../base'
import { curveFault } from './curveFault'

const levelOf = (inch: number, label: string) => level(inches(inch), { label, group: 'Levels' })

/** A pit is no narrower than a person can clean and no longer than one liner. Common practice, no source. */
export const PIT_SIDE = { leastMm: inches(12), mostMm: inches(600) }

/** Which shapes of pit a size belongs to. */
const BOXED = { field: 'shape', values: ['box', 'sloped'] }
const LEANING = { field: 'shape', values: ['sloped'] }

/** Far more than any pump that stands in a greenhouse pit. */
const MOST_FLOW_LPH = gpm(2000)
const MOST_HEAD_MM = feet(300)

const FEWEST_CURVE_POINTS = 3
export const MOST_CURVE_POINTS = 12

/** A pump as its label tells of it, flow by flow. Read by its own form, so that it stands in no group of fields. */
const curve = z
  .array(
    z.object({
      flowLph: measured(0, MOST_FLOW_LPH).register(fields, { label: 'Flow', group: 'Pump', unit: 'flow' }),
      headMm: tickMm(0, MOST_HEAD_MM).register(fields, { label: 'Head', group: 'Pump', unit: 'length' }),
    }),
  )
  .check(
    z.minLength(FEWEST_CURVE_POINTS),
    z.maxLength(MOST_CURVE_POINTS),
    z.refine((points) => curveFault(points) === undefined, {
      error: 'Pump curve begins at no flow, and from point to point its flow must rise and its head fall',
    }),
  )

/** What the form starts from: the curve that the pit arrives with. */
const startCurve = curve.parse(pumpCurveRowOf('middle').curve)

const titles = Object.fromEntries(pumpCurves.map(({ key, title }) => [key, title]))

/** An in-ground pit. `at` is its middle; `lengthMm` runs along `heading`. Levels from the bay's zero, top to bottom. */
export const sumpSchema = z.object({
  ...baseFields,
  kind: z.literal('sump'),
  at: point,
  heading: z._default(heading, 90),
  lengthMm: length(
    inches(114),
    { label: 'Length', group: 'Pit', appliesTo: BOXED },
    PIT_SIDE.leastMm,
    PIT_SIDE.mostMm,
  ),
  widthMm: length(
    inches(36),
    { label: 'Width, or diameter', group: 'Pit' },
    PIT_SIDE.leastMm,
    PIT_SIDE.mostMm,
  ),
  shape: choice(['box', 'round', 'sloped'], 'box', {
    label: 'Shape',
    group: 'Pit',
    choices: { box: 'Box, straight sides', round: 'Round', sloped: 'Sides lean out, as of a tote' },
  }),
  bottomLengthMm: length(
    inches(96),
    { label: 'Length at the bottom', group: 'Pit', appliesTo: LEANING },
    inches(6),
    PIT_SIDE.mostMm,
  ),
  bottomWidthMm: length(
    inches(24),
    { label: 'Width at the bottom', group: 'Pit', appliesTo: LEANING },
    inches(6),
    PIT_SIDE.mostMm,
  ),
  overflowBore: choice(['1', '1-1/2', '2', '3', '4'], '2', {
    label: 'Overflow pipe',
    group: 'Pit',
    choices: { '1': '1 in', '1-1/2': '1-1/2 in', '2': '2 in', '3': '3 in', '4': '4 in' },
    help: 'One size over the make-up line at least, screened, with an air gap, to where the law lets it run.',
  }),
  lining: choice(['sheet', 'none'], 'sheet', {
    label: 'Lining',
    group: 'Pit',
    choices: { sheet: 'One sheet over floor and walls', none: 'None, as of a tote' },
  }),
  makeUpLph: flow(gpm(4), { label: 'Make-up valve lets in', group: 'Pit' }, 0, gpm(100)),
  rimMm: levelOf(0, 'Rim'),
  overflowMm: levelOf(-13, 'Overflow invert'),
  drainBackMm: levelOf(-14, 'Drain-back level'),
  runningMm: levelOf(-22.5, 'Running level'),
  makeUpMm: levelOf(-23.5, 'Make-up opens'),
  lowAlarmMm: levelOf(-27, 'Low alarm'),
  pumpOffMm: levelOf(-29, 'Pump off'),
  intakeMm: z._default(
    z.nullable(
      level(inches(-35), {
        label: 'Pump intake',
        group: 'Levels',
        whenNull: '2 in over the bottom, clear of sludge',
      }),
    ),
    null,
  ),
  bottomMm: levelOf(-37, 'Bottom'),

  pumps: count(
    1,
    { label: 'Pumps side by side', group: 'Pump', help: 'All alike, and all running together.' },
    0,
    4,
  ),
  pump: choice(['small', 'middle', 'large', 'extra-large', 'own'], 'middle', {
    label: 'Pump',
    group: 'Pump',
    choices: { ...titles, own: 'Own pump, curve typed below' },
    help: 'The four are invented: read your own from its label.',
  }),
  curve: z._default(curve, startCurve),
  discharge: choice(['pe-1', 'pe-1-1/4', 'pe-1-1/2', 'pe-2'], 'pe-2', {
    label: 'Discharge pipe',
    group: 'Pump',
    choices: {
      'pe-1': '1 in poly pipe',
      'pe-1-1/4': '1-1/4 in poly pipe',
      'pe-1-1/2': '1-1/2 in poly pipe',
      'pe-2': '2 in poly pipe',
    },
  }),
  strainer: toggle(true, { label: 'Strainer at the pump’s foot', group: 'Pump' }),
  checkValve: toggle(true, {
    label: 'Check valve',
    group: 'Pump',
    help: 'Keeps the main full when the pump stops, so that less runs home.',
  }),
  filter: choice(['none', 'one', 'two-in-parallel'], 'one', {
    label: 'Filter',
    group: 'Pump',
    choices: {
      none: 'None',
      one: 'One',
      'two-in-parallel': 'Two in parallel, one to clean while the other runs',
    },
  }),
  filterState: choice(['clean', 'dirty'], 'clean', {
    label: 'Filter is',
    group: 'Pump',
    choices: { clean: 'Clean', dirty: 'Due for cleaning' },
    help: 'Due when the sight tubes on its two sides stand a foot further apart than with a clean one.',
  }),
  bypassShare: share(
    0,
    {
      label: 'Bypass, share of the pump’s flow',
      group: 'Pump',
      help: 'A valve back to the pit, set where the pump gives two thirds of its greatest head; 0 for no bypass.',
    },
    0,
    0.5,
  ),
})

export type Sump = z.infer<typeof sumpSchema>
