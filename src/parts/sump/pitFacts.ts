import { INTAKE_OVER_BOTTOM_MM, OVERFLOW_BORES, type PitFacts } from '../../model/pitFacts'
import type { Basin } from '../../solvers/gravity/basin'
import type { Sump } from './schema'

const basinOf = (part: Sump): Basin => {
  const { lengthMm, widthMm } = part
  switch (part.shape) {
    case 'box':
      return { shape: 'box', lengthMm, widthMm }
    case 'round':
      return { shape: 'round', diameterMm: widthMm }
    case 'sloped':
      return {
        shape: 'sloped',
        bottomLengthMm: part.bottomLengthMm,
        bottomWidthMm: part.bottomWidthMm,
        topLengthMm: lengthMm,
        topWidthMm: widthMm,
        depthMm: Math.max(part.rimMm - part.bottomMm, 1),
      }
  }
}

/** The pit as all else reads it. */
export const pitFactsOf = (part: Sump): PitFacts => ({
  rimMm: part.rimMm,
  overflowMm: part.overflowMm,
  drainBackMm: part.drainBackMm,
  runningMm: part.runningMm,
  makeUpMm: part.makeUpMm,
  lowAlarmMm: part.lowAlarmMm,
  pumpOffMm: part.pumpOffMm,
  intakeMm: part.intakeMm ?? part.bottomMm + INTAKE_OVER_BOTTOM_MM,
  hasOwnIntake: part.intakeMm !== null,
  bottomMm: part.bottomMm,
  basin: basinOf(part),
  overflowBoreMm: OVERFLOW_BORES[part.overflowBore],
  makeUpLph: part.makeUpLph,
})
