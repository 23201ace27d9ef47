import { gpm } from '../../src/units/flow'
import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * US gallons a minute of a sharp hole: 19.637 x 0.62 x d^2 x sqrt(h in ft) (Encyclopaedia Britannica, 11th ed., vol. 14). A pit
 * as it comes has 13 in from its overflow to its rim: 12 over the middle of a 2 in pipe, so 19.637 x 0.62 x 4 x 1 = 48.7 gpm; of
 * a 1 in pipe 12.5 in = 1.0417 ft, 12.175 x 1 x 1.0206 = 12.43 gpm, 745.6 gal an hour.
 */
const pit = (values: object): Sketch => bay('40 x 60 ft').pit('Pit', { x: [400, 436], y: [50, 164] }, values)

ruleTable('pit-overflow-size', {
  passes: [
    ['2 in against 4 gpm', pit({})],
    ['2 in against 24 gpm', pit({ makeUpLph: gpm(24) })],
    ['1 in against 6 gpm', pit({ overflowBore: '1', makeUpLph: gpm(6) })],
    ['no make-up at all', pit({ overflowBore: '1', makeUpLph: 0 })],
    ['an overflow over the rim, of which another rule tells', pit({ overflow: 2 })],
  ],
  fails: [
    [
      '1 in against 8 gpm',
      pit({ overflowBore: '1', makeUpLph: gpm(8) }),
      'Thin, 745.565 of 960',
      'The overflow of Pit passes 12.4 gpm; against a stuck make-up valve it wants 16.0 gpm, half of it for a screen with leaves on it. Give Pit an overflow of 1-1/2 in pipe.',
    ],
    [
      '1 in against 15 gpm',
      pit({ overflowBore: '1', makeUpLph: gpm(15) }),
      'Spills, 745.565 of 1800',
      'The overflow of Pit passes 12.4 gpm; against a stuck make-up valve it wants 30.0 gpm, half of it for a screen with leaves on it. Give Pit an overflow of 2 in pipe.',
    ],
  ],
})
