import { expect, test } from 'vitest'
import { lengthOf } from '../../src/checks/found'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { rowStrength, saidIn, screen } from '../support/strength'

const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

// NDS 12.5.1: 1.5 x 1.163 = 1.7445 in to the edge, which a hole in the middle of a 2x4, 1.75 in, passes by 0.0055 in;
// to the end 4 x 1.163 = 4.65 in, 2.33 in at the very least.
test('a hole in the middle passes, one off it or too near the top does not', () => {
  const edge = (is: number, state: 'Within' | 'Too long') =>
    screen('hole-edge', state, lengthOf(inches(is)), lengthOf(inches(1.7445)))
  const end = screen('hole-end', 'Proof-load', lengthOf(inches(2.5)), lengthOf(inches(4.65)))
  const said = (one: ReturnType<typeof edge>) =>
    saidIn('hole-edge-min', layout, rowStrength({ screens: [one] }))
  expect(said(edge(1.75, 'Within'))).toEqual([])
  expect(said(edge(1.734375, 'Too long'))).toEqual([
    'Too long: A hole in a riser of A has its middle 1-47/64" from the edge; 1-3/4" is asked, or the wood splits out.',
  ])
  expect(said(end)).toEqual([
    'Proof-load: A hole in a riser of A has its middle 2-1/2" from the top; 4-5/8" is asked, or the wood splits out.',
  ])
})
