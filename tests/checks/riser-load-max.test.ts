import { expect, test } from 'vitest'
import { forceOf, ratioOf, stressOf } from '../../src/checks/found'
import { poundsForce, psi } from '../../src/units/force'
import { bay } from '../support/bay'
import { rowStrength, saidIn, screen } from '../support/strength'

const RULE = 'riser-load-max'
const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()
const unbraced = bay('40 x 60 ft').row('A', [165, 100], { bracing: 'none' }).layout()

const ofPounds = (pounds: number) => forceOf(poundsForce(pounds))

// NDS 3.7.1: a braced 66 in riser of spruce-pine-fir carries 976 lb wet. A 105 in one: 105 / 1.5 = 70, over 50.
// A person's 50 lb on one riser 64 in up bends it the weak way to 2,438 psi of 2,310, hand arithmetic.
test.each([
  [
    screen('riser-column', 'Too long', ofPounds(1000), ofPounds(976)),
    'A riser of A comes to 1000 lb with every tower hung; 976 lb is allowed.',
  ],
  [
    screen('riser-slenderness', 'Too long', ratioOf(70), ratioOf(50), { used: Infinity }),
    'The slenderness of the risers of A is 70.00, braced as they are; over 50.00 a riser is refused whatever it carries.',
  ],
  [
    screen('riser-push', 'Too long', stressOf(psi(2438)), stressOf(psi(2310)), { under: 'empty' }),
    'A riser of A that a person pushes comes to 2.4 ksi; 2.3 ksi is allowed.',
  ],
  [
    screen('hole-net', 'Too long', stressOf(psi(900)), stressOf(psi(850))),
    'A riser of A comes to 900 psi beside its hole with every tower hung; 850 psi is allowed.',
  ],
  [
    screen('hole-bearing', 'Too long', ofPounds(1500), ofPounds(1436)),
    'A rail presses on the hole of a riser of A with 1500 lb with every tower hung; 1436 lb is allowed.',
  ],
])('%#: what a riser does too much of', (one, says) => {
  expect(saidIn(RULE, layout, rowStrength({ screens: [one] }))).toEqual([`Too long: ${says}`])
})

test('what braces would mend is told by their rule, a hole by this', () => {
  const column = screen('riser-column', 'Too long', ofPounds(1000), ofPounds(976))
  const net = screen('hole-net', 'Too long', stressOf(psi(900)), stressOf(psi(850)))
  expect(saidIn(RULE, unbraced, rowStrength({ screens: [column] }))).toEqual([])
  expect(saidIn(RULE, unbraced, rowStrength({ screens: [column, net] }))).toHaveLength(1)
})
