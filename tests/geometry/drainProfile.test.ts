import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { drainStation, groundLegs, startInvert, type GroundStation } from '../../src/geometry/drainProfile'
import type { Point } from '../../src/geometry/point'
import { inches, toInches } from '../../src/units/length'
import { inchesPerFoot } from '../../src/units/slope'
import { at, sampleFloor } from '../support/site'
import { PEGS_N } from '../support/pegs'

/** 4 in thin-wall pipe as the trade notes give it: OD 4.215, ID about 4.06 in, on 2 in of sand, at 1/8 in/ft. */
const pipe = {
  odMm: inches(4.215),
  wallMm: inches((4.215 - 4.06) / 2),
  bedMm: inches(2),
  slopeMmPerM: inchesPerFoot(1 / 8),
}
const coverMm = inches(3)

type GroundAt = (x: number, y: number) => number

const stationsOf = (points: readonly Point[], groundAt: GroundAt): GroundStation[] =>
  groundLegs(points, groundAt).flatMap(({ stations }) => stations)

const sampleLine = (y: number) => {
  const points = [at(30, y), at(304, y)]
  const startMm = startInvert(stationsOf(points, sampleFloor), pipe, coverMm)
  const stationFromPit = (inch: number) => {
    const place = at(304 - inch, y)
    const ground = {
      at: place,
      alongMm: inches(274 - inch),
      groundMm: sampleFloor(place.x, place.y),
    }
    return drainStation(ground, startMm, pipe)
  }
  return { startMm, stationFromPit }
}

// Worked example of the trade notes, hand arithmetic: both drains of the sample bay.
describe('the drains of the sample bay', () => {
  test.each([
    [425, -8.23, -11.08],
    [321, -8.47, -11.32],
  ])('line at y = %i starts at %f and comes into the pit at %f in', (y, start, end) => {
    const { startMm, stationFromPit } = sampleLine(y)
    expect(Math.abs(toInches(startMm) - start)).toBeLessThanOrEqual(0.01)
    expect(Math.abs(toInches(stationFromPit(0).invertMm) - end)).toBeLessThanOrEqual(0.01)
  })

  test.each(PEGS_N)(
    'peg %i in from the pit: invert %f, ground %f, dig %f in',
    (station, invert, ground, dig) => {
      const peg = sampleLine(425).stationFromPit(station)
      // The table is cut to 0.01 in, and the dig to the eighth that a spade can hold.
      expect(Math.abs(toInches(peg.invertMm) - invert)).toBeLessThanOrEqual(0.01)
      expect(Math.abs(toInches(peg.groundMm) - ground)).toBeLessThanOrEqual(0.01)
      expect(Math.abs(toInches(peg.digMm) - dig)).toBeLessThanOrEqual(0.1)
    },
  )
})

describe('the highest start', () => {
  test('a hollow in the middle of the run sets it', () => {
    // Level floor but for a hollow 6 in deep at 120 in along. Hand arithmetic: the crown there may be at -6 - 3 = -9,
    // the invert at -9 - 4.215 + 0.0775 = -13.1375, and the start 120 in uphill of it 1.25 higher.
    const hollow: GroundAt = (x) => -Math.max(0, inches(6) - Math.abs(x - inches(120)) / 4)
    const stations = stationsOf([at(0, 0), at(120, 0), at(240, 0)], hollow)
    expect(toInches(startInvert(stations, pipe, coverMm))).toBeCloseTo(-11.8875, 6)
  })

  test('keeps the cover at every station, and at one no more than it', () => {
    const floor = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 30, maxLength: 30 })
    fc.assert(
      fc.property(floor, fc.integer({ min: -20, max: 40 }), (levels, slopeMmPerM) => {
        const groundAt: GroundAt = (x) => inches((levels[Math.floor(x / inches(12)) % 30] ?? 0) / 4)
        const stations = stationsOf([at(0, 0), at(200, 0), at(200, 90)], groundAt)
        const run = { ...pipe, slopeMmPerM }
        const startMm = startInvert(stations, run, coverMm)
        const covers = stations.map((ground) => drainStation(ground, startMm, run).coverMm)
        expect(Math.min(...covers)).toBeCloseTo(coverMm, 6)
      }),
      { seed: 20_250_301 },
    )
  })

  test('no stations, no level to keep under', () => {
    expect(startInvert([], pipe, coverMm)).toBe(0)
  })
})

describe('the floor along a run', () => {
  test('is looked at at every point and never more than a foot apart', () => {
    const points = [at(0, 0), at(100, 0), at(100, 50)]
    const stations = stationsOf(points, () => 0)
    for (const p of points) expect(stations.map((s) => s.at)).toContainEqual(p)
    const steps = stations.slice(1).map((s, index) => s.alongMm - stations[index]!.alongMm)
    expect(Math.max(...steps)).toBeLessThanOrEqual(inches(12) + 1e-9)
    expect(stations.at(-1)!.alongMm).toBeCloseTo(inches(150), 9)
  })

  test('a run longer than any farm is looked at in a bounded number of places', () => {
    const stations = stationsOf([at(-70_000, 0), at(70_000, 0)], () => 0)
    expect(stations.length).toBeLessThan(2000)
  })

  test('two points on one place give finite levels', () => {
    const stations = stationsOf([at(5, 5), at(5, 5)], () => 7)
    expect(stations.every((s) => s.groundMm === 7 && s.alongMm === 0)).toBe(true)
  })
})
