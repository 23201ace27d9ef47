import { fedRow } from '../support/fedRow'
import { ruleTable } from '../support/ruleTable'

// A cap or a valve at each end: common practice, no source.
ruleTable('lateral-flush-end', {
  passes: [
    ['caps', fedRow()],
    ['valves', fedRow({ flushEnd: 'valve' })],
  ],
  fails: [
    [
      'two laterals plugged at their far ends',
      fedRow({ flushEnd: 'none' }),
      'Drifting, 2 of 0',
      '2 ends of the laterals of A are plugged: what settles there is never flushed out. Give the laterals of A flush caps.',
    ],
    [
      'one lateral split in the middle, plugged at both ends',
      fedRow({ flushEnd: 'none', laterals: 1, feed: 'centre-split' }),
      'Drifting, 2 of 0',
      '2 ends of the laterals of A are plugged: what settles there is never flushed out. Give the laterals of A flush caps.',
    ],
  ],
})
