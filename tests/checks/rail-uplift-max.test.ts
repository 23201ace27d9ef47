import { expect, test } from 'vitest'
import { forceOf } from '../../src/checks/found'
import { poundsForce } from '../../src/units/force'
import { bay } from '../support/bay'
import { rowStrength, saidIn, screen } from '../support/strength'

const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

// 1 in conduit, two spans of 60 in, one harvested: -2.9 lb at the far riser, by a direct-stiffness solution.
test('a rail that lifts where a span is harvested', () => {
  const lifts = screen('rail-uplift', 'Proof-load', forceOf(poundsForce(-2.9)), forceOf(0), {
    under: 'harvested',
    used: 1,
  })
  expect(saidIn('rail-uplift-max', layout, rowStrength())).toEqual([])
  expect(saidIn('rail-uplift-max', layout, rowStrength({ screens: [lifts] }))).toEqual([
    'Proof-load: A rail of A lifts off a riser with 3 lb with the worst of its spans harvested: it wants a hole or a strap that holds it down.',
  ])
})
