import { isTooTall, TALLEST_TO_BASE } from '../model/strength'
import type { FrameRule } from './context'
import { lengthOf, ratioOf, term } from './found'
import { stanceFinding } from './stanceRule'

const RULE = 'row-height-max'

/** A tall row on a narrow base sways before anything is pushed. */
export const rowHeightMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Row high over its base',
  limit: 'Risers at most 2.5 times as high as the base is wide, or tied',
  source: 'Common practice, no source; storage racks are anchored over 6 times, ANSI MH16.1, not of wood',
  mending: 'Tie the row to the next one or to a post, anchor it, or widen its base.',
  check: ({ stance }, built) =>
    stanceFinding(
      RULE,
      built,
      stance,
      isTooTall(stance)
        ? {
            state: 'Shaky',
            measured: ratioOf(stance.heightToBase),
            limit: ratioOf(TALLEST_TO_BASE),
            facts: { riserMm: stance.riserMm, baseMm: 2 * stance.baseHalfMm },
            terms: [term('Riser', lengthOf(stance.riserMm)), term('Base', lengthOf(2 * stance.baseHalfMm))],
          }
        : undefined,
    ),
  say: ({ parts, facts, measured, limit }, { name, onTape }) =>
    `${name(parts[0] ?? '')} stands ${onTape(Number(facts['riserMm']))} high on a base of ${onTape(Number(facts['baseMm']))}, ${measured.value.toFixed(2)} to 1; over ${limit.value.toFixed(1)} it is tied.`,
}
