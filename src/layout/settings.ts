import * as z from 'zod/mini'
import {
  choice,
  count,
  fall,
  fields,
  flow,
  force,
  length,
  mass,
  minutes,
  number,
  pressure,
  share,
  stress,
  temperature,
  text,
  tickMm,
  toggle,
  volume,
  warming,
} from '../model/fields'
import { gph } from '../units/flow'
import { ksi, poundsForce, psf } from '../units/force'
import { pounds } from '../units/mass'
import { fahrenheitWarmer } from '../units/temperature'
import { gallons } from '../units/volume'
import { inches, onTick } from '../units/length'
import { bucketTest } from './bucketTest'
import { inchesPerFoot } from '../units/slope'

/** A finding that the builder lives with; the reason prints on the sheet. */
const accepted = z.object({
  key: z.string().check(z.minLength(1), z.maxLength(300)),
  reason: z.string().check(z.minLength(1), z.maxLength(300)),
  by: z.string().check(z.maxLength(60)),
})

const WATER_HELP = 'Cold water is stickier: the same head drives less of it through a tube.'

const OUTLET_HELP = 'How far above or below its place the end of a tube may hang, either way.'

const SCATTER_HELP =
  'How much like tubes differ at one head: standard deviation of their flows over the mean. 3 % is an assumption; a cup and a watch at some twenty tubes tell yours.'

const WET_TOWER_HELP =
  'Weigh one: 12 to 30 lb (5 to 14 kg) is usual, and 25 lb (11 kg) an assumption. A row whose towers were weighed has its own number.'

const PUSH_HELP =
  '50 lb (222 N) at the height of the rails is an assumption. A rack that a person can tip is tied or anchored.'

const YIELD_HELP =
  'No published standard gives conduit a least strength, and it is not listed for structural use. 30 ksi (207 MPa) is an assumption; 0.6 of it is what a rail is screened at.'

const SAG_HELP =
  '180 is an assumption, after farm buildings in IBC Table 1604.3; over two thirds of the number a rail is Too long.'

const SOIL_HELP =
  '1500 psf (72 kPa) is what model codes presume of firm clay and silt (IBC Table 1806.2, from memory). Loose, filled or muddy ground bears a fraction of it.'

const SHIN_HELP =
  'Leaves are pushed aside, and shins stop at towers, gutters, bearers or foot plates. 3 in (76 mm) is an assumption: more where toes find no room under them.'

const SWING_HELP =
  'From a frosty night to a hot noon under plastic; 60 °F (33 °C) is an assumption. Plastic grows and shrinks with it.'

const ROUGHNESS_HELP =
  'Smooth plastic has 0.009 in the laboratory, 0.011 in common design, 0.013 where an authority has the word.'

const HOLD_UP_HELP =
  'Measure it: stop the pump and catch what one planted tower drips. 0.15 gal is an assumption.'

const DAILY_USE_HELP =
  'Evaporation, plants and leaks; 1 to 3 in the hundred is usual. Common practice, no source.'

