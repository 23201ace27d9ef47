import { inches } from '../units/length'
import type { BayRule } from './context'
import { CLOSE_MM, found, inFeet, lengthOf, stateFor, term } from './found'

const RULE = 'pit-inlet-level'

/** A drain's inlet stands this far over the overflow, so that a full pit never stands in the drain. Common practice, no source. */
const OVER_OVERFLOW_MM = inches(1)

/** The drain must come into the pit above the overflow. */
export const pitInletLevel: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drain’s inlet over the overflow',
  limit: 'Inlet invert at least 1 in over the overflow invert',
  source: 'Common practice, no source: a drain that stands full drops its solids and drowns roots',
  mending: 'Set the overflow and the levels under it lower, or start the drain higher.',
  check: ({ joins, levels, builtOf }) =>
    joins.flatMap((join) => {
      if (join.kind !== 'drain-to-pit' || join.to === undefined) return []
      const run = levels.drains.get(join.from)
      const inlet = builtOf.get(join.to)?.mouths.find(({ role }) => role === 'pit-inlet')
      if (!run || !inlet) return []
      const overMm = run.low.invertMm - inlet.at.z
      if (overMm >= OVER_OVERFLOW_MM - CLOSE_MM) return []
      return [
        found({
          rule: RULE,
          subject: 'drain',
          state: stateFor('drain', overMm, OVER_OVERFLOW_MM, 0),
          parts: [join.from, join.to],
          at: join.at,
          measured: lengthOf(overMm),
          limit: lengthOf(OVER_OVERFLOW_MM),
          terms: [
            term('Inlet invert', inFeet(run.low.invertMm)),
            term('Overflow invert', inFeet(inlet.at.z)),
          ],
          mend: {
            kind: 'set',
            part: join.to,
            field: 'overflowMm',
            value: run.low.invertMm - OVER_OVERFLOW_MM,
          },
        }),
      ]
    }),
  say: ({ parts, measured, limit }, { onTape, name }) => {
    const [drain = '', pit = ''] = parts
    const where = measured.value >= 0 ? `${onTape(measured.value)} over` : `${onTape(-measured.value)} under`
    return `${name(drain)} comes into ${name(pit)} ${where} the overflow; it wants ${onTape(limit.value)} over it.`
  },
}
