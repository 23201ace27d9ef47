import type { PartRule } from './context'
import { found } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'lateral-flush-end'

/** Every end of a lateral opens, since what settles there is let out there. */
export const lateralFlushEnd: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Ends of laterals that open',
  limit: 'A flush cap or valve at each end of a lateral',
  source: 'Common practice, no source: published guides on drip systems ask for the same',
  mending: 'Put a flush cap or a flush valve on each end.',
  check: ({ part, feed, rack }) => {
    const shut = feed?.laterals.flatMap(({ ends }) => ends.filter(({ flush }) => flush === 'none')) ?? []
    return rack && shut.length > 0
      ? [
          found({
            rule: RULE,
            subject: 'flow',
            state: 'Drifting',
            parts: [part],
            at: rowPlace(rack),
            measured: { value: shut.length, unit: 'count' },
            limit: { value: 0, unit: 'count' },
            mend: { kind: 'set', part, field: 'flushEnd', value: 'cap' },
          }),
        ]
      : []
  },
  say: ({ parts, measured }, { name }) =>
    measured.value === 1
      ? `1 end of the laterals of ${name(parts[0] ?? '')} is plugged: what settles there is never flushed out.`
      : `${measured.value} ends of the laterals of ${name(parts[0] ?? '')} are plugged: what settles there is never flushed out.`,
}
