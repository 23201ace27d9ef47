import type { LoadState } from '../../../model/strength'

/** What hangs in each state of load, as it stands in a table. */
export const loadWords: Readonly<Record<LoadState, string>> = {
  full: 'all hung',
  harvested: 'worst spans harvested',
  'one-side': 'one side hung',
  empty: 'nothing hung',
  proof: 'proof load',
}

/** The most that a share of a limit is written as: beyond ten times it the digits say nothing more. */
const MOST = 10

/** `84 %`, or `over 10 x`. */
export const shareUsed = (used: number): string =>
  used > MOST ? `over ${MOST} x` : `${Math.round(used * 100)} %`

/** How much of a limit is used: `73 % of its limit`. */
export const usedWords = (used: number): string => {
  if (used === Infinity) return 'refused, whatever it carries'
  return used > MOST ? `over ${MOST} times its limit` : `${shareUsed(used)} of its limit`
}
