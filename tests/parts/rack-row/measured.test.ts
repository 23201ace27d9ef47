import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boxOf, grown, holds } from '../../../src/geometry/box'
import type { Built } from '../../../src/model/built'
import type { StockMeasures } from '../../../src/model/measuredStock'
import { rackRow } from '../../../src/parts/rack-row/kind'
import { inches, toInches } from '../../../src/units/length'
import { measuring } from '../../support/measuring'
import { build, marked, pieces, row } from '../../support/rackRows'
import { flatSite } from '../../support/site'

/*
 * Stock as a tape and a caliper find it, in the formulas of the trade notes' worked example (three racks). All lengths here
 * are hand arithmetic on that example, in inches.
 */

/** Three racks whose tips hang where the row itself asks. */
const built = (...measured: readonly StockMeasures[]): Built =>
  rackRow.derive(row(), { ...flatSite(), measured })

const inch = (mm: number | undefined): number => toInches(mm ?? NaN)

const spanAlong = (of: Built, mark: string): number => {
  const ends = marked(of, mark).flatMap(({ from, to }) => [from.y, to.y])
  return inch(Math.max(...ends) - Math.min(...ends))
}

describe('a 2x4 that measures 1-9/16 thick', () => {
  const fat = built(measuring('lumber-2x4', { thick: 1 + 9 / 16 }))

  test('makes the base runner 3 x 120 - 2 x 2.125 + 1.5625 = 357.3125 long', () => {
    expect(spanAlong(fat, 'BR')).toBeCloseTo(357.3125, 6)
    // The catalogue's 1.5: 357.25.
    expect(spanAlong(built(), 'BR')).toBeCloseTo(357.25, 6)
  })

  test('lifts bearer, tip and hole by its sixteenth: 2 + 3.5 + 1.5625, 10.25 + 0.0625, 69.37475 + 0.0625', () => {
    expect(inch(fat.rack?.bearerTopMm)).toBeCloseTo(7.0625, 6)
    expect(inch(fat.rack?.tipMm)).toBeCloseTo(10.3125, 6)
    expect(inch(fat.rack?.plainHoleMm)).toBeCloseTo(69.43725, 6)
  })

  test('is what the bay asks of all rows before any is built', () => {
    const measured = [measuring('lumber-2x4', { thick: 1 + 9 / 16 })]
    expect(inch(rackRow.tipNeededMm?.(row(), measured))).toBeCloseTo(10.3125, 6)
  })

  test('is drawn and kept clear of as thick as it is', () => {
    const [riser] = marked(fat, 'RS-p')
    expect(inch(riser?.widthMm)).toBeCloseTo(1.5625, 6)
    // 4.164 of the worked example, less half of the sixteenth.
    const less = inch(built().rack?.barToRiserMm) - inch(fat.rack?.barToRiserMm)
    expect(less).toBeCloseTo(1 / 32, 6)
  })
})

test('a 2x4 that measures 3-9/16 wide: cross-pieces and ties of 40 + 3.5625, runners an inch sixteenth higher', () => {
  const wide = built(measuring('lumber-2x4', { wide: 3 + 9 / 16 }))
  expect(pieces(wide, 'BX', 'TT', 'SB', 'XB')).toEqual(['34 x 43.5625'])
  expect(inch(wide.rack?.bearerTopMm)).toBeCloseTo(7.0625, 6)
})

describe('conduit under the caliper', () => {
  test('3/4 in of 0.932 outside: hole at 10.25 + 60 + 2.5 - 0.932 - 0.466 + (0.9375 - 0.932) / 2 - 2', () => {
    const fat = built(measuring('conduit-3/4', { od: 0.932 }))
    expect(inch(fat.rack?.plainHoleMm)).toBeCloseTo(69.35475, 6)
    // As the catalogue has it, 0.922: 69.37475.
    expect(inch(built().rack?.plainHoleMm)).toBeCloseTo(69.37475, 6)
    // A bar of 0.932 stands 0.005 nearer to the riser.
    expect(inch(built().rack?.barToRiserMm) - inch(fat.rack?.barToRiserMm)).toBeCloseTo(0.005, 6)
  })

  test('1 in of 0.065 wall: the sleeve hole is (1.1875 - 0.9375) / 2 - 0.065 = 0.060 over the plain one', () => {
    const thick = built(measuring('conduit-1', { wall: 0.065 })).rack
    expect(inch(thick?.sleeveHoleMm) - inch(thick?.plainHoleMm)).toBeCloseTo(0.06, 6)
  })

  test('with big and small sticks the big one’s outside sets the holes: 0.5 x 0.010 + 0.5 x 0.010 lower', () => {
    const part = row({ joint: 'J3', rackLengthMm: inches(114) })
    const holeOf = (measured: readonly StockMeasures[]) =>
      inch(rackRow.derive(part, { ...flatSite(), measured }).rack?.sleeveHoleMm)
    // Centre of the stick down by half of what it is fatter, and the hole's centre by as much again less slack.
    expect(holeOf([]) - holeOf([measuring('conduit-1', { od: 1.173 })])).toBeCloseTo(0.01, 6)
  })

  test('sticks of 120-1/8: ends move in by 120 - 1/8 + 2.25 - 120.125 = 2 and end rails are whole sticks', () => {
    const long = built(measuring('conduit-3/4', { over: 1 / 8 }))
    expect(pieces(long, 'RL')).toEqual(['4 x 120.125', '2 x 119.75'])
    expect(marked(long, 'RL').filter(({ cut }) => cut.kind === 'uncut')).toHaveLength(4)
    const [first] = long.supports
    expect(inch(first?.at.y) - 50).toBeCloseTo(2, 6)
  })
})

