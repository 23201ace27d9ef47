import { fahrenheitWarmer } from '../../src/units/temperature'
import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Hand arithmetic: a 10 ft section of PVC over 60 degrees F grows 120 x 3.0e-5 x 60 = 0.216 in, over 75 degrees 0.27 in, where 1/4 in is left. A
// lateral of polyethylene grows 9.0e-5 of its length a degree F.
const swings = (degreesF: number): Sketch =>
  bay('30 x 200 ft').settings({ swingC: fahrenheitWarmer(degreesF) })

ruleTable('plastic-travel-max', {
  passes: [
    ['three racks where the air swings by 60 °F', swings(60).row('A', [165, 100])],
    [
      'one rack, whose gutter has no joiner, where it swings by 80 °F',
      swings(80).row('A', [165, 100], { racks: 1 }),
    ],
  ],
  fails: [
    [
      'gutters of three racks where it swings by 75 °F',
      swings(75).row('A', [165, 100]),
      'Tight, 0.27 of 0.25',
      'Where the air swings by 75.0 °F, each section of gutter in A grows 17/64"; its joiners have 1/4".',
    ],
  ],
})
