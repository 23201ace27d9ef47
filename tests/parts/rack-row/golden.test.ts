import { describe, expect, test } from 'vitest'
import { rackRow } from '../../../src/parts/rack-row/kind'
import { inches, toInches } from '../../../src/units/length'
import { build, countOf, facts, marked, pieces, row } from '../../support/rackRows'
import { inchesOf } from '../../support/site'

/*
 * Lengths and counts: worked example of the trade notes, hand arithmetic. Lengths to 1/64 in, counts exact.
 */
const SIXTY_FOURTH = 1 / 64

const expectInches = (mm: number, inch: number): void => {
  expect(Math.abs(toInches(mm) - inch)).toBeLessThan(SIXTY_FOURTH)
}

const three = row()
const two = row({ racks: 2 })
const one = row({ racks: 1 })

describe('three racks', () => {
  const built = build(three)
  const rack = built.rack!

  test('26 risers in 13 pairs, of which the two shared pairs take sleeves', () => {
    expect(marked(built, 'RS-p')).toHaveLength(22)
    expect(marked(built, 'RS-s')).toHaveLength(4)
    expect(built.supports).toHaveLength(26)
    expect(countOf(built, 'foot-plate')).toBe(26)
  })

  test('96 towers on 24 bars', () => {
    expect([rack.towers, rack.stations, rack.lines, rack.sites]).toEqual([96, 24, 4, 864])
    expect(countOf(built, 'tower')).toBe(96)
    expect(countOf(built, 'hook')).toBe(96)
    expectInches(rack.pitchMm, 15)
  })

  test('levels from bearer to bar', () => {
    expectInches(rack.bearerTopMm, 7)
    expectInches(rack.invertLowMm, 7.25)
    expectInches(rack.invertHighMm - rack.invertLowMm, 1.875)
    expectInches(rack.lipHighMm, 12.5)
    expectInches(rack.lipLowMm, 10.625)
    expectInches(rack.tipMm, 10.25)
    expectInches(rack.barTopMm, 72.75)
    expectInches(rack.lateralMm, 76)
  })

  test('the tip hangs 1.125 in over the invert at the high end and 0.375 in below the lip at the low end', () => {
    expectInches(rack.tipMm - rack.invertHighMm, 1.125)
    expectInches(rack.lipLowMm - rack.tipMm, 0.375)
  })

  test('holes from the foot, to the centre and to the bottom that the conduit lies on', () => {
    expectInches(rack.plainHoleMm, 69.3748)
    expectInches(rack.sleeveHoleMm, 69.4428)
    expect(toInches(rack.sleeveHoleMm - rack.plainHoleMm)).toBeCloseTo(0.068, 4)
    // One wall of 1 in conduit lower: Steel Tube Institute, EMT Weights and Dimensions, 0.057 in.
    expect(toInches(rack.plainHoleBottomMm - rack.sleeveHoleBottomMm)).toBeCloseTo(0.057, 6)
    const bits = marked(built, 'RS-s').flatMap(({ holes }) =>
      holes.map(({ diameterMm }) => inchesOf(diameterMm)),
    )
    expect(new Set(bits)).toEqual(new Set([1.188]))
  })

  test('a half 12 ft board makes a riser, with a sixteenth to spare', () => {
    expectInches(rack.riserNeededMm, 71.8748)
    expect(pieces(built, 'RS-p', 'RS-s')).toEqual(['26 x 71.9375'])
    expect(marked(built, 'RS-p')[0]!.cut).toEqual({ kind: 'equal-parts', parts: 2, stockMm: inches(144) })
  })

  test('cross-pieces, ties and braces at one stop', () => {
    expect(pieces(built, 'BX', 'TT')).toEqual(['26 x 43.5'])
    expect(pieces(built, 'SB')).toEqual(['4 x 43.5'])
    expect(pieces(built, 'XB')).toEqual(['4 x 43.5'])
  })

  test('the top tie lies 3/4 in below the hole', () => {
    const [tie] = marked(built, 'TT')
    expectInches(tie!.from.z + tie!.heightMm / 2 - inches(2), 68.625)
  })

  test('runners in three pieces a side, with two splices', () => {
    expect(pieces(built, 'BR')).toEqual(['6 x 119.0625'])
    expect(pieces(built, 'SP')).toEqual(['4 x 16'])
    const ends = marked(built, 'BR').flatMap(({ from, to }) => [from.y, to.y])
    expectInches(Math.max(...ends) - Math.min(...ends), 357.25)
  })

  test('16 bearers, two from a 10 ft board', () => {
    expect(pieces(built, 'GB')).toEqual(['16 x 59.9375'])
    expect(marked(built, 'GB')[0]!.cut).toEqual({ kind: 'equal-parts', parts: 2, stockMm: inches(120) })
  })

  test('end rails are whole sticks; the middle ones lose a gap', () => {
    expect(pieces(built, 'RL')).toEqual(['4 x 120', '2 x 119.75'])
    expect(new Set(marked(built, 'RL').map(({ cut }) => cut.kind))).toEqual(new Set(['uncut', 'exact']))
    expect(pieces(built, 'SV')).toEqual(['4 x 8.25'])
    expect(pieces(built, 'HB')).toEqual(['24 x 57'])
  })

  test('three whole gutter sections a line, with two joiners, two caps and an outlet', () => {
    expect(pieces(built, 'GT')).toEqual(['12 x 120'])
    expect(countOf(built, 'gutter-joiner-5in')).toBe(8)
    expect(countOf(built, 'gutter-end-cap-5in')).toBe(8)
    expect(countOf(built, 'gutter-outlet-2')).toBe(4)
  })

  test('bars are capped at both ends and stopped at both rails, rails capped where the row ends', () => {
    expect(countOf(built, 'end-cap-3/4')).toBe(2 * 24 + 4)
    expect(countOf(built, 'bar-stop-3/4')).toBe(4 * 24)
  })

  test('the outlet stands 345 in down the row, between two stations and between two riser pairs', () => {
    const outlets = built.mouths.filter(({ role }) => role === 'trough-outlet')
    expect(outlets.map(({ at }) => toInches(at.y) - 50)).toEqual(
      [345, 345, 345, 345].map((y) => expect.closeTo(y, 6)),
    )
    // 7.25 + 15 / 12 / 16.
    expectInches(outlets[0]!.at.z, 7.328)
  })

  test('no bar lies on a riser or a sleeve', () => {
    expectInches(rack.barToSleeveMm, 2.914)
    // 7.5 - 2.125 - 0.75 - 0.461, at the end pair that moved in.
    expectInches(rack.barToRiserMm, 4.164)
  })

  test('the tip window closes at 34 ft', () => {
    expectInches(rack.longestRunMm, 34 * 12)
  })

  test('the trough is 3.8 in wide where the tip hangs', () => {
    expect(toInches(rack.troughAtTipMm)).toBeCloseTo(3.83, 2)
  })
})

