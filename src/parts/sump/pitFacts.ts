import { INTAKE_OVER_BOTTOM_MM, type PitFacts } from '../../model/pitFacts'
import type { Basin } from '../../solvers/gravity/basin'
import { inches } from '../../units/length'
import type { Sump } from './schema'

/** Nominal bores of the overflow pipe, mm. */
const BORES: Readonly<Record<Sump['overflowBore'], number>> = {
  '1': inches(1),
  '1-1/2': inches(1.5),
  '2': inches(2),
  '3': inches(3),
  '4': inches(4),
}

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
  bottomMm: part.bottomMm,
  basin: basinOf(part),
  overflowBoreMm: BORES[part.overflowBore],
  makeUpLph: part.makeUpLph,
})
