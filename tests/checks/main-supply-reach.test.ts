import { bay } from '../support/bay'
import { fedRow } from '../support/fedRow'
import { ruleTable } from '../support/ruleTable'

// A pump within 10 ft of a main that feeds rows: common practice, no source.
const row = bay('60 x 60 ft').row('A', [165, 145], { racks: 2, inlet: 'start' })

const alone = row.main('Main', [
  [38, 130],
  [300, 130],
])

ruleTable('main-supply-reach', {
  passes: [
    ['a main that begins at a pump', fedRow()],
    ['a row without a main, which is told of otherwise', row],
  ],
  fails: [
    [
      'a main and no pump',
      alone,
      'Starved, 0 of 120',
      'Main meets neither a pump nor a head box, so that 1 row stays dry.',
    ],
    [
      // The pump stands in the pit's middle across, 39 in from its end: (518, 516); 386 in over and 218 across from the main's end.
      'a pump at the other end of the house',
      alone.pit('Pit', { x: [500, 536], y: [420, 534] }),
      'Starved, 443.306 of 120',
      'Main meets neither a pump nor a head box, so that 1 row stays dry; the nearest is 36\' 11-5/16" off. Lay a main to Main.',
    ],
  ],
})