describe('two racks', () => {
  test('alone, the fall is less and so is the hole', () => {
    const rack = facts(two)
    expectInches(rack.invertHighMm - rack.invertLowMm, 1.25)
    expectInches(rack.plainHoleMm, 68.7498)
  })

  test('in a bay with three racks the tips hang at the common level', () => {
    const rack = facts(two, inches(10.25))
    expectInches(rack.lipHighMm - rack.tipMm, 1.625)
    expectInches(rack.tipMm - rack.invertHighMm, 1.75)
    expectInches(rack.plainHoleMm, 69.3748)
  })

  test('runners in two pieces, one splice a side', () => {
    expect(pieces(build(two), 'BR')).toEqual(['4 x 118.625'])
    expect(pieces(build(two), 'SP')).toEqual(['2 x 16'])
    expect(pieces(build(two), 'XB')).toEqual(['3 x 43.5'])
    expect(pieces(build(two), 'GB')).toEqual(['11 x 59.9375'])
    expect(build(two).supports).toHaveLength(18)
  })
})

describe('one rack', () => {
  const built = build(one)

  test('a whole stick of rail over ends that stand in by 2-1/4 in, and no sleeve', () => {
    expect(pieces(built, 'RL')).toEqual(['2 x 120'])
    expect(pieces(built, 'SV')).toEqual([])
    const ends = built.supports.map(({ at }) => toInches(at.y) - 50)
    expect(Math.min(...ends)).toBeCloseTo(2.25, 6)
    expect(Math.max(...ends)).toBeCloseTo(117.75, 6)
    expect(built.rack!.barToSleeveMm).toBe(Infinity)
  })

  test('fall 0.625 in, hole at 68.1248', () => {
    expectInches(built.rack!.invertHighMm - built.rack!.invertLowMm, 0.625)
    expectInches(built.rack!.plainHoleMm, 68.1248)
  })

  test('a riser that no half board reaches is measured, to the sixteenth above', () => {
    // Least riser 70.6248.
    expect(pieces(built, 'RS-p')).toEqual(['10 x 70.625'])
    const [riser] = marked(built, 'RS-p')
    expect(riser!.cut).toEqual({ kind: 'exact' })
  })
})

