import { fedRow } from '../support/fedRow'
import { ruleTable } from '../support/ruleTable'

// A shut valve is told of, lest it be forgotten: common practice, no source.
ruleTable('zone-valve-open', {
  passes: [['an open valve', fedRow()]],
  fails: [
    [
      'a shut one',
      fedRow({ valve: 'shut' }),
      'Drifting, 0 of 1',
      'The ball valve of A is shut: it gets no water, nor does any row behind it. Set the ball valve of A open.',
    ],
  ],
})
