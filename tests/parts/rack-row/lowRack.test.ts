import { describe, expect, test } from 'vitest'
import { inches, toInches } from '../../../src/units/length'
import { build, countOf, facts, fromShelf, marked, pieces } from '../../support/rackRows'

/*
 * What a low rack is made of: common practice, no source.
 */
const low = fromShelf('low-rack')
const built = build(low)
const rack = built.rack!

describe('what the low rack is made of', () => {
  test('two runners a riser pair, each half of a 10 ft 2x4', () => {
    expect(pieces(built, 'BR')).toEqual(['18 x 59.9375'])
    expect(marked(built, 'BR')[0]!.cut).toEqual({ kind: 'equal-parts', parts: 2, stockMm: inches(120) })
    expect(marked(built, 'BX', 'GB', 'SP')).toEqual([])
  })

  test('5-1/2 ft risers, 2.5 ft apart', () => {
    expect(pieces(built, 'RS-p', 'RS-s')).toEqual(['18 x 66'])
    const across = marked(built, 'RS-s').map(({ from }) => toInches(from.x))
    expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(30, 6)
  })

  test('whole sticks of 1 in on one rack, of 3/4 in on the next', () => {
    expect(pieces(built, 'RL-b')).toEqual(['2 x 120'])
    expect(pieces(built, 'RL')).toEqual(['2 x 120'])
  })

  test('five lines over 4 in gutters in 10 ft lengths, capped', () => {
    expect(rack.lines).toBe(5)
    expect(pieces(built, 'GT')).toEqual(['5 x 120', '5 x 108'])
    // A 3/4 in threaded outlet: common practice, no source.
    expect(countOf(built, 'gutter-outlet-3/4')).toBe(5)
    expect(countOf(built, 'gutter-end-cap-4in')).toBe(10)
  })

  test('gutters rest on the runners', () => {
    // A 2x4 on edge.
    expect(toInches(rack.bearerTopMm)).toBeCloseTo(3.5, 9)
  })
})

describe('its stack of levels', () => {
  /*
   * 66 in riser, 1 in conduit (1.163) in a 1-3/16 hole 2-5/16 in from the top, 1/2 in bar (0.706), 60 in tower:
   *   hole centre 66 - 2.3125              = 63.6875
   *   conduit on the hole's bottom         - 0.0123
   *   top of bar                           + 0.5815 + 0.706 = 64.9627
   *   hook ring 2-3/8 below, tower 60      - 62.375
   *   tip                                  =  2.588
   * A published-dimension sum with the hole two conduits from the top and the tower's top 2 in below the bar's centre
   * gives a foot at 2.61 in; a hole four conduits down, 0.28 in.
   */
  test('the tip of a 5 ft tower hangs 2.6 in over the floor', () => {
    expect(toInches(rack.tipMm)).toBeCloseTo(2.588, 2)
    expect(Math.abs(toInches(rack.tipMm) - 2.61)).toBeLessThan(0.05)
  })

  test('two more conduits down, the tip hangs as much lower', () => {
    const tip = toInches(facts({ ...low, topMarginMm: inches(4 * 1.163) }).tipMm)
    expect(Math.abs(tip - 0.28)).toBeLessThan(0.05)
  })

  /*
   * It would need: runner 3.5, shim 0.25, fall of 19 ft at 1/16 in/ft 1.1875, gutter 2.75, less 2.25 below the lip
   *   = 5.4375, which is 2.85 in more than 2.588.
   */
  test('it misses by 2.85 in, and that much riser would mend it', () => {
    expect(toInches(rack.tipNeededMm)).toBeCloseTo(5.4375, 4)
    expect(toInches(rack.tipNeededMm - rack.tipMm)).toBeCloseTo(2.85, 2)
    expect(toInches(rack.riserNeededMm - rack.riserMm)).toBeCloseTo(2.85, 2)
  })

  test('with the riser that it asks for, the tip is where it must be', () => {
    const mended = facts({ ...low, riserMm: rack.riserNeededMm })
    expect(mended.tipMm).toBeCloseTo(mended.tipNeededMm, 6)
  })

  test('a shorter tower mends it too', () => {
    const mended = facts({ ...low, towerMm: inches(57) })
    expect(mended.tipMm).toBeCloseTo(mended.tipNeededMm, 6)
  })

  test('a bay with higher tips does not lift a rack whose riser ends below', () => {
    expect(facts(low, inches(10.25)).tipMm).toBe(rack.tipMm)
  })
})