export const settingsSchema = z.object({
  units: choice(['feet-inches', 'metric'], 'feet-inches', {
    label: 'Units',
    group: 'Bay',
    choices: { 'feet-inches': 'Feet and inches', metric: 'Metric' },
  }),
  leafReachMm: length(inches(6), { label: 'Leaf reach, full grown', group: 'Crop' }, 0, inches(24)),
  growth: z._default(z.number().check(z.gte(0), z.lte(1)), 1),
  /** Rails of one row are always level with each other; those of the whole bay only where the floor allows it. */
  datum: choice(['bay', 'row', 'grade'], 'bay', {
    label: 'Rails are level',
    group: 'Racks',
    choices: { bay: 'Across the whole bay', row: 'Row by row', grade: 'On grade, with the floor' },
    help: 'Feet are shimmed up to the highest foot of the bay, or of their own row; on grade they stand on the floor and the rails fall with it.',
  }),
  /** Every level in the file is from its zero; this is only how levels are written. */
  levelsFrom: choice(['zero', 'benchmark'], 'zero', {
    label: 'Levels are counted from',
    group: 'Levels',
    choices: { zero: 'The bay’s zero', benchmark: 'The benchmark, at its value' },
    help: 'One mark for the whole bay: a second benchmark is the commonest step between racks and drains.',
  }),
  levelsIn: choice(['tape', 'inches', 'feet', 'mm'], 'tape', {
    label: 'Levels are read in',
    group: 'Levels',
    choices: {
      tape: 'The same units as lengths',
      inches: 'Inches and hundredths',
      feet: 'Feet and hundredths, as on a builder’s rod',
      mm: 'Millimetres',
    },
  }),
  cartMm: length(inches(24), { label: 'Cart width', group: 'Access' }, inches(10), inches(96)),
  workAisleMm: length(inches(36), { label: 'Work aisle', group: 'Access' }, inches(18), inches(120)),
  squeezeMm: length(
    inches(18),
    { label: 'Least a person can pass', group: 'Access' },
    inches(10),
    inches(48),
  ),
  wheelchair: toggle(false, { label: 'Wheelchair route wanted', group: 'Access' }),
  reachMm: length(inches(30), { label: 'Arm reach from an aisle', group: 'Access' }, inches(12), inches(48)),
  scoutMm: length(inches(6), { label: 'Leaf to wall, least', group: 'Access' }, 0, inches(48)),
  outletReachMm: length(
    inches(6),
    { label: 'Outlet to drain line, furthest', group: 'Drain' },
    inches(1),
    inches(36),
  ),
  mainReachMm: length(
    inches(120),
    { label: 'Row to main, furthest', group: 'Water' },
    inches(12),
    inches(600),
  ),
  targetLph: flow(gph(4), { label: 'Flow wanted at each tower', group: 'Water' }, gph(0.5), gph(30)),
  waterC: temperature(20, { label: 'Water temperature', group: 'Water', help: WATER_HELP }, 2, 40),
  outletErrorMm: length(
    inches(1 / 4),
    { label: 'Tube ends level within', group: 'Water', help: OUTLET_HELP },
    0,
    inches(2),
  ),
  tubeScatter: share(
    0.03,
    { label: 'Scatter of the tubes themselves', group: 'Water', help: SCATTER_HELP },
    0,
    0.3,
  ),
  bucket: z._default(z.nullable(bucketTest), null),
  manningN: number(
    0.01,
    { label: 'Roughness of drains and gutters, Manning n', group: 'Drain', help: ROUGHNESS_HELP },
    0.007,
    0.02,
  ),
  towerHoldUpL: volume(
    gallons(0.15),
    { label: 'A tower lets go when the pump stops', group: 'Pit', help: HOLD_UP_HELP },
    0,
    gallons(10),
  ),
  towerDripMin: minutes(
    20,
    {
      label: 'Until a tower has dripped out',
      group: 'Pit',
      help: 'Nearly all of it: the last twentieth is not waited for.',
    },
    1,
    600,
  ),
  dailyUse: share(
    0.02,
    { label: 'Water used a day, share of all there is', group: 'Pit', help: DAILY_USE_HELP },
    0,
    0.2,
  ),
  otherWaterL: volume(
    0,
    {
      label: 'Water in tanks besides the pits',
      group: 'Pit',
      help: 'Fish tanks and filters that the same water runs through.',
    },
    0,
    gallons(1_000_000),
  ),
  alarmMin: minutes(
    10,
    { label: 'Until someone comes when an alarm sounds', group: 'Pit', help: 'Measure it at night.' },
    1,
    1440,
  ),
  wetTowerKg: mass(
    pounds(25),
    { label: 'A tower, planted and flooded', group: 'Strength', help: WET_TOWER_HELP },
    pounds(2),
    pounds(200),
  ),
  pushN: force(
    poundsForce(50),
    { label: 'A person leans or pulls with', group: 'Strength', help: PUSH_HELP },
    poundsForce(10),
    poundsForce(300),
  ),
  proofTimes: number(
    1.5,
    { label: 'Proof load, times the towers', group: 'Strength', help: 'Common practice, no source.' },
    1,
    3,
  ),
  conduitYieldMpa: stress(
    ksi(30),
    { label: 'Yield of conduit, assumed', group: 'Strength', help: YIELD_HELP },
    ksi(10),
    ksi(60),
  ),
  sagOver: count(
    180,
    { label: 'Sag of a span, at most its length over', group: 'Strength', help: SAG_HELP },
    60,
    480,
  ),
  species: choice(['spf', 'hem-fir', 'southern-pine', 'douglas-fir'], 'spf', {
    label: 'Lumber is',
    group: 'Strength',
    choices: {
      spf: 'Spruce-pine-fir No. 2',
      'hem-fir': 'Hem-fir No. 2',
      'southern-pine': 'Southern pine No. 2',
      'douglas-fir': 'Douglas fir-larch No. 2',
    },
  }),
  woodIs: choice(['wet', 'dry'], 'wet', {
    label: 'Lumber stands',
    group: 'Strength',
    choices: { wet: 'Wet: over 19 % moisture for long', dry: 'Dry' },
  }),
  soilKpa: pressure(
    psf(1500),
    { label: 'Ground bears', group: 'Strength', help: SOIL_HELP },
    psf(100),
    psf(12_000),
  ),
  houseKpa: z._default(
    z.nullable(
      pressure(
        psf(5),
        {
          label: 'House frame bears from hanging things',
          group: 'Strength',
          whenNull: 'No figure from its maker',
          help: 'The collateral load in writing from whoever made the house. Without it nothing is hung from the house.',
        },
        psf(0.5),
        psf(50),
      ),
    ),
    null,
  ),
  fishWater: toggle(true, { label: 'The water has fish in it', group: 'Strength' }),
  grip: choice(['good', 'fair', 'poor'], 'poor', {
    label: 'Grip on a wet tower',
    group: 'Hands',
    choices: { good: 'Good: handles', fair: 'Fair', poor: 'Poor: smooth and wet' },
  }),
  liftsAMin: number(
    1,
    { label: 'Towers lifted a minute', group: 'Hands', help: 'For an hour or less at a time.' },
    0.2,
    5,
  ),
  shinMm: length(
    inches(3),
    { label: 'Ankles stand off what sticks out most', group: 'Hands', help: SHIN_HELP },
    0,
    inches(36),
  ),
  swingC: warming(fahrenheitWarmer(60), { label: 'Air swings by', group: 'Hands', help: SWING_HELP }, 1, 80),
  leastDrop: fall(inchesPerFoot(1 / 8), { label: 'Least drain fall for new lines', group: 'Drain' }),
  kerfMm: length(inches(1 / 8), { label: 'Saw kerf', group: 'Saw' }, 0, inches(0.5)),
  trimMm: length(0, { label: 'End trim', group: 'Saw' }, 0, inches(2)),
  lumberMm: z._default(
    z
      .array(
        tickMm(inches(24), inches(480)).register(fields, {
          label: 'A length of lumber',
          group: 'Saw',
          unit: 'length',
        }),
      )
      .check(z.minLength(1), z.maxLength(12)),
    [onTick(inches(120)), onTick(inches(144))],
  ),
  issue: count(1, { label: 'Issue number', group: 'Paper' }, 1, 9999),
  place: text('', { label: 'Farm or place', group: 'Paper' }, 120),
  accepted: z._default(z.array(accepted).check(z.maxLength(1000)), []),
})

export type Settings = z.infer<typeof settingsSchema>
export type Accepted = Settings['accepted'][number]
