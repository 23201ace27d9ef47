import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/** A row whose leaves end at y = 346. */
const row = (): Sketch => bay('30 x 60 ft').row('A', [63, 100], { racks: 2 })

/** NEC 110.26(A): 36 in deep, 30 in wide (or the panel's own width), 6-1/2 ft high. A model code; the adopted edition decides. */
const panel = (faceY: number): Sketch =>
  row().obstacle('panel', 'Panel', { x: [48, 78], y: [faceY, faceY + 6] }, 270, {
    underside: 36,
    top: 72,
    clearFront: 36,
    clearTo: 78,
  })

/** The plate on a heater says what it keeps clear: here 36 in before it, from 48 in up. */
const heater = (clearFrom: number): Sketch =>
  row().obstacle('heater', 'Heater', { x: [48, 78], y: [360, 380] }, 270, {
    underside: 84,
    top: 110,
    clearFront: 36,
    clearFrom,
    clearTo: 110,
  })

/** A leaf of 36 in, hinged at a wall 94 in before the row's south end, or so much nearer. */
const door = (swing: 'in' | 'out', rowY: number): Sketch =>
  bay('30 x 60 ft').row('A', [63, rowY], { racks: 1 }).door('Door', [63, 0], { width: 36, swing })

ruleTable('keep-clear-free', {
  passes: [
    ['36 in before a panel', panel(382)],
    ['a row under what a heater keeps clear', heater(80)],
    ['a door that opens in short of the leaves', door('in', 42)],
    ['a door that opens out', door('out', 30)],
  ],
  fails: [
    [
      '35 in before a panel',
      panel(381),
      'Clash, 1 of 0',
      'A stands 1" inside what must stay clear of Panel. Move A 1" south.',
    ],
    [
      'a row in the room before a heater',
      heater(48),
      'Clash, 22 of 0',
      'A stands 22" inside what must stay clear of Heater. Move A 22" south.',
    ],
    [
      'a door leaf that meets the leaves an inch before it is open',
      door('in', 41),
      'Clash, 1 of 0',
      'A stands 1" inside the swing of Door. Move A 1" north.',
    ],
  ],
})