test('12 ft boards that measure 144-1/4 halve to (144.25 - 0.125) / 2 = 72.0625, by the name of the board', () => {
  const long = built(measuring('lumber-2x4', { over: 1 / 4 }))
  expect(pieces(long, 'RS-p', 'RS-s')).toEqual(['26 x 72.0625'])
  expect(marked(long, 'RS-p')[0]?.cut).toEqual({ kind: 'equal-parts', parts: 2, stockMm: inches(144) })
  // Bearers of 59.9375 are no longer half a board: (120.25 - 0.125) / 2 = 60.0625.
  expect(marked(long, 'GB')[0]?.cut).toEqual({ kind: 'exact' })
})

test('boards that come short make the riser of what they are: (143.5 - 0.125) / 2 = 71.6875 is too short to halve', () => {
  const short = built(measuring('lumber-2x4', { over: -1 / 2 }))
  // Least riser 71.87475, to the sixteenth above.
  expect(pieces(short, 'RS-p', 'RS-s')).toEqual(['26 x 71.875'])
  expect(marked(short, 'RS-p')[0]?.cut).toEqual({ kind: 'exact' })
})

test('gutter sections of 121: two whole ones a line and the rest', () => {
  expect(pieces(built(measuring('gutter-5in', { over: 1 })), 'GT')).toEqual(['8 x 121', '4 x 118'])
})

test('what was measured of another stock changes nothing', () => {
  expect(built(measuring('lumber-2x6', { thick: 2, wide: 6, over: 1 }))).toEqual(build(row()))
})

describe('whatever the stock measures', () => {
  const inch16 = (least: number, most: number) =>
    fc.integer({ min: Math.ceil(least * 16), max: Math.floor(most * 16) }).map((n) => n / 16)
  const stock = fc.record({
    thick: inch16(1.25, 1.75),
    wide: inch16(3.25, 3.75),
    over: inch16(-0.5, 0.75),
    od: fc.double({ min: 0.9, max: 0.95, noNaN: true }),
    wall: fc.double({ min: 0.04, max: 0.07, noNaN: true }),
    joint: fc.constantFrom('J1' as const, 'J3' as const),
    racks: fc.integer({ min: 1, max: 4 }),
  })

  test('a row is drawn as long as it is cut, inside its frame, and cross-pieces fit its rails', () => {
    fc.assert(
      fc.property(stock, ({ thick, wide, over, od, wall, joint, racks }) => {
        const measured = [
          measuring('lumber-2x4', { thick, wide, over }),
          measuring('conduit-3/4', { od, over }),
          measuring('conduit-1', { wall }),
        ]
        const of = rackRow.derive(row({ joint, racks, rackLengthMm: inches(114) }), {
          ...flatSite(),
          measured,
        })
        for (const { from, to, lengthMm } of of.sticks)
          expect(Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z)).toBeCloseTo(lengthMm, 6)
        const frame = of.bodies.find(({ role }) => role === 'frame')
        const room = grown(boxOf(frame?.outline ?? []), 0.01)
        expect(of.sticks.filter(({ from, to }) => !holds(room, from) || !holds(room, to))).toEqual([])
        for (const { lengthMm } of marked(of, 'BX', 'TT')) expect(inch(lengthMm)).toBeCloseTo(40 + wide, 6)
        // No board is cut from more than a tape finds.
        for (const { lengthMm } of of.sticks.filter((stick) => stick.stock === 'lumber-2x4'))
          expect(inch(lengthMm)).toBeLessThanOrEqual(144 + over + 1e-6)
      }),
      { seed: 20_261_127, numRuns: 120 },
    )
  })
})
