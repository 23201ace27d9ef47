import { memberName } from '../model/memberNames'
import { CLIMBER_N, footholdOf, worstClimbed } from './climb'
import { stockWords } from './conduitWords'
import type { FrameRule } from './context'
import { forceOf, found, inFeet, lengthOf, stressOf, term } from './found'
import { placeOfSpot } from './rowPlace'

const RULE = 'climb-guard'

/**
 * Nearly every rail folds under a person, which the sheets say of every row. A finding is what invites one up: a level
 * member at the height of a step, with the rail in reach over it. So a usual row, whose lowest level members lie under
 * 12 in and whose ties lie at the rails, has none.
 */
export const climbGuard: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Steps for a climber',
  limit: 'No level member 12 to 40 in up and within 45 in of a rail that folds under 200 lb',
  source:
    'Common practice, no source: 29 CFR 1910.23(b)(2) on rungs, International Swimming Pool and Spa Code 305.2.5 on barriers, from memory; 200 lb is an assumption',
  mending: 'Set the step lower, close the ends of the row, and keep children and visitors out.',
  check: (strength, built, { conduitYieldMpa }) => {
    const { rack, part } = built
    const climbed = worstClimbed(strength)
    const step = strength.rails[0] && footholdOf(built, strength.rails[0].z)
    if (!rack || !climbed || !step || climbed.stressMpa <= conduitYieldMpa) return []
    return [
      found({
        rule: RULE,
        subject: 'strength',
        state: 'Proof-load',
        parts: [part],
        at: placeOfSpot(rack, climbed),
        measured: stressOf(climbed.stressMpa),
        limit: stressOf(conduitYieldMpa),
        facts: { stock: climbed.stock, step: memberName(step.mark), stepMm: step.topMm },
        terms: [
          term('A person at mid span', forceOf(CLIMBER_N)),
          term('Span', inFeet(climbed.spanMm)),
          term('Step over the foot', lengthOf(step.topMm)),
        ],
      }),
    ]
  },
  say: ({ parts, measured, limit, facts }, { name, onTape, stress }) =>
    `The ${facts['step']} of ${name(parts[0] ?? '')} is a step ${onTape(Number(facts['stepMm']))} up: a person who climbs or hangs from the rail, ${stockWords(facts['stock'])}, takes it to ${stress(measured.value)}; over ${stress(limit.value)} it folds.`,
}
