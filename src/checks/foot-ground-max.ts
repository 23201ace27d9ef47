import type { FrameRule } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, worstOf } from './strengthRule'

const RULE = 'foot-ground-max'

/** Feet that sink take the gutters' fall with them. */
export const footGroundMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Feet on the ground',
  limit: 'No foot presses harder than the ground is taken to bear, as set for the bay',
  source: 'International Building Code Table 1806.2, presumed bearing of soil, from memory',
  mending: 'Set bigger foot plates or blocks, stand the pairs closer, or make the ground firm.',
  check: overScreens(RULE, ({ strength }) => worstOf(strength, ['ground-bearing'])),
  say: (finding, words) => {
    const { parts, measured, limit } = finding
    return `A foot of ${words.name(parts[0] ?? '')} presses ${quantityWords(measured, words)} on the ground ${loadWords(finding)}; it is taken to bear ${quantityWords(limit, words)}.`
  },
}
