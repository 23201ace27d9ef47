import { type Stance, STANDS_AT, type Tip } from '../model/strength'
import type { FrameRule } from './context'
import { CLOSE_MM, forceOf, lengthOf, term } from './found'
import { leastSafe, stanceFinding, tipTerms } from './stanceRule'

const RULE = 'tips-one-side-max'

const isOffside = ({ oneSideMm, oneSideLimitMm }: Stance): boolean => oneSideMm > oneSideLimitMm + CLOSE_MM

const stateOf = (stance: Stance, tip: Tip | undefined): Tip['state'] => {
  if (tip && tip.state !== 'Stands') return tip.state
  return isOffside(stance) ? 'Shaky' : 'Stands'
}

/** How far off its middle the row is pulled where that is too far; else what tips it. */
const measureOf = (stance: Stance, tip: Tip | undefined, pushN: number) =>
  isOffside(stance)
    ? { measured: lengthOf(stance.oneSideMm), limit: lengthOf(stance.oneSideLimitMm) }
    : { measured: forceOf(tip?.tipsAtN ?? 0), limit: forceOf(STANDS_AT * pushN) }

/** Whoever hangs all of one side first, or harvests one side, loads the row over its edge. */
export const tipsOneSideMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Row with one side hung',
  limit:
    'The towers of one side pull at most 0.8 of half the base off its middle, and 1.5 times a push is borne',
  source:
    'Common practice, no source; the factor International Building Code 1807.2.3 on overturning, borrowed',
  mending: 'Anchor or tie the row, widen its base, and hang and harvest both sides in turn.',
  check: ({ stance }, built, { pushN }) => {
    const tip = leastSafe(stance.tips.filter(({ under }) => under === 'one-side'))
    const state = stateOf(stance, tip)
    return stanceFinding(
      RULE,
      built,
      stance,
      state === 'Stands'
        ? undefined
        : {
            state,
            ...measureOf(stance, tip, pushN),
            facts: { pushN, tipsAtN: tip?.tipsAtN ?? 0 },
            terms: [
              term('Half of the base', lengthOf(stance.baseHalfMm)),
              ...(tip ? tipTerms(tip, stance, pushN) : []),
            ],
          },
    )
  },
  say: ({ parts, measured, limit, facts }, { name, onTape, force }) => {
    const row = name(parts[0] ?? '')
    const tipsAtN = Number(facts['tipsAtN'])
    const push = force(Number(facts['pushN']))
    const then =
      tipsAtN > 0
        ? `tips at a push of ${force(tipsAtN)}, where a person leans with ${push}`
        : 'tips by itself'
    return measured.unit === 'mm'
      ? `With one side hung its towers pull ${row} ${onTape(measured.value)} off its middle, ${onTape(limit.value)} is allowed: it ${then}.`
      : `With one side hung ${row} ${then}.`
  },
}
