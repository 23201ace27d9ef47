import type { Evaluation } from '../evaluate/evaluation'
import type { Body, BodyRole } from '../model/built'
import { digCautions } from '../model/digCautions'
import type { Units } from '../units/length'

/** Stands on every printed sheet. */
export const FOOTER =
  "This plan is a builder's aid. It is not an engineering drawing. Permits, structure, electrical work, plumbing " +
  'cross-connection (air gap on make-up) and grading are for licensed people. Local codes have the last word.'

/** Words at a pit on the plan, for whoever stands at it. */
export const AT_THE_PIT = 'Pit: lid on and locked. Never go in alone.'

const has = ({ bay }: Evaluation, role: BodyRole): boolean =>
  bay.built.some(({ bodies }) => bodies.some((body) => body.role === role))

const isDug = ({ role, fromMm }: Body): boolean => (role === 'trench' || role === 'pit') && fromMm < 0

/** How deep the deepest dig on this floor goes, mm; 0 where nothing is dug. */
const deepestDig = ({ bay }: Evaluation): number =>
  Math.max(0, ...bay.built.flatMap(({ bodies }) => bodies.filter(isDug).map(({ fromMm }) => -fromMm)))

/** Density of water to the digits that a builder needs. */
const WATER_WEIGHS: Readonly<Record<Units, string>> = {
  'feet-inches': '62 lb a cubic foot',
  metric: '1 kg a litre',
}

/** Words of caution for what is on this floor and nothing else. Common practice, no source, unless said. */
export const cautions = (evaluation: Evaluation, units: Units): string[] => {
  const words: string[] = []
  if (has(evaluation, 'pit'))
    words.push(
      'Pit: a lid that bears a person, locked; a kerb; children and visitors kept off. Never go in alone: bad air gathers there.',
      'Electricity near the pit: pump, heater and receptacle circuits by a licensed electrician, with GFCI/RCD, bonding, ' +
        'in-use covers and drip loops, cords above flood level. Lock out before hands go in the pit.',
    )
  words.push(...digCautions(deepestDig(evaluation), units))
  if (evaluation.bay.built.some(({ headBox }) => headBox !== undefined))
    words.push(
      `Head box: full of water at the height of a head, ${WATER_WEIGHS[units]}. Its stand is braced and bears it down to the floor; never hang it from the house or a rack.`,
    )
  if (evaluation.towers > 0)
    words.push(
      'Food: system water is not clean water. Never on leaves; harvest with clean hands and tools; keep fish hands and harvest hands apart.',
    )
  return words
}
