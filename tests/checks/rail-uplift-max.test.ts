import { describe, expect, test } from 'vitest'
import { forceOf } from '../../src/checks/found'
import type { Screen } from '../../src/model/strength'
import { poundsForce } from '../../src/units/force'
import { bay } from '../support/bay'
import { rowStrength, saidIn, screen } from '../support/strength'

const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

const said = (lift: Screen): readonly string[] =>
  saidIn('rail-uplift-max', layout, rowStrength({ screens: [lift] }))

const lift = (pounds: number, limit: number, more: Partial<Screen>): Screen =>
  screen('rail-uplift', 'Proof-load', forceOf(poundsForce(pounds)), forceOf(poundsForce(limit)), {
    under: 'harvested',
    ...more,
  })

describe('what lifts', () => {
  test('nothing does in a row that is within', () => {
    expect(saidIn('rail-uplift-max', layout, rowStrength())).toEqual([])
  })

  test('a rail lifts its riser with more than the frame weighs there', () => {
    expect(said(lift(20, 11, { used: 1.8, state: 'Too long' }))).toEqual([
      'Too long: A rail of A lifts a riser with 20 lb, and the frame may be lifted with 11 lb, with the worst of its spans harvested.',
    ])
  })

  // 1 in conduit, two spans of 60 in, one harvested: 2.9 lb at the far riser, by a direct-stiffness solution.
  test('a rail on straps lifts off one of them', () => {
    expect(said(lift(2.9, 0, { used: 1 }))).toEqual([
      'Proof-load: A rail of A lifts off a strap with 3 lb, and nothing holds it down there, with the worst of its spans harvested.',
    ])
  })

  test('a bar with one side hung tips over a rail', () => {
    expect(said(lift(3, 0, { mark: 'HB', used: 1.1, state: 'Too long', under: 'one-side' }))).toEqual([
      'Too long: A hanger bar of A lifts off one rail with 3 lb and tips over the other, with one side hung.',
    ])
  })
})
