import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { quarterTurn, shift } from '../../../src/geometry/motion'
import type { Layout } from '../../../src/layout/schema'
import { fromTicks } from '../../../src/units/length'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { lintelLane } from '../../support/scenarios/lintelLane'
import { oldDairy } from '../../support/scenarios/oldDairy'
import { mirroredBay, movedBay } from '../../support/wholeBay'

/** To a hundredth of a litre, a litre an hour or a mm; the solver's own sweeps end a millionth of the flow apart. */
const rounded = (value: number): number => Math.round(value * 100) / 100 + 0

/** What comes home through every drain and to every pit, wherever the bay lies and whichever hand it has. */
const home = (layout: Layout) => {
  const { drains, pits } = evaluate(layout).bay.returns
  return {
    drains: [...drains.values()].map(({ part, state, flowLph, fullest, standingL }) => [
      part,
      state,
      ...[flowLph, fullest.depthMm, fullest.velocityMS, standingL].map(rounded),
    ]),
    pits: [...pits.values()].map(({ part, state, inLph, designL, roomL, deadL, swingL, transit }) => [
      part,
      state,
      ...[inLph, designL, roomL, deadL, swingL, ...Object.values(transit)].map(rounded),
    ]),
  }
}

describe.each([
  ['Kestrel Bend', kestrelBend().layout()],
  ['Old Dairy', oldDairy().layout()],
  ['Lintel Lane', lintelLane().layout()],
])('%s', (_, layout) => {
  test.each([
    ['moved', movedBay(layout, shift(fromTicks(1_234_567), fromTicks(-7_654_321)))],
    ['turned', movedBay(layout, quarterTurn({ x: 0, y: 0 }, 1))],
    ['in a mirror', mirroredBay(layout, { axis: 'x', atMm: 0 })],
  ])('%s it sends the same water home', (__, other) => {
    expect(home(other)).toEqual(home(layout))
  })
})
