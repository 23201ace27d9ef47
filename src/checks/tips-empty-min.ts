import { rankOf } from '../model/finding'
import { type Stance, STANDS_AT, type Tip } from '../model/strength'
import type { FrameRule } from './context'
import { forceOf } from './found'
import { leastSafe, stanceFinding, tipTerms } from './stanceRule'

const RULE = 'tips-empty-min'

const rank = ({ state }: Tip): number => rankOf({ subject: 'stance', state })

/** The least safe state of load but one-sided, which has a rule of its own: nearly always the empty row. */
const worstTip = ({ tips }: Stance): Tip | undefined =>
  leastSafe(tips.filter((tip) => tip.under !== 'one-side' && rank(tip) > 0))

/** A rack is unsafest before its first tower hangs and right after harvest, when it weighs least. */
export const tipsEmptyMin: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Empty row stands',
  limit:
    '1.5 times the push of a person at the height of the rails, with nothing hung; the push is an assumption',
  source: 'International Building Code 1807.2.3 on overturning of retaining walls, borrowed',
  mending: 'Anchor the row before anything is hung, tie it to the next one or to a post, or widen its base.',
  check: ({ stance }, built, { pushN }) => {
    const tip = worstTip(stance)
    return stanceFinding(
      RULE,
      built,
      stance,
      tip && {
        state: tip.state,
        measured: forceOf(tip.tipsAtN),
        limit: forceOf(STANDS_AT * pushN),
        facts: { under: tip.under, way: tip.way, pushN },
        terms: tipTerms(tip, stance, pushN),
      },
    )
  },
  say: ({ parts, measured, limit, facts, state }, { name, force }) => {
    const when = facts['under'] === 'empty' ? 'Empty, ' : ''
    const tips = `${when}${name(parts[0] ?? '')} tips ${facts['way']} the row when it is pushed at its rails with ${force(measured.value)}`
    const push = force(Number(facts['pushN']))
    return state === 'Tips'
      ? `${tips}; a person leans with ${push}.`
      : `${tips}; a person leans with ${push}, and ${force(limit.value)} is asked.`
  },
}
