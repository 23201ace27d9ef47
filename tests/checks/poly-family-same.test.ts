import { fedRow } from '../support/fedRow'
import { ruleTable } from '../support/ruleTable'

// Poly pipe and drip tubing of one name differ in bore and share no fittings: common practice, no source.
ruleTable('poly-family-same', {
  passes: [
    ['a header one size over its laterals', fedRow()],
    ['drip tubing throughout', fedRow({ lateral: 'drip-3/4' })],
    ['poly pipe of another size', fedRow({ header: 'pe-1-1/4' })],
  ],
  fails: [
    [
      'a header of drip tubing on laterals of poly pipe',
      fedRow({ header: 'drip-1' }),
      'Clash, 2 of 1',
      'The header of A is 1 in drip tubing and its laterals are 3/4 in poly pipe: no fitting joins the two. Give A a header one size over its laterals.',
    ],
  ],
})
