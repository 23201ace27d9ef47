import { expect, test } from 'vitest'
import { lengthOf, stressOf } from '../../src/checks/found'
import { ksi } from '../../src/units/force'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { barOf, rowStrength, saidIn, screen } from '../support/strength'

const RULE = 'bar-load-max'
const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

const stress = (is: number, state: 'Within' | 'Proof-load' | 'Too long') =>
  screen('bar-stress', state, stressOf(ksi(is)), stressOf(ksi(18)))

// Worked example of the trade notes: four towers of 25 lb 18 in apart on rails 40 in apart, 12.7 ksi in a 1/2 in bar.
test('a bar within has no finding', () => {
  expect(saidIn(RULE, layout, rowStrength({ screens: [stress(12.7, 'Within')] }))).toEqual([])
})

// The same with the rails under the outer lines, 54 in apart: 32.8 ksi in a 1/2 in bar; best between 36 and 42 in.
test('a bar that folds, with the spacing of rails that would load it least', () => {
  const bar = barOf({ bestSpacingMm: inches(40.5) })
  expect(saidIn(RULE, layout, rowStrength({ screens: [stress(32.8, 'Too long')], bar }))).toEqual([
    'Too long: The hanger bars of A, 1/2 in thin-wall conduit, reach 32.8 ksi on rails 54" apart with every tower hung; 18.0 ksi is allowed. Over 30.0 ksi, where conduit is assumed to yield, it folds or stays bent. Rails 40-1/2" apart load them least.',
  ])
})

test('a bar that sags', () => {
  const sag = screen('bar-sag', 'Proof-load', lengthOf(inches(0.35)), lengthOf(inches(0.3)))
  expect(saidIn(RULE, layout, rowStrength({ screens: [sag], bar: barOf() }))).toEqual([
    'Proof-load: The hanger bars of A, 1/2 in thin-wall conduit, sag 3/8" on rails 54" apart with every tower hung; 5/16" is allowed. Try it with 1.5 times its load before anyone works under it.',
  ])
})

// 0.0963 in of 0.0944 in are both 3/32 in, even to the 64th.
test('a sag that no tape tells from its limit is told in thousandths', () => {
  const sag = screen('bar-sag', 'Proof-load', lengthOf(inches(0.0963)), lengthOf(inches(0.0944)))
  expect(saidIn(RULE, layout, rowStrength({ screens: [sag] }))[0]).toContain(
    'sag 0.096" on rails 54" apart with every tower hung; 0.094" is allowed.',
  )
})
