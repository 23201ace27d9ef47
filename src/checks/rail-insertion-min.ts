import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'rail-insertion-min'

/** A joint is stiff once a rail goes in by so many of its diameters. Common practice, no source. */
const DIAMETERS = 4

/** And it parts when the row is pushed, if it goes in by less than so many. Common practice, no source. */
const LEAST_DIAMETERS = 2

export const railInsertionMin: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Rail goes into its joint',
  limit: 'Each rail goes in by four times its own diameter',
  source: 'common practice, no source',
  mending: 'Make the insertion longer.',
  check: overRack(RULE, ({ railJoint }) => {
    if (!railJoint) return undefined
    const { insertionMm, insideOdMm, goesIn } = railJoint
    const needMm = DIAMETERS * insideOdMm
    if (insertionMm >= needMm - CLOSE_MM) return undefined
    return {
      state: stateFor('fit', insertionMm, needMm, LEAST_DIAMETERS * insideOdMm),
      measured: lengthOf(insertionMm),
      limit: lengthOf(needMm),
      facts: { goesIn },
      terms: [term(`Outside of the ${goesIn}`, lengthOf(insideOdMm))],
    }
  }),
  say: ({ parts, measured, limit, facts }, { onTape, name }) =>
    `The ${facts['goesIn']}s of ${name(parts[0] ?? '')} go ${onTape(measured.value)} into their joints; they want ${onTape(limit.value)}, four times their diameter.`,
}
