import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// City and sheet-metal guidance for roof gutters: 1/16 in a foot (from memory). Half of it still runs: common practice, no
// source. Three racks are 30 ft, so that a floor that falls 1 in along them adds or takes 1/30 in a foot: gutters of 1/16
// falling against it keep 1/16 - 1/30 = 0.029 in a foot, less than half.

/** Water falls to the end of the row, or to its start, on a floor that falls so far from start to end. */
const onGrade = (floorIn: number, fallsTo: 'start' | 'end', gutterFall = 1 / 16): Sketch =>
  bay('40 x 60 ft')
    .level([0, 100], 0)
    .level([0, 460], -floorIn)
    .row('A', [165, 100], { fallsTo, gutterFall })
    .settings({ datum: 'grade' })

ruleTable('gutter-fall-min', {
  passes: [
    ['a floor that falls with the gutters', onGrade(5.4, 'end')],
    ['a level floor', onGrade(0, 'start')],
    ['gutters that fall by more than the floor takes', onGrade(1, 'start', 1 / 8)],
    ['level rails on any floor', onGrade(5.4, 'start').settings({ datum: 'row' })],
  ],
  fails: [
    [
      'a floor that takes a quarter of the fall',
      onGrade(0.4688, 'start'),
      'Flat, 0.047 of 0.063',
      'On grade the gutters of A fall only 3/64 in/ft; they want 1/16 in/ft. Let the rails be level row by row.',
    ],
    [
      'a floor that takes more than half of it',
      onGrade(1, 'start'),
      'Backs up, 0.029 of 0.063',
      'On grade the gutters of A fall only 0.029 in/ft; they want 1/16 in/ft. Let the rails be level row by row.',
    ],
    [
      'a floor that takes it all',
      onGrade(5.4, 'start'),
      'Backs up, -0.117 of 0.063',
      'On grade the floor rises against the gutters of A by more than they fall: water runs from the outlet. Let the rails be level row by row.',
    ],
  ],
})
