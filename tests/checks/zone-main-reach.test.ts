import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// A main within 10 ft of where water enters a row, and a pump to lay one from. Common practice, no source.

/** Water enters at the start of the row, on its middle. */
const row = (): Sketch => bay('60 x 60 ft').row('A', [165, 200], { racks: 2, inlet: 'start' })

const withMain = (y: number): Sketch =>
  row().main('Main', [
    [100, y],
    [300, y],
  ])

ruleTable('zone-main-reach', {
  passes: [
    ['a main 10 ft before the row', withMain(80)],
    ['further off where the bay allows it', withMain(40).settings({ mainReach: 160 })],
  ],
  fails: [
    ['no main', row(), 'Starved, 0 of 120', 'A has no main to take its water from.'],
    [
      'a main 10 ft 1 in before the row',
      withMain(79),
      'Starved, 121 of 120',
      'The nearest main is 10\' 1" from where water enters A; 10\' 0" is in reach.',
    ],
    [
      'a pit whose pump a main can be laid from',
      row().pit('Pit', { x: [400, 436], y: [100, 214] }),
      'Starved, 0 of 120',
      'A has no main to take its water from. Lay a main to A.',
    ],
  ],
})
