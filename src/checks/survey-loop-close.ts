import { inches } from '../units/length'
import type { BayRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, term } from './found'

const RULE = 'survey-loop-close'

/** More than the rod is read to, over a whole round. Common practice, no source. */
const MOST_MM = inches(1 / 8)

/** Half of the 1 in that a drain comes into its pit over the overflow: levels so far out decide whether water backs up. */
const USELESS_MM = inches(1 / 2)

/** A round of levels comes back to the benchmark and reads what it read first, or something moved on the way. */
export const surveyLoopClose: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Levels close on the benchmark',
  limit: 'The benchmark read again within 1/8 in; over 1/2 in the levels are of no use for a drain',
  source: 'Common practice, no source',
  mending: 'Shoot the round again, the benchmark first and last.',
  check: ({ house: { benchmark } }) => {
    const { closingMm, levelMm, at } = benchmark
    if (closingMm === null) return []
    const offMm = Math.abs(closingMm - levelMm)
    if (offMm <= MOST_MM + CLOSE_MM) return []
    return [
      found({
        rule: RULE,
        subject: 'fit',
        state: offMm > USELESS_MM + CLOSE_MM ? 'Clash' : 'Tight',
        parts: [],
        at,
        measured: lengthOf(offMm),
        limit: lengthOf(MOST_MM),
        terms: [
          term('Benchmark at the start', levelOf(levelMm)),
          term('Benchmark at the end', levelOf(closingMm)),
        ],
      }),
    ]
  },
  say: ({ measured, limit }, { onTape }) =>
    `The round of levels comes back to the benchmark ${onTape(measured.value)} off; within ${onTape(limit.value)} is wanted. Shoot it again.`,
}
