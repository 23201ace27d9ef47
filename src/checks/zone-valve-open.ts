import type { PartRule } from './context'
import { found } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'zone-valve-open'

/** A valve that somebody shut is told of, lest it be forgotten. */
export const zoneValveOpen: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Shut valves',
  limit: 'The ball valve of each zone stands open',
  source: 'Common practice, no source',
  mending: 'Open the ball valve, or accept it with the reason why it is shut.',
  check: ({ part, feed, rack }) =>
    rack && feed?.valves && !feed.valves.isOpen
      ? [
          found({
            rule: RULE,
            subject: 'flow',
            state: 'Drifting',
            parts: [part],
            at: rowPlace(rack),
            measured: { value: 0, unit: 'count' },
            limit: { value: 1, unit: 'count' },
            mend: { kind: 'set', part, field: 'valve', value: 'open' },
          }),
        ]
      : [],
  say: ({ parts }, { name }) =>
    `The ball valve of ${name(parts[0] ?? '')} is shut: it gets no water, nor does any row behind it.`,
}
