import { describe, expect, test } from 'vitest'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches, onTick, toInches } from '../../../src/units/length'
import { build, row } from '../../support/rackRows'

const mm = (value: number) => onTick(inches(value))

/** Four colour groups of 3, 4, 5 and 12 stations: worked example of the trade notes, hand arithmetic. */
const graded = [
  { stations: 3, lengthMm: mm(56) },
  { stations: 4, lengthMm: mm(49) },
  { stations: 5, lengthMm: mm(42) },
  { stations: 12, lengthMm: mm(37) },
]

/** Length of each station's tubes from the start of the row, inches; all lines of a station are cut alike. */
const stationTubes = (values: Partial<RackRow>): number[] => {
  const tubes = build(row(values)).feed!.tubes
  const stations = new Map<number, Set<number>>()
  for (const { station, lengthMm } of tubes) {
    const lengths = stations.get(station) ?? new Set()
    stations.set(station, lengths.add(Math.round(toInches(lengthMm) * 1000) / 1000))
  }
  return [...stations]
    .sort(([a], [b]) => a - b)
    .map(([, lengths]) => (expect(lengths.size).toBe(1), [...lengths][0]!))
}

const repeat = (...runs: readonly (readonly [count: number, length: number])[]): number[] =>
  runs.flatMap(([count, length]) => Array<number>(count).fill(length))

describe('graded tubes', () => {
  test('none: all are cut alike', () => {
    expect(stationTubes({})).toEqual(repeat([24, 36]))
    expect(new Set(build(row()).feed!.tubes.map(({ group }) => group))).toEqual(new Set([0]))
  })

  test('count from where the water enters a straight lateral', () => {
    const far = repeat([3, 56], [4, 49], [5, 42], [12, 37])
    expect(stationTubes({ gradedTubes: graded })).toEqual(far)
    expect(stationTubes({ gradedTubes: graded, inlet: 'end' })).toEqual(far.toReversed())
    expect(stationTubes({ gradedTubes: graded, inlet: 'end', fallsTo: 'start' })).toEqual(far.toReversed())
  })

  test('count outward from the middle', () => {
    const half = repeat([3, 56], [4, 49], [5, 42])
    expect(stationTubes({ gradedTubes: graded, feed: 'centre-split' })).toEqual([
      ...half.toReversed(),
      ...half,
    ])
  })

  test('count both ways from the quarter points, 90 and 270 in along: between stations 6 and 7, and 18 and 19', () => {
    const run = repeat([3, 56], [3, 49])
    const half = [...run.toReversed(), ...run]
    expect(stationTubes({ gradedTubes: graded, feed: 'double-split' })).toEqual([...half, ...half])
  })

  test('count round a ring from its inlet end', () => {
    expect(stationTubes({ gradedTubes: graded, feed: 'ring' })).toEqual(
      repeat([3, 56], [4, 49], [5, 42], [12, 37]),
    )
  })

  test('a station right where the water enters is the first of both ways', () => {
    // 1 rack of 5 bars: the third stands in the middle, and the last group takes what is left.
    const two = [
      { stations: 2, lengthMm: mm(50) },
      { stations: 1, lengthMm: mm(40) },
    ]
    const tubes = stationTubes({ racks: 1, barsPerRack: 5, feed: 'centre-split', gradedTubes: two })
    expect(tubes).toEqual([40, 50, 50, 50, 40])
  })

  test('the last group takes all that are left', () => {
    expect(stationTubes({ gradedTubes: graded.slice(0, 2) })).toEqual(repeat([3, 56], [21, 49]))
  })

  test('stations count whether or not their towers hang', () => {
    const without = build(row({ gradedTubes: graded, takenOut: [0, 1, 2, 3] })).feed!.tubes
    expect(without.filter(({ group }) => group === 0)).toHaveLength(2 * 4)
    expect(without.filter(({ station }) => station === 4).map(({ group }) => group)).toEqual([1, 1, 1, 1])
  })
})

describe('the least length of a tube', () => {
  /*
   * The lateral runs 76 in up and 18 in off the middle; tower tops hang 72-3/4 - 2-1/2 = 70-1/4 in up, 9 in aside of it.
   * The way is sqrt(9^2 + 5.75^2) = 10.680 in.
   */
  const way = Math.hypot(9, 5.75)

  test('is the way to the tower and the slack', () => {
    expect(stationTubes({ microtubeMm: mm(6) })).toEqual(repeat([24, expect.closeTo(way + 6, 2) as number]))
    expect(stationTubes({ microtubeMm: mm(6), tubeSlackMm: mm(10) })[0]).toBeCloseTo(way + 10, 2)
  })

  test('holds for a colour group too', () => {
    const short = [{ stations: 24, lengthMm: mm(12) }]
    expect(stationTubes({ gradedTubes: short })[0]).toBeCloseTo(way + 6, 2)
  })

  test('leaves the tubes of the default row at 36 in', () => {
    expect(way + 6).toBeLessThan(36)
    expect(stationTubes({})[0]).toBe(36)
  })
})
