import { describe, expect, test } from 'vitest'
import { inches, toInches } from '../../../src/units/length'
import { build, facts, marked, pieces, row } from '../../support/rackRows'

/** J3 with racks of 114 in: big inside racks 114 + 2 x 3, small ones 114 - 2 x 3 + 2 x 6, both one stick. */
const chained = (racks: number) =>
  row({ joint: 'J3', racks, rackLengthMm: inches(114), railEndMm: inches(3) })

describe('J3, a big stick takes a small one', () => {
  test('all sticks stay whole', () => {
    const built = build(chained(4))
    expect(pieces(built, 'RL-b')).toEqual(['4 x 120'])
    expect(pieces(built, 'RL')).toEqual(['4 x 120'])
    expect(marked(built, 'RL', 'RL-b').every(({ cut }) => cut.kind === 'uncut')).toBe(true)
    expect(pieces(built, 'SV')).toEqual([])
  })

  test('odd racks are railed in 1 in, even ones in 3/4 in', () => {
    const built = build(chained(3))
    const stocks = (stock: string) =>
      new Set(built.sticks.filter((stick) => stick.stock === stock).map(({ rack }) => rack))
    expect(stocks('conduit-1')).toEqual(new Set([0, 2]))
    expect(marked(built, 'RL').map(({ rack, stock }) => [rack, stock])).toEqual([
      [1, 'conduit-3/4'],
      [1, 'conduit-3/4'],
    ])
  })

  test('they stay where they are when the gutters are turned to fall the other way', () => {
    const extent = (fallsTo: 'start' | 'end') =>
      marked(build({ ...chained(2), fallsTo }), 'RL-b')
        .flatMap(({ from, to }) => [from.y, to.y])
        .map((y) => Math.round(toInches(y)))
        .sort((a, b) => a - b)
    expect(extent('start')).toEqual(extent('end'))
  })

  test('the small stick pushes 6 in into the big one, across the shared riser', () => {
    const built = build(chained(2))
    const along = (y: number) => toInches(y) - 50
    const [big] = marked(built, 'RL-b')
    const [small] = marked(built, 'RL')
    expect(along(big!.to.y)).toBeCloseTo(117, 6)
    expect(along(small!.from.y)).toBeCloseTo(111, 6)
  })

  test('an overlap that would end inside the riser is made longer', () => {
    // 3 past the riser's centre, half its 1-1/2 in, and an inch: 4-3/4 in.
    const built = build({ ...chained(2), overlapMm: inches(2) })
    expect(toInches(marked(built, 'RL')[0]!.from.y) - 50).toBeCloseTo(117 - 4.75, 6)
  })

  test('bars on small racks lie 0.184 in lower, and so do the towers', () => {
    // Worked example of the trade notes, hand arithmetic: (1.163 - 0.922) / 2 + (1.049 - 0.922) / 2.
    const built = build(chained(2))
    const bars = marked(built, 'HB')
    expect(toInches(bars[0]!.from.z - bars.at(-1)!.from.z)).toBeCloseTo(0.184, 3)
    const heads = built.mouths.filter(({ role }) => role === 'tower-head')
    expect(toInches(heads[0]!.at.z - heads.at(-1)!.at.z)).toBeCloseTo(0.184, 3)
  })

  test('every bar lies on its rails', () => {
    const built = build(chained(4))
    for (const bar of marked(built, 'HB')) {
      const rails = marked(built, 'RL', 'RL-b').filter(({ rack }) => rack === bar.rack)
      for (const rail of rails)
        expect(bar.from.z - bar.heightMm / 2).toBeCloseTo(rail.from.z + rail.heightMm / 2, 9)
    }
  })

  test('shared risers are drilled for the big stick', () => {
    // Two racks of four bays: four pairs of the big rack and the shared one, then four of the small rack.
    const built = build(chained(2))
    expect(marked(built, 'RS-s')).toHaveLength(10)
    expect(marked(built, 'RS-p')).toHaveLength(8)
  })

  test('inside racks of 120 in would need 126 in of big stick', () => {
    expect(pieces(build(row({ joint: 'J3', racks: 3 })), 'RL-b')[0]).toBe('4 x 120')
    expect(pieces(build(row({ joint: 'J3', racks: 5 })), 'RL-b')[0]).toBe('2 x 126')
  })
})

describe('every rail', () => {
  test.each([
    ['J1', row({ racks: 4 })],
    ['J3', chained(4)],
  ])('%s lies on the bottom of the holes that it runs through', (_, part) => {
    const built = build(part)
    const rails = marked(built, 'RL', 'RL-b', 'SV')
    for (const riser of marked(built, 'RS-p', 'RS-s')) {
      const [hole] = riser.holes
      const bottomMm = riser.from.z + hole!.centreMm - hole!.diameterMm / 2
      const through = rails.filter(
        ({ from, to }) => Math.abs(from.x - riser.from.x) < 1 && from.y < riser.from.y && to.y > riser.from.y,
      )
      const lowest = Math.min(...through.map(({ from, heightMm }) => from.z - heightMm / 2))
      expect(lowest).toBeCloseTo(bottomMm, 6)
    }
  })

  test('a rail of 1 in is sleeved in 1-1/4 in', () => {
    const part = row({ rail: '1', railBitMm: inches(1.1875), sleeveBitMm: inches(1.5625) })
    expect(new Set(marked(build(part), 'SV').map(({ stock }) => stock))).toEqual(new Set(['conduit-1-1/4']))
    expect(facts(part).tipMm).toBe(facts(row()).tipMm)
  })
})
