import { describe, expect, test } from 'vitest'
import { bearingScreen, conduitIn, edgeScreen, endScreen, netScreen } from '../../../src/evaluate/loads/holes'
import { risersBuilt, type Riser } from '../../../src/evaluate/loads/risersBuilt'
import { woodOf } from '../../../src/evaluate/loads/risersScreen'
import type { Screen } from '../../../src/model/strength'
import { poundsForce, toPoundsForce, toPsi } from '../../../src/units/force'
import { inches, toInches } from '../../../src/units/length'
import { standing } from '../../support/standing'

const ONE_INCH = inches(1.163)
const dry = woodOf({ species: 'spf', woodIs: 'dry' }, inches(3.5))
const wet = woodOf({ species: 'spf', woodIs: 'wet' }, inches(3.5))

/** A 2x4 with a hole of 1-3/16 in, its top 4 diameters of 1 in conduit over it, with 86.2 lb on it. */
const riser = (more: Partial<Riser> = {}): Riser => ({
  mark: 'RS-s',
  at: { u: 0, v: -500, z: inches(66) },
  hole: { centreMm: inches(66), diameterMm: inches(1.1875) },
  boredMm: inches(1.1875),
  lengthMm: inches(66 + 4 * 1.163),
  alongMm: inches(1.5),
  acrossMm: inches(3.5),
  along: { isHeld: true, nodeMm: undefined },
  across: { isHeld: true, nodeMm: undefined },
  carriesN: poundsForce(86.2),
  ...more,
})

const holed = (bitIn: number): Riser =>
  riser({ hole: { centreMm: inches(66), diameterMm: inches(bitIn) }, boredMm: inches(bitIn) })

const lengthIn = (screen: Screen, name: string): number =>
  toInches(screen.terms.find((term) => term.name === name)!.quantity.value)

const shareOf = (screen: Screen, name: string): number =>
  screen.terms.find((term) => term.name === name)!.quantity.value

// By hand: (3.5 - 1.1875) x 1.5 = 3.469 in2, 66 % of 5.25; 86.2 / 3.469 = 25 psi. With 1-1/4 in: 3.375 in2, 64.3 %.
describe('wood left beside a hole', () => {
  test.each([
    [1.1875, 0.66, 3.469],
    [1.25, 0.643, 3.375],
  ])('of %d in is %d of the board', (bit, share, area) => {
    const screen = netScreen(holed(bit), wet)
    expect(Math.abs(shareOf(screen, 'Share of the board left') - share)).toBeLessThan(1e-3)
    expect(lengthIn(screen, 'Board left beside it') * 1.5).toBeCloseTo(area, 3)
    expect(Math.abs(toPsi(screen.measured.value) - 86.2 / area)).toBeLessThan(0.1)
  })
})

describe('a hole and the edge', () => {
  // NDS Table 12.5.1C: 1.5 x 1.163 = 1.7445 in of 1.75 in.
  test('1 in conduit in the middle of the wide face is within by a hair', () => {
    const screen = edgeScreen(riser(), ONE_INCH)
    expect(screen.state).toBe('Within')
    expect(toInches(screen.limit.value)).toBeCloseTo(1.7445, 4)
    expect(toInches(screen.measured.value)).toBeCloseTo(1.75, 4)
  })

  test('in a board that is a thirty-second narrower it is tried by a proof load', () => {
    expect(edgeScreen(riser({ acrossMm: inches(3.5 - 1 / 32) }), ONE_INCH).state).toBe('Proof-load')
  })

  // IRC R602.6: 40 % of 3.5 in is 1.40 in, 60 % (doubled) 2.10 in; 5/8 in at the edge leaves 2.25 in for a hole.
  test.each([
    [1.1875, 'Within'],
    [1.4, 'Within'],
    [1.5, 'Proof-load'],
    [2.05, 'Proof-load'],
    [2.15, 'Too long'],
    [2.3, 'Too long'],
  ])('a bored hole of %d in is %s', (bit, state) => {
    expect(edgeScreen(holed(bit), inches(0.922)).state).toBe(state)
  })

  // Through the narrow face a hole of 1-3/16 in leaves (1.5 - 1.1875) / 2 = 0.16 in each side.
  test('through the narrow face it is refused', () => {
    const screen = edgeScreen(riser({ alongMm: inches(3.5), acrossMm: inches(1.5) }), ONE_INCH)
    expect(screen).toMatchObject({ state: 'Too long', used: Infinity })
    expect(lengthIn(screen, 'Wood left each side')).toBeCloseTo(0.156, 3)
  })
})

// NDS Table 12.5.1A, from memory: 2 x 0.922 = 1.844 in at the least, 4 x 0.922 = 3.688 in for all of the value.
describe('a hole and the top of the riser', () => {
  const topped = (overIn: number): Riser => riser({ lengthMm: inches(66 + overIn) })

  test.each([
    [3.7, 'Within', 1],
    [1.85, 'Within', 0.5016],
    [1.8, 'Too long', 0.4881],
  ])('%d in over 3/4 in conduit: %s, %d of the value', (over, state, share) => {
    const screen = endScreen(topped(over), inches(0.922))
    expect(screen.state).toBe(state)
    expect(shareOf(screen, 'Share of its value')).toBeCloseTo(share, 4)
  })

  test('for conduit over 1 in, which the rule is not of, too little is tried by a proof load', () => {
    expect(endScreen(topped(2.3), ONE_INCH).state).toBe('Proof-load')
    expect(endScreen(topped(1.1), ONE_INCH).state).toBe('Too long')
  })
})

// By hand with NDS Table 12.3.1A, mode I: 1.163 x 1.5 x 4704 / 4 = 2052 lb dry, x 0.7 = 1436 lb wet; and x 0.9, permanent.
test.each([
  ['dry', dry, 2052],
  ['wet', wet, 1436],
])('1 in conduit presses on a %s riser with much less than it may', (_, wood, pounds) => {
  const screen = bearingScreen(riser(), ONE_INCH, wood)
  expect(Math.abs(toPoundsForce(screen.limit.value) / 0.9 - pounds)).toBeLessThan(1)
  expect(screen.used).toBeCloseTo(86.2 / 0.9 / pounds, 4)
})

test('the sleeve lies in the hole of a shared riser, the rail in any other', () => {
  const { frame, rails } = standing()
  const ods = risersBuilt({ frame, rails }).map((each) => [
    each.mark,
    Number(toInches(conduitIn(frame, each)).toFixed(3)),
  ])
  expect(new Set(ods.map(String))).toEqual(new Set(['RS-p,0.922', 'RS-s,1.163']))
})
