import type { Preset } from '../../model/partKind'
import { inches } from '../../units/length'
import type { Sump } from './schema'

/** Levels as they stand with the floor at the benchmark's zero. */
interface Levels {
  readonly rim: number
  readonly overflow: number
  readonly running: number
  readonly lowAlarm: number
  readonly pumpOff: number
  readonly intake: number
  readonly bottom: number
}

/** All in inches; what drains back 1 in under the overflow, make-up 1 in under running. */
const levelsOf = (levels: Levels) => ({
  rimMm: inches(levels.rim),
  overflowMm: inches(levels.overflow),
  drainBackMm: inches(levels.overflow - 1),
  runningMm: inches(levels.running),
  makeUpMm: inches(levels.running - 1),
  lowAlarmMm: inches(levels.lowAlarm),
  pumpOffMm: inches(levels.pumpOff),
  intakeMm: inches(levels.intake),
  bottomMm: inches(levels.bottom),
})

/** What feeds a dozen or two of towers. */
const SMALL_PUMP = { pump: 'small', discharge: 'pe-1', filter: 'none', overflowBore: '1-1/2' } as const

/** A stacking tote, 43 x 21 in at its rim, 17 deep: some 55 gal to the rim. */
const TOTE = {
  shape: 'sloped',
  lengthMm: inches(43),
  widthMm: inches(21),
  bottomLengthMm: inches(38),
  bottomWidthMm: inches(17),
  lining: 'none',
  ...SMALL_PUMP,
} as const

/** Sizes are common practice, no source; every one is there to be measured and changed. */
export const sumpPresets: readonly Preset<Sump>[] = [
  { id: 'sump-long', title: 'Pit', hint: 'Sump in the ground, 36 x 114 in', values: {} },
  {
    id: 'sump-small',
    title: 'Small pit',
    hint: 'Sump for a rack or two, 24 x 36 in',
    values: { lengthMm: inches(36), widthMm: inches(24) },
  },
  {
    id: 'sump-round',
    title: 'Round pit',
    hint: 'A ring or culvert pipe on end, 48 in across',
    values: { shape: 'round', lengthMm: inches(48), widthMm: inches(48) },
  },
  {
    id: 'sump-battered',
    title: 'Pit with leaning sides',
    hint: 'Dug with a slope and lined, 48 x 114 in at the top, 24 x 90 at the bottom',
    values: {
      shape: 'sloped',
      widthMm: inches(48),
      bottomLengthMm: inches(90),
      bottomWidthMm: inches(24),
    },
  },
  {
    id: 'tote-on-floor',
    title: 'Tote on the floor',
    hint: 'Nothing is dug: some 55 gal, for troughs that stand higher',
    values: {
      ...TOTE,
      ...levelsOf({
        rim: 17.5,
        overflow: 13,
        running: 9,
        lowAlarm: 7.5,
        pumpOff: 7,
        intake: 1.5,
        bottom: 0.5,
      }),
    },
  },
  {
    id: 'tote-in-floor',
    title: 'Tote cut into the floor',
    hint: 'The same let in, its rim 2 in over the floor',
    values: {
      ...TOTE,
      ...levelsOf({
        rim: 2,
        overflow: -4,
        running: -7,
        lowAlarm: -8.5,
        pumpOff: -9,
        intake: -14,
        bottom: -15,
      }),
    },
  },
]
