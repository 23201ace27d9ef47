import type { Preset } from '../../model/partKind'
import { inches } from '../../units/length'
import type { Obstacle } from './schema'

/** Sizes are common practice, no source, unless a row says otherwise; every one is there to be measured and changed. */
export const obstaclePresets: readonly Preset<Obstacle>[] = [
  {
    id: 'post',
    title: 'Post',
    hint: '4 x 4 in, on a round footing',
    values: {
      what: 'post',
      lengthMm: inches(4),
      widthMm: inches(4),
      topMm: inches(96),
      footingMm: inches(12),
      footingDeepMm: inches(30),
    },
  },
  {
    id: 'heater',
    title: 'Heater',
    hint: 'Hung at 84 in, 36 in clear in front and below: see its plate',
    values: {
      what: 'heater',
      lengthMm: inches(35),
      widthMm: inches(40),
      undersideMm: inches(84),
      topMm: inches(114),
      clearFrontMm: inches(36),
      clearFromMm: inches(48),
      clearToMm: inches(114),
    },
  },
  {
    // Working space 30 in wide, 36 in deep, 78 in high: National Electrical Code 110.26, from memory; an electrician confirms.
    id: 'panel',
    title: 'Electrical panel',
    hint: 'On a wall, 30 x 36 x 78 in kept clear in front',
    values: {
      what: 'panel',
      lengthMm: inches(6),
      widthMm: inches(30),
      undersideMm: inches(36),
      topMm: inches(78),
      clearFrontMm: inches(36),
      clearToMm: inches(78),
    },
  },
  {
    id: 'tank',
    title: 'Tank',
    hint: 'Round, 30 in across',
    values: { what: 'tank', shape: 'round', lengthMm: inches(30), topMm: inches(36) },
  },
  {
    id: 'tap',
    title: 'Tap',
    hint: 'Room in front for a bucket',
    values: {
      what: 'tap',
      lengthMm: inches(6),
      widthMm: inches(6),
      undersideMm: inches(24),
      topMm: inches(36),
      clearFrontMm: inches(18),
    },
  },
  {
    id: 'floor-drain',
    title: 'Floor drain',
    hint: 'Kept clear all round, to be reached and cleaned',
    values: {
      what: 'floor-drain',
      lengthMm: inches(8),
      widthMm: inches(8),
      topMm: 0,
      clearFrontMm: inches(6),
      clearBackMm: inches(6),
      clearLeftMm: inches(6),
      clearRightMm: inches(6),
    },
  },
  { id: 'other', title: 'Something else', hint: 'A box of any size and height', values: {} },
]
