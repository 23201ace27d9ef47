import { fedRow } from '../support/fedRow'
import { ruleTable } from '../support/ruleTable'

/*
 * S = D (1 + 2.3 F), in inches and US gallons a minute D + 0.574 Q / D^1.5 (ANSI/HI 9.8, from memory): 2.067 + 0.574 x 8.15 / 2.972
 * = 3.64 in for what the small pump gives here through 2 in pipe. An intake 2 in over the bottom: common practice, no source.
 */
ruleTable('suction-level-min', {
  passes: [
    ['a pit as it comes: 8 in from its bottom up to the pump-off level', fedRow()],
    ['an intake of one’s own 4 in under it', fedRow({}, { intake: -33 })],
  ],
  fails: [
    [
      'an intake of one’s own 3 in under the pump-off level, to be let down',
      fedRow({}, { intake: -30, lowAlarm: -27.5, pumpOff: -27 }),
      'Drifting, 3 of 3.641',
      'At the pump-off level of Pit only 3" of water stand over the pump’s intake; with less than 3-5/8" it draws air. Set the pump intake of Pit to -2\' 6-5/8".',
    ],
    [
      'a pump-off level 5 in over the bottom, so 3 in over the intake',
      fedRow({}, { bottom: -34 }),
      'Drifting, 3 of 3.641',
      'At the pump-off level of Pit only 3" of water stand over the pump’s intake; with less than 3-5/8" it draws air. Set the pump-off level of Pit to -2\' 4-3/8".',
    ],
  ],
})
