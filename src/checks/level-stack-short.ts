import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, term } from './found'
import { overRack } from './rackRule'

const RULE = 'level-stack-short'

/** From the floor up: bearer, shim, fall, trough, tip, tower, hook, bar, hole, top of riser. A fixed riser may be too short for it. */
export const levelStackShort: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Stack of levels',
  limit: 'The tip hangs no lower than trough, fall and bearers ask for',
  source: 'Geometry: the stack of levels from foot to hook',
  mending: 'Take longer risers or shorter towers, a shallower gutter, or rest the gutter lower.',
  check: overRack(RULE, ({ tipMm, tipNeededMm, riserMm, riserNeededMm }, { part }) =>
    tipMm >= tipNeededMm - CLOSE_MM
      ? undefined
      : {
          state: 'Clash',
          measured: lengthOf(tipNeededMm - tipMm),
          limit: lengthOf(0),
          terms: [
            term('Tip above the rack datum, as the risers allow', lengthOf(tipMm)),
            term('Tip that trough, fall and bearers ask for', lengthOf(tipNeededMm)),
            term('Riser', lengthOf(riserMm)),
            term('Riser that would do', lengthOf(riserNeededMm)),
          ],
          mend: { kind: 'set', part, field: 'riserMm', value: null },
        },
  ),
  say: ({ parts, measured }, { onTape, name }) =>
    `The stack of levels of ${name(parts[0] ?? '')} is ${onTape(measured.value)} short: the tips would hang that much too low for their troughs.`,
}
