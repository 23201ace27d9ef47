import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { findingsOf, judged, told } from '../support/judged'
import { lintelLane } from '../support/scenarios/lintelLane'
import { inchesOf } from '../support/site'

/*
 * "Lintel Lane lean-to", an invented hobby bay of one rack. Numbers: worked example of the trade notes, hand arithmetic.
 */
const layout = lintelLane().layout()
const evaluation = evaluate(layout)

test('12 towers, 84 plant sites', () => {
  expect([evaluation.towers, evaluation.sites]).toEqual([12, 84])
})

test('one rack has no sleeve and no joint, and every number all the same', () => {
  const sticks = evaluation.bay.built.flatMap((built) => built.sticks)
  expect(sticks.filter(({ mark }) => mark === 'SV' || mark === 'SP')).toEqual([])
  expect(evaluation.cuts.every(({ boughtMm }) => boughtMm > 0)).toBe(true)
})

test('raised to drain into a tote on the slab, the towers do not come off under a 72 in eave', () => {
  // Bearers at 20 in: tip at 20 + 1/4 + 1/2 + 3-3/8 - 2-1/4 = 21.875, bar 50-1/2 higher, lift 6-1/2 in over that: 78.875.
  // With 2 in of air 80.875, where the roof is 72 + 24/46 x 6 at the leaves' edge, 6 in from the wall.
  const [finding, ...others] = findingsOf('headroom-min', layout)
  expect(others).toEqual([])
  expect(finding?.state).toBe('Clash')
  expect(inchesOf(finding!.limit.value)).toBe(80.875)
  expect(finding!.measured.value / 25.4).toBeCloseTo(72 + (24 / 46) * 6, 4)
  expect(told('headroom-min', layout)[0]).toMatch(
    /^Row 1 wants 80-7\/8" of headroom to lift a tower off; the roof leaves 75-1\/8"\./,
  )
})

test('with 40 in towers they do', () => {
  const shorter = {
    ...layout,
    parts: layout.parts.map((part) => (part.kind === 'rack-row' ? { ...part, towerMm: 40 * 25.4 } : part)),
  }
  expect(judged('headroom-min', shorter)).toEqual([])
})

test('nothing is dug and all water falls home', () => {
  expect(evaluation.findings.filter(({ subject }) => subject === 'drain')).toEqual([])
})
