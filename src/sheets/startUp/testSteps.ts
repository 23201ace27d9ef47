import type { Units } from '../../units/length'
import type { Piece } from '../piece'

type Said = readonly [key: string, text: string]

const steps = (list: readonly Said[]): Piece => ({
  as: 'steps',
  steps: list.map(([key, text]) => ({ key, text })),
})

export const beforeWater: Piece = steps([
  [
    'electrician',
    'Pump circuit tested and signed for by a licensed electrician; ground-fault trip pressed and reset.',
  ],
  ['lock-out', 'Lock out the circuit before hands go in the pit; key in the pocket of whoever reaches in.'],
  ['cement', 'Any solvent cement has cured 24 h.'],
  [
    'turning',
    'Pump turns the right way, foot strainer on, unions tight, filter clean, no plants and no fish.',
  ],
])

export const firstFill: Piece = steps([
  ['rinse', 'Rinse pit, gutters and drains; take out shavings and grit.'],
  [
    'dechlorinate',
    'Fill with water that is free of chlorine and chloramine, or treat and test it before fish.',
  ],
  ['meter', 'Stop at each mark below and write down the meter: that is what this pit really holds.'],
])

export const purge: Piece = steps([
  [
    'ends',
    'Bypass shut. Zones shut but one, its trim valve wide, its flush ends open until clear and without spit, 60 s at least; then shut them. Next zone.',
  ],
  ['tubes', 'Push barbs and tubes in once the laterals run clear; flick each tube until its air is out.'],
  ['set', 'Set the trim valves by the valve cards, farthest zone first; then clean the filter.'],
])

/** How far water may fall in half an hour, as a sight tube or a tape shows it. Common practice, no source. */
const FALL: Readonly<Record<Units, string>> = { 'feet-inches': '1/4 in', metric: '6 mm' }

export const leaks = (units: Units): Piece =>
  steps([
    [
      'mains',
      `Mains: valves shut at working head for 30 min. Sight tube falls less than ${FALL[units]}. Pass ____ Fail ____`,
    ],
    ['joints', 'Wet walk: dry paper under every joint, end and saddle. No wet spot. Pass ____ Fail ____'],
    ['drains', 'Drains: plug at the pit, fill to the highest hole, 30 min. No fall. Pass ____ Fail ____'],
    [
      'pits',
      'Pit: mark the level, 24 h, with a pan of water beside it. Falls no more than the pan. Pass ____ Fail ____',
    ],
  ])

export const stopTest: Piece = steps([
  [
    'stop',
    'All zones running and steady for 10 min. Note the level, stop the pump, wait until nothing drips.',
  ],
  [
    'rise',
    'The water comes up to the drain-back mark at most, and nothing goes out of the overflow. Pass ____ Fail ____',
  ],
  [
    'alarm',
    'Lift and drop the floats by hand: alarm sounds, pump stops at the pump-off mark. Pass ____ Fail ____',
  ],
])
