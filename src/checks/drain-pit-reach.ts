import type { BayRule } from './context'
import { found, lengthOf } from './found'

const RULE = 'drain-pit-reach'

/** A drain's low end must come to a pit: what falls nowhere floods the floor. */
export const drainPitReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drain comes to a pit',
  limit: 'The low end of each drain line ends in a pit',
  source: 'Geometry',
  mending: 'Drag the low end of the line to the pit.',
  check: ({ joins }) =>
    joins
      .filter((join) => join.kind === 'drain-to-pit' && join.to === undefined)
      .map((join) => {
        const isAny = Number.isFinite(join.gapMm)
        return found({
          rule: RULE,
          subject: 'drain',
          state: 'Backs up',
          parts: [join.from],
          at: join.at,
          measured: lengthOf(isAny ? join.gapMm : 0),
          limit: lengthOf(0),
          facts: { none: isAny ? '' : 'none' },
        })
      }),
  say: ({ parts, measured, facts }, { length, name }) =>
    facts['none'] === 'none'
      ? `${name(parts[0] ?? '')} has no pit to fall to.`
      : `${name(parts[0] ?? '')} ends ${length(measured.value)} short of the nearest pit.`,
}
