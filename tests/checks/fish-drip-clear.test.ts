import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

ruleTable('fish-drip-clear', {
  passes: [
    ['lumber that is not preserved, drips turned aside', row()],
    ['preserved runners, which lie under the troughs', row({ treated: 'base' })],
    ['painted conduit', row({ drips: 'painted' })],
    [
      'all of it over water that no fish swim in',
      row({ treated: 'all', drips: 'bare' }).settings({ fishWater: false }),
    ],
  ],
  fails: [
    [
      // Three racks, three pairs between their ends: 26 risers, 13 top ties, 4 side braces, 4 cross braces: 47 pieces.
      'all lumber preserved',
      row({ treated: 'all' }),
      'Clash, 47 of 0',
      '47 pieces of preserved lumber in A drip into troughs whose water goes back to fish: their copper kills them. Let only the runners and base pieces of A be preserved.',
    ],
    [
      'bare conduit: 24 bars, 2 lines of 3 rails and 2 sleeves each, 34 pieces',
      row({ drips: 'bare' }),
      'Tight, 34 of 0',
      '34 pieces of bare galvanised conduit in A drip into troughs whose water goes back to fish: zinc gathers there. Give the conduit of A drip ties and end caps.',
    ],
  ],
})
