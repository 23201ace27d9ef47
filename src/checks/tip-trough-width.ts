import { inches } from '../units/length'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'tip-trough-width'

/** On each side of the tip. Common practice, no source. */
const SIDE_MM = inches(0.25)

/** The tip must hang inside the trough without touching it. */
export const tipTroughWidth: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Tip fits the trough',
  limit: '1/4 in on each side of the tip, at the depth where it hangs',
  source: 'Common practice, no source',
  mending: 'Take a narrower drip tip, a wider gutter, or hang the tip less deep.',
  check: overRack(RULE, ({ tipWidthMm, troughAtTipMm, lipHighMm, tipMm }) =>
    troughAtTipMm >= tipWidthMm + 2 * SIDE_MM - CLOSE_MM
      ? undefined
      : {
          state: stateFor('fit', troughAtTipMm, tipWidthMm + 2 * SIDE_MM, tipWidthMm),
          measured: lengthOf(troughAtTipMm),
          limit: lengthOf(tipWidthMm + 2 * SIDE_MM),
          terms: [
            term('Tip width', lengthOf(tipWidthMm)),
            term('Tip below lip', lengthOf(lipHighMm - tipMm)),
          ],
        },
  ),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `The trough of ${name(parts[0] ?? '')} is ${onTape(measured.value)} wide where the tip hangs; the tip wants ${onTape(limit.value)}.`,
}