describe('other sizes', () => {
  test('racks of 118 in need an inset of 1/8 in only', () => {
    const [first] = build(row({ rackLengthMm: inches(118) })).supports
    expect(toInches(first!.at.y) - 50).toBeCloseTo(0.125, 6)
  })

  test('at a pitch of 8 in a bar would lie on the sleeve', () => {
    const tight = row({ rackLengthMm: inches(96), barsPerRack: 12 })
    expect(toInches(facts(tight).barToSleeveMm)).toBeLessThan(0)
    // Least pitch for an 8-1/4 in sleeve with 1/4 in to spare: 9.67 in.
    const least = row({ rackLengthMm: inches(116.1), barsPerRack: 12 })
    expect(toInches(facts(least).barToSleeveMm)).toBeCloseTo(0.25, 1)
  })

  test('another bit for the sleeve, another hole', () => {
    const rack = facts(row({ sleeveBitMm: inches(1.25) }))
    // (1.25 - 0.9375) / 2 - 0.057
    expect(toInches(rack.sleeveHoleMm - rack.plainHoleMm)).toBeCloseTo(0.0993, 3)
  })

  test('one bit for all holes puts them at one height', () => {
    const rack = facts(row({ oneBit: true }))
    expect(rack.sleeveHoleMm).toBeCloseTo(rack.plainHoleMm, 9)
    // The rail still lies where it lay: (1.1875 - 0.9375) / 2 higher a centre for the wider hole.
    expectInches(rack.plainHoleMm, 69.3748 + 0.125)
  })

  test('80 ft of row have six side braces', () => {
    expect(marked(build(row({ racks: 8 })), 'SB')).toHaveLength(6)
    expect(marked(build(row({ racks: 4 })), 'SB')).toHaveLength(4)
  })
})

describe('six rows of the sample bay', () => {
  const rows = [three, three, three, two, two, two].map((part) => build(part, inches(10.25)))
  const lumber = rows.flatMap(({ sticks }) => sticks.filter(({ stock }) => stock === 'lumber-2x4'))

  test('132 feet and 480 towers', () => {
    expect(rows.flatMap(({ supports }) => supports)).toHaveLength(132)
    expect(rows.reduce((sum, { rack }) => sum + rack!.towers, 0)).toBe(480)
  })

  test('2,158.7 ft of lumber, net', () => {
    const netMm = lumber.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
    expect(toInches(netMm) / 12).toBeCloseTo(2158.7, 1)
  })

  test('1,926 screws', () => {
    expect(rows.reduce((sum, built) => sum + countOf(built, 'screw'), 0)).toBe(1926)
  })
})

test('the tip that a row needs is known before it is built', () => {
  expectInches(rackRow.tipNeededMm!(three, []), 10.25)
  expectInches(rackRow.tipNeededMm!(row({ bearerTopMm: inches(20) }), []), 23.25)
})

describe('lifting a tower off its bar', () => {
  test('asks for 3-1/4 in over the laterals, about 80 in in all', () => {
    const { liftTopMm, lateralMm } = facts(three)
    expectInches(liftTopMm - lateralMm, 3.25)
    expect(Math.abs(toInches(liftTopMm) - 80)).toBeLessThan(1)
  })

  test('less where the bay hangs the tips higher', () => {
    const { liftTopMm, lateralMm } = facts(two, inches(10.25))
    expectInches(liftTopMm - lateralMm, 2.625)
  })
})
